import { spawnSync } from 'node:child_process';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { dxfFile } from '../../core/files/dxf-file';
import { dxfEntities, textOf } from '../../core/files/dxf-pairs';
import { readDxf } from '../../core/files/read-dxf';
import { outlineOf } from '../../core/garment/outline';
import type { Piece } from '../../core/garment/piece';
import { pathBounds } from '../../core/geometry/path';
import { cutLine } from '../../core/seams/cut-line';
import { garmentOf, rectangle } from '../paper/pieces';
import { randomPiece, seeded } from '../seams/random-piece';
import { furthestApart, onlyPiece, panel, piecesOf, reading, written } from './files';

/** ezdxf, a reader of DXF by others, where Python has it. */
const python = ['/usr/bin/python3', 'python3'].find((each) => spawnSync(each, ['-c', 'import ezdxf']).status === 0);
if (!python) console.log('Skipped: python3-ezdxf is not installed, so DXF files cannot be read by another program.');

const FLATNESS = 0.05;

function fileOf(pieces: readonly Piece[], units: 'mm' | 'in' = 'mm'): string {
  return dxfFile(garmentOf(pieces), { ...written, units, size: 'Anna, March', flatness: FLATNESS }) ?? '';
}

/** Entities of a kind on a layer. */
function on(text: string, kind: string, layer: string) {
  return [...dxfEntities(text)].filter((entity) => entity.kind === kind && textOf(entity, 8) === layer);
}

describe('dxfFile', () => {
  it('is plain ASCII of release 12 with a block for each piece, told by its text', () => {
    const text = fileOf([panel(), rectangle(400, 0, 90, 60, { name: 'Gürtel' })]);
    expect(text).toMatch(/^[\r\n -~]+$/);
    const entities = [...dxfEntities(text)];
    expect(entities.filter(({ kind }) => kind === 'BLOCK').map((block) => textOf(block, 2))).toEqual([
      'SIDE_GORE_1',
      'GURTEL_2',
    ]);
    const words = entities.filter(({ kind }) => kind === 'TEXT').map((entity) => textOf(entity, 1));
    expect(words).toEqual(
      expect.arrayContaining([
        'PIECE NAME: Side gore',
        'SIZE: Anna, March',
        'QUANTITY: 2',
        'PIECE NAME: G\\U+00FCrtel',
        'QUANTITY: 4',
        'STYLE NAME: Linden petticoat',
        'CREATION DATE: 2026-03-01',
        'UNITS: METRIC',
      ]),
    );
  });

  // The layer numbers of ASTM D6673 and ANSI/AAMA-292, from memory.
  it('puts everything on its layer', () => {
    const text = fileOf([panel()]);
    expect(on(text, 'POLYLINE', '1')).toHaveLength(1);
    expect(on(text, 'POLYLINE', '14')).toHaveLength(1);
    expect(on(text, 'LINE', '6')).toHaveLength(1);
    expect(on(text, 'LINE', '7')).toHaveLength(1);
    expect(on(text, 'POINT', '4')).toHaveLength(2);
    expect(on(text, 'POINT', '13')).toHaveLength(1);
    expect(on(text, 'POLYLINE', '8').length).toBeGreaterThan(0);
    const vertices = on(text, 'VERTEX', '1').length + on(text, 'VERTEX', '14').length;
    expect(on(text, 'POINT', '2').length + on(text, 'POINT', '3').length).toBe(vertices);
    expect(on(text, 'POINT', '2').length).toBeGreaterThanOrEqual(8);
  });

  it('makes the cut line the boundary, within the flatness, y up', () => {
    const text = fileOf([panel()]);
    const boundary = on(text, 'VERTEX', '1').map((vertex) => [Number(textOf(vertex, 10)), -Number(textOf(vertex, 20))]);
    const cut = cutLine(panel());
    if (cut.kind !== 'cut-line') throw new Error(cut.kind);
    const box = pathBounds(cut.whole);
    expect(Math.max(...boundary.map(([x]) => x as number))).toBeCloseTo(box.maxX, 1);
    expect(Math.max(...boundary.map(([, y]) => y as number))).toBeCloseTo(box.maxY, 1);
  });

  it('brings every outline back within the flatness, edge for edge, in mm and in inches', () => {
    fc.assert(
      fc.property(fc.nat(1e6), fc.constantFrom('mm', 'in'), (seed, units) => {
        const piece = randomPiece(seeded(seed), 9.525);
        const back = onlyPiece(readDxf(fileOf([piece], units as 'mm' | 'in'), reading));
        expect(back.edges).toHaveLength(piece.edges.length);
        expect(furthestApart(outlineOf(piece).whole, outlineOf(back).whole)).toBeLessThan(FLATNESS);
      }),
      { seed: 7, numRuns: 15 },
    );
  });

  it('brings names, fold, count, grain, notches and drill marks back', () => {
    const named = { ...panel(), name: 'Unterrock – スカート 🧵' };
    const [piece, second] = piecesOf(readDxf(fileOf([named, rectangle(400, 0, 90, 60)]), reading));
    expect(piece).toMatchObject({
      name: named.name,
      drawnAs: 'net',
      cut: { how: 'fold', count: 2 },
      grain: { from: { x: 77, y: 178 }, to: { x: 77, y: 559 } },
      labels: [{ at: { x: 60, y: 380 }, text: '' }],
      notches: [{ edgeId: piece?.edges[1]?.id, along: expect.closeTo(207, 1), count: 2 }],
    });
    expect(piece?.edges.map(({ role }) => role)).toEqual(['seam', 'seam', 'seam', 'fold']);
    expect(second).toMatchObject({ drawnAs: 'not-known', cut: { how: 'single', count: 4 } });
  });

  it.skipIf(!python)('is read by ezdxf without an error, with the same layers', () => {
    const script = [
      'import ezdxf, sys, io, json',
      'd = ezdxf.read(io.StringIO(sys.stdin.read().replace("\\r\\n", "\\n")))',
      'a = d.audit()',
      'b = d.blocks.get("SIDE_GORE_1")',
      'p = [e for e in b if e.dxftype() == "POLYLINE" and e.dxf.layer == "14"][0]',
      'xs = [v.dxf.location.x for v in p.vertices]',
      'print(json.dumps([len(a.errors), d.dxfversion, sorted({e.dxf.layer for e in b}), p.is_closed, min(xs), max(xs)]))',
    ].join('\n');
    const run = spawnSync(python as string, ['-c', script], { input: fileOf([panel()]), encoding: 'utf8' });
    const layers = ['1', '13', '14', '2', '3', '4', '6', '7', '8'];
    expect(JSON.parse(run.stdout)).toEqual([0, 'AC1009', layers, true, 3, expect.closeTo(371, 3)]);
  });
});
