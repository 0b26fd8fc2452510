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

  // The layer numbers of ASTM D6673-10 and ANSI/AAMA-292; turn and curve points are those of layers 1, 8, 11 and 14.
  it('puts everything on its layer', () => {
    const text = fileOf([panel()]);
    expect(on(text, 'POLYLINE', '1')).toHaveLength(1);
    expect(on(text, 'POLYLINE', '14')).toHaveLength(1);
    expect(on(text, 'LINE', '6')).toHaveLength(1);
    expect(on(text, 'LINE', '7')).toHaveLength(1);
    expect(on(text, 'POINT', '4')).toHaveLength(2);
    expect(on(text, 'POINT', '13')).toHaveLength(1);
    expect(on(text, 'POLYLINE', '8').length).toBeGreaterThan(0);
    const vertices = ['1', '8', '14'].flatMap((layer) => on(text, 'VERTEX', layer)).length;
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

  it('brings every outline back within 0.01 mm, edge for edge, in mm and in inches', () => {
    fc.assert(
      fc.property(fc.nat(1e6), fc.constantFrom('mm', 'in'), (seed, units) => {
        const piece = randomPiece(seeded(seed), 9.525);
        const back = onlyPiece(readDxf(fileOf([piece], units as 'mm' | 'in'), reading));
        expect(back.edges).toHaveLength(piece.edges.length);
        expect(furthestApart(outlineOf(piece).whole, outlineOf(back).whole)).toBeLessThan(0.01);
      }),
      { seed: 7, numRuns: 25 },
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
    const ends = piece?.edges.map(({ shape }) => (shape.kind === 'curve' ? `${shape.leaves} ${shape.meets}` : ''));
    expect(ends).toEqual(['', 'square free', 'free square', '']);
    expect(second).toMatchObject({ drawnAs: 'not-known', cut: { how: 'single', count: 4 } });
  });
});
