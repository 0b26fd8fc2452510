/**
 * The outlines of a DXF file as pieces: of a sewn-product file by its numbered layers, of any other by what closes.
 * ASCII only, any release. Not read, and told: blocks within blocks, hatches, surfaces, solids.
 *
 * After ASTM D6673 and ANSI/AAMA-292 as far as `file-layers.ts` says; codes of entities are from memory.
 */
import {
  type Affine,
  composeAffine,
  rotationAbout,
  scaling,
  transformPath,
  transformPoint,
  translation,
} from '../geometry/affine';
import { unionBox } from '../geometry/bounds';
import { pathBounds } from '../geometry/path';
import type { Point } from '../geometry/point';
import type { DrawnGroup, DrawnLine, DrawnPoint } from './drawn-line';
import { brokenNumber, type DxfEntity, dxfEntities, numberOf, textOf } from './dxf-pairs';
import { DXF_SHAPES, dxfPath, placeOf } from './dxf-shapes';
import { plainText } from './dxf-text';
import { DXF_LAYERS, meaningOfDxfLayer } from './file-layers';
import { type FileFinding, type FileReading, type FileRefusal, LARGEST_FILE } from './file-reading';
import { piecesFromGroups } from './pieces-from-groups';
import { type FileUnit, mmPerUnit } from './svg-units';

export interface ReadDxfOptions {
  readonly newId: () => string;
  /** What one unit of the file is, as she says; it goes before what the file says. */
  readonly unit?: FileUnit;
}

/** How closely edges follow the lines of the file and the curves put through its polylines, in mm. */
const FOLLOWED_WITHIN = 0.009;

/** How far the curve put through the corners of a polyline may be from its sides, in mm, where no curve point is marked. */
const SMOOTH_WITHIN = 0.1;

/** $INSUNITS of the header (from memory): 1 inches, 4 millimetres, 5 centimetres. */
const UNIT_NUMBERS: ReadonlyMap<string, FileUnit> = new Map([
  ['1', 'in'],
  ['4', 'mm'],
  ['5', 'cm'],
]);

/**
 * Pieces from the text of a DXF file. Each block with a closed line is a piece, with the sew line before the boundary;
 * lines outside blocks are a group by themselves. Edges keep within 0.009 mm of the curves of the file, and
 * of the smooth curve through the corners of straight sides that stand for one. A question when nothing says how long the unit is.
 */
export function readDxf(text: string, { newId, unit }: ReadDxfOptions): FileReading {
  if (text.length > LARGEST_FILE) return { kind: 'too-large', limit: LARGEST_FILE };
  const file = new DxfBook();
  const refusal = file.readAll(text);
  if (refusal) return refusal;
  const known = unit ?? file.unit;
  const scale = mmPerUnit[known ?? 'mm'];
  const groups = file.groups(scaling(scale, -scale));
  const [first, ...others] = groups.flatMap(({ lines }) => lines.map(({ path }) => pathBounds(path)));
  if (!known && first) {
    const whole = others.reduce(unionBox, first);
    return { kind: 'units-not-known', across: whole.maxX - whole.minX, down: whole.maxY - whole.minY };
  }
  const made = piecesFromGroups(groups, { newId, followWithin: FOLLOWED_WITHIN, smoothWithin: SMOOTH_WITHIN });
  return made.kind === 'read' ? { ...made, findings: [...file.findings(), ...made.findings] } : made;
}

/** A block, or what lies outside all blocks. */
interface Page {
  readonly block: string;
  readonly lines: { readonly entity: DxfEntity; readonly vertices: DxfEntity[] }[];
  readonly points: DxfEntity[];
  readonly keys: Map<string, string>;
}

/** Entities sorted into blocks, with the header and the text that matter. */
class DxfBook {
  unit: FileUnit | undefined;
  private section = '';
  private variable = '';
  private readonly loose: Page = newPage('');
  private page: Page = this.loose;
  private readonly blocks = new Map<string, Page>();
  private readonly inserts = new Map<string, DxfEntity>();
  private readonly notRead = new Map<string, number>();

  /** Why it stopped; nothing when it came through. */
  readAll(text: string): FileRefusal | undefined {
    const entities = dxfEntities(text);
    for (;;) {
      const next = entities.next();
      if (next.done) return next.value;
      const refusal = this.take(next.value);
      if (refusal) return refusal;
    }
  }

  findings(): FileFinding[] {
    return [...this.notRead].map(([what, count]): FileFinding => ({ kind: 'not-read', what, count }));
  }

  /** Blocks where they are first inserted; all of them in a file that inserts none; then the lines outside. */
  groups(map: Affine): DrawnGroup[] {
    const blocks = [...this.blocks.values()].filter(({ block }) => this.inserts.size === 0 || this.inserts.has(block));
    const groups = blocks.map((page) => {
      const insert = this.inserts.get(page.block);
      return this.groupOf(page, insert ? composeAffine(map, insertMap(insert)) : map);
    });
    return [...groups, this.groupOf(this.loose, map)].filter(({ lines }) => lines.length > 0);
  }

