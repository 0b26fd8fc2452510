/**
 * A garment's pieces as a DXF file for sewn products: one block a piece, numbered layers, text for what they are.
 *
 * After ASTM D6673 and ANSI/AAMA-292: that each piece is a block, that text inside it is of the piece and text outside of
 * the style, and the words boundary, sew line, mirror line, curve point are the standard's; so are the layer
 * numbers (`file-layers.ts`). From memory: the keys of the text and that METRIC means millimetres. Written in the plainest dialect,
 * ASCII of release 12 (AC1009), with POLYLINE, LINE, POINT and TEXT alone; y points up. Left out: grade rules, the
 * time of day, and what only a cutter's own program would add.
 */
import type { Mark, Stroke } from '../drawing/drawing';
import { pieceDrawing } from '../drawing/piece-drawing';
import type { Garment } from '../garment/garment';
import { outlineOf } from '../garment/outline';
import type { Piece } from '../garment/piece';
import { versionMark } from '../garment/version-mark';
import { flattenPath } from '../geometry/flatten';
import { pathEnd, pathStart } from '../geometry/path';
import { isSamePoint, type Point } from '../geometry/point';
import type { Path } from '../geometry/segment';
import { cutLine } from '../seams/cut-line';
import { blockName, dxfText } from './dxf-text';
import { DXF_LAYERS } from './file-layers';
import type { FileWords } from './file-words';
import { turningPoints } from './outline-edges';

export interface DxfFileOptions {
  readonly words: FileWords;
  /** YYYY-MM-DD */
  readonly date: string;
  readonly units: 'mm' | 'in';
  /** What stands for the size: the wearer or the measure set. */
  readonly size: string;
  /** How far, in mm, the straight sides that stand for curves may be from them. */
  readonly flatness: number;
}

/** Height of the text in mm. */
const TEXT_SIZE = 6;

/** Lines inside a piece that may be drawn on it but are neither cut nor seams. */
const INTERNAL: ReadonlySet<Stroke['line']> = new Set([
  'dart',
  'centre',
  'gathers',
  'opening',
  'pleat-fold',
  'pleat-placement',
]);

/** Rounding: a ten-thousandth of a mm, or of an inch a millionth. */
const PLACES = { mm: 4, in: 6 } as const;

/**
 * The pieces of a garment, all but guides, as DXF; `undefined` when there are none. The boundary is the cut line where
 * every allowance is said, and then the stitch line is the sew line; else the stitch line is the boundary. Corners
 * are turn points, all other points of straight sides that stand for a curve are curve points.
 */
export function dxfFile(garment: Garment, options: DxfFileOptions): string | undefined {
  const pieces = garment.pieces.filter(({ use }) => use !== 'guide');
  if (pieces.length === 0) return undefined;
  const { words, date, units } = options;
  const file = new DxfLines(units);
  file.pair(0, 'SECTION').pair(2, 'HEADER').pair(9, '$ACADVER').pair(1, 'AC1009').pair(0, 'ENDSEC');
  layerTable(file);
  file.pair(0, 'SECTION').pair(2, 'BLOCKS');
  const names = pieces.map((piece, index) => blockName(piece.name, index + 1));
  pieces.forEach((piece, index) => {
    pieceBlock(file, piece, names[index] as string, options);
  });
  file.pair(0, 'ENDSEC').pair(0, 'SECTION').pair(2, 'ENTITIES');
  for (const name of names) {
    file.entity('INSERT', DXF_LAYERS.boundary).pair(2, name).place({ x: 0, y: 0 });
  }
  const name = garment.name === '' ? words.unnamedGarment : garment.name;
  const style = [
    `STYLE NAME: ${name}`,
    `CREATION DATE: ${date}`,
    `UNITS: ${units === 'mm' ? 'METRIC' : 'ENGLISH'}`,
    `ANNOTATION: ${words.garmentLine(name, date, versionMark(garment))}`,
  ];
  style.forEach((line, row) => {
    file.text(line, { x: 0, y: (row + 1) * 2 * TEXT_SIZE }, DXF_LAYERS.boundary);
  });
  return file.pair(0, 'ENDSEC').pair(0, 'EOF').toString();
}

/** Every layer is declared, in the colour of paper and ink and with unbroken lines. */
function layerTable(file: DxfLines): void {
  const layers = ['0', ...Object.values(DXF_LAYERS)];
  file.pair(0, 'SECTION').pair(2, 'TABLES');
  file.pair(0, 'TABLE').pair(2, 'LTYPE').pair(70, '1').pair(0, 'LTYPE').pair(2, 'CONTINUOUS').pair(70, '0');
  file.pair(3, 'Solid line').pair(72, '65').pair(73, '0').pair(40, '0.0').pair(0, 'ENDTAB');
  file.pair(0, 'TABLE').pair(2, 'LAYER').pair(70, String(layers.length));
  for (const layer of layers) {
    file.pair(0, 'LAYER').pair(2, layer).pair(70, '0').pair(62, '7').pair(6, 'CONTINUOUS');
  }
  file.pair(0, 'ENDTAB').pair(0, 'ENDSEC');
}

function pieceBlock(file: DxfLines, piece: Piece, name: string, { words, size, flatness }: DxfFileOptions): void {
  const marks = pieceDrawing(piece);
  const cut = cutLine(piece);
  const stitch = outlineOf(piece).whole;
  const isCutApart = cut.kind === 'cut-line' && marks.some(isStroke('stitch'));
  const corners = piece.corners.map(({ at }) => at);
  file.pair(0, 'BLOCK').pair(8, '0').pair(2, name).pair(70, '0').place({ x: 0, y: 0 }).pair(3, name);
  if (isCutApart) {
    file.outline(cut.whole, DXF_LAYERS.boundary, turningPoints(cut.whole), flatness);
    file.outline(stitch, DXF_LAYERS.sewLines, corners, flatness);
  } else file.outline(stitch, DXF_LAYERS.boundary, corners, flatness);
  for (const { line, path } of marks.filter((mark) => mark.kind === 'stroke')) {
    if (line === 'fold') file.line(pathStart(path), pathEnd(path), DXF_LAYERS.mirrorLine);
    if (line === 'notch') file.point(pathStart(path), DXF_LAYERS.notches);
    if (INTERNAL.has(line)) file.internalLine(path, flatness);
  }
  if (piece.grain) file.line(piece.grain.from, piece.grain.to, DXF_LAYERS.grain);
  for (const { at, text } of piece.labels) {
    if (text.trim() === '') file.point(at, DXF_LAYERS.drillHoles);
    else file.text(text, at, DXF_LAYERS.annotation);
  }
  const foot = marks.find((mark) => mark.kind === 'words')?.at ?? (corners[0] as Point);
  const lines = [
    `PIECE NAME: ${piece.name === '' ? words.unnamedPiece : piece.name}`,
    `SIZE: ${size}`,
    `QUANTITY: ${piece.cut.count}`,
    ...annotations(marks, words).map((text) => `ANNOTATION: ${text}`),
  ];
  lines.forEach((text, row) => {
    file.text(text, { x: foot.x, y: foot.y + row * 2 * TEXT_SIZE }, DXF_LAYERS.boundary);
  });
  file.pair(0, 'ENDBLK').pair(8, '0');
}

/** How the piece is cut and what is allowed on it, as said on paper. */
function annotations(marks: readonly Mark[], words: FileWords): string[] {
  return marks
    .flatMap((mark) => (mark.kind === 'words' ? [mark.content] : []))
    .filter(({ kind }) => kind === 'cut' || kind === 'allowance' || kind === 'right-side-up')
    .map(words.content);
}

function isStroke(line: Stroke['line']): (mark: Mark) => boolean {
  return (mark) => mark.kind === 'stroke' && mark.line === line;
}

/** Pairs of a code and a value, a line each, with lengths put into the file's unit. */
class DxfLines {
  private readonly lines: string[] = [];
  private readonly units: 'mm' | 'in';

  constructor(units: 'mm' | 'in') {
    this.units = units;
  }

  pair(code: number, value: string): this {
    this.lines.push(String(code).padStart(3), value);
    return this;
  }

  length(code: number, mm: number): this {
    const text = (this.units === 'mm' ? mm : mm / 25.4).toFixed(PLACES[this.units]);
    return this.pair(code, /^-0\.0*$/.test(text) ? text.slice(1) : text);
  }

  place({ x, y }: Point): this {
    return this.length(10, x).length(20, -y);
  }

  entity(kind: string, layer: string): this {
    return this.pair(0, kind).pair(8, layer);
  }

  point(at: Point, layer: string): this {
    return this.entity('POINT', layer).place(at);
  }

  line(from: Point, to: Point, layer: string): this {
    return this.entity('LINE', layer).place(from).length(11, to.x).length(21, -to.y);
  }

  text(text: string, at: Point, layer: string): this {
    return this.entity('TEXT', layer).place(at).length(40, TEXT_SIZE).pair(1, dxfText(text));
  }

  polyline(points: readonly Point[], layer: string, ends: 'open' | 'closed'): this {
    this.entity('POLYLINE', layer)
      .pair(66, '1')
      .pair(70, ends === 'closed' ? '1' : '0');
    for (const point of points) this.entity('VERTEX', layer).place(point);
    return this.entity('SEQEND', layer);
  }

  /** A closed line with its turn points and curve points. */
  outline(path: Path, layer: string, turns: readonly Point[], flatness: number): this {
    const points = flattenPath(path, flatness).slice(0, -1);
    return this.polyline(points, layer, 'closed').marked(points, turns);
  }

  /** A line within the piece with its turn points, the ends among them, and curve points. */
  internalLine(path: Path, flatness: number): this {
    const points = flattenPath(path, flatness);
    const turns = [...turningPoints(path), pathStart(path), pathEnd(path)];
    return this.polyline(points, DXF_LAYERS.internalLines, 'open').marked(points, turns);
  }

  private marked(points: readonly Point[], turns: readonly Point[]): this {
    const isTurn = (point: Point): boolean => turns.some((turn) => isSamePoint(turn, point));
    for (const point of points) this.point(point, isTurn(point) ? DXF_LAYERS.turnPoints : DXF_LAYERS.curvePoints);
    return this;
  }

  toString(): string {
    return `${this.lines.join('\r\n')}\r\n`;
  }
}