  private take(entity: DxfEntity): FileRefusal | undefined {
    switch (entity.kind) {
      case 'SECTION':
        this.section = textOf(entity, 2).toUpperCase();
        if (this.section === 'HEADER') this.readHeader(entity);
        return undefined;
      case 'BLOCK':
        this.openBlock(textOf(entity, 2));
        return undefined;
      case 'ENDBLK':
        this.page = this.loose;
        return undefined;
      default:
        return this.section === 'BLOCKS' || this.section === 'ENTITIES' ? this.takeDrawn(entity) : undefined;
    }
  }

  private readHeader({ pairs }: DxfEntity): void {
    for (const { code, text } of pairs) {
      if (code === 9) this.variable = text.trim();
      else if (this.variable === '$INSUNITS' && code === 70) this.unit ??= UNIT_NUMBERS.get(text.trim());
    }
  }

  /** Names that begin with a star are of whole sheets and dimensions. */
  private openBlock(name: string): void {
    this.page = newPage(name);
    if (!name.startsWith('*')) this.blocks.set(name, this.page);
  }

  private takeDrawn(entity: DxfEntity): FileRefusal | undefined {
    const line = brokenNumber(entity);
    if (line !== undefined) return { kind: 'broken-number', line };
    if (DXF_SHAPES.has(entity.kind)) this.page.lines.push({ entity, vertices: [] });
    else if (entity.kind === 'VERTEX') this.page.lines[this.page.lines.length - 1]?.vertices.push(entity);
    else if (entity.kind === 'POINT') this.page.points.push(entity);
    else if (entity.kind === 'TEXT' || entity.kind === 'MTEXT') this.takeText(textOf(entity, 1));
    else if (entity.kind === 'INSERT' && this.page === this.loose) this.takeInsert(entity);
    else if (!['SEQEND', 'ENDSEC', 'EOF', 'ATTDEF', 'ATTRIB', 'VIEWPORT'].includes(entity.kind)) {
      this.countNotRead(entity.kind);
    }
    return undefined;
  }

  private takeInsert(entity: DxfEntity): void {
    const block = textOf(entity, 2);
    if (!this.inserts.has(block)) this.inserts.set(block, entity);
  }

  /** KEY: value, of the piece inside a block and of the whole outside. */
  private takeText(text: string): void {
    const match = /^([A-Za-z ]{1,40}):(.*)$/.exec(text);
    if (!match) return;
    const [key, value] = [(match[1] as string).trim().toUpperCase(), plainText(match[2] as string).trim()];
    if (!this.page.keys.has(key)) this.page.keys.set(key, value);
    if (key === 'UNITS' && this.page === this.loose) {
      if (/^metric$/i.test(value)) this.unit = 'mm';
      if (/^english$/i.test(value)) this.unit = 'in';
    }
  }

  private groupOf(page: Page, map: Affine): DrawnGroup {
    const lines = page.lines.flatMap(({ entity, vertices }): DrawnLine[] => {
      const path = dxfPath(entity, vertices);
      if (!path) {
        this.countNotRead(entity.kind);
        return [];
      }
      const layer = textOf(entity, 8);
      return [{ path: transformPath(map, path), meaning: meaningOfDxfLayer(layer), layer, name: '' }];
    });
    const places = (layer: string): Point[] =>
      page.points.filter((point) => textOf(point, 8) === layer).map((point) => transformPoint(map, placeOf(point, 10)));
    const points: DrawnPoint[] = [
      ...places(DXF_LAYERS.notches).map((at): DrawnPoint => ({ at, meaning: 'notches' })),
      ...places(DXF_LAYERS.drillHoles).map((at): DrawnPoint => ({ at, meaning: 'drill' })),
    ];
    const quantity = page.keys.get('QUANTITY') ?? '';
    return {
      name: page.keys.get('PIECE NAME') ?? page.block,
      lines,
      points,
      turns: places(DXF_LAYERS.turnPoints),
      bends: places(DXF_LAYERS.curvePoints),
      ...(/^[1-9]\d{0,2}$/.test(quantity) ? { count: Number(quantity) } : {}),
    };
  }

  private countNotRead(what: string): void {
    this.notRead.set(what, (this.notRead.get(what) ?? 0) + 1);
  }
}

function newPage(block: string): Page {
  return { block, lines: [], points: [], keys: new Map() };
}

function insertMap(insert: DxfEntity): Affine {
  const at = placeOf(insert, 10);
  const turn = rotationAbout({ x: 0, y: 0 }, (numberOf(insert, 50) * Math.PI) / 180);
  const stretched = composeAffine(turn, scaling(numberOf(insert, 41, 1), numberOf(insert, 42, 1)));
  return composeAffine(translation({ dx: at.x, dy: at.y }), stretched);
}
