import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { outlineOf } from '../../core/garment/outline';
import type { Dart, Piece } from '../../core/garment/piece';
import { pathAtLength } from '../../core/geometry/path';
import { turnBetween, vectorBetween } from '../../core/geometry/point';
import { netEdgeLength } from '../../core/seams/edge-length';
import { splitDart } from '../../core/shaping/dart-split';
import { traced } from './traced';

const skirt = traced('skirt', [
  [[0, 0], 'waist'],
  [[260, 0], 'seam'],
  [[300, 640], 'hem'],
  [[0, 640], 'fold'],
]);
const [waist, side] = skirt.edges.map(({ id }) => id) as [string, string];
const point = { x: 130, y: 150 };
const darted: Piece = { ...skirt, darts: [{ id: 'd', edgeId: waist, along: 130, width: 40, point }] };

function angleOf(piece: Piece, dart: Dart): number {
  const path = outlineOf(piece).edges[piece.edges.findIndex(({ id }) => id === dart.edgeId)] ?? [];
  const legs = [-0.5, 0.5].map((share) =>
    vectorBetween(dart.point, pathAtLength(path, dart.along + share * dart.width).point),
  );
  return Math.abs(turnBetween(legs[0] ?? { dx: 0, dy: 0 }, legs[1] ?? { dx: 0, dy: 0 }));
}

function split(parts: Parameters<typeof splitDart>[2]): Piece {
  const made = splitDart(darted, 'd', parts);
  if ('why' in made) throw new Error(made.why);
  return made;
}

describe('splitDart(piece, dart, parts)', () => {
  it('keeps the whole intake on its edge, whatever the shares, and the outline with it', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.1, max: 5, noNaN: true }),
        fc.double({ min: 0.1, max: 5, noNaN: true }),
        (a, b) => {
          const made = split([
            { id: 'a', share: a, at: { edgeId: waist, along: 70 } },
            { id: 'b', share: b, at: { edgeId: waist, along: 180 }, point: { x: 190, y: 90 } },
          ]);
          expect(netEdgeLength(made, waist)).toBeCloseTo(220, 6);
          expect(made.darts.reduce((sum, { width }) => sum + width, 0)).toBeCloseTo(40, 9);
          expect(outlineOf(made).whole).toEqual(outlineOf(darted).whole);
          expect(made.darts.map(({ along }) => along)).toEqual([70, 180]);
          expect(made.darts[1]?.point).toEqual({ x: 190, y: 90 });
          expect(made.notches).toEqual([]);
          expect(made.labels).toEqual([]);
        },
      ),
      { seed: 7, numRuns: 40 },
    );
  });

  it('moves the point with the mouth unless said', () => {
    const made = split([
      { id: 'a', share: 1, at: { edgeId: waist, along: 80 } },
      { id: 'b', share: 1, at: { edgeId: waist, along: 170 } },
    ]);
    expect(made.darts[0]?.width).toBeCloseTo(20, 9);
    expect(made.darts[0]?.point.x).toBeCloseTo(130 + 80 - 120, 6);
    expect(made.darts[0]?.point.y).toBeCloseTo(150, 9);
  });

  it('turns a part to another edge with its share of the angle: a quarter of 2 atan(20 / 150)', () => {
    const made = split([
      { id: 'a', share: 3, at: { edgeId: waist, along: 130 } },
      { id: 'b', share: 1, at: { edgeId: side, along: 100 } },
    ]);
    const whole = 2 * Math.atan(20 / 150);
    const [a, b] = ['a', 'b'].map((name) => made.darts.find(({ id }) => id === name));
    if (!a || !b) throw new Error('no darts');
    expect(b.edgeId).toBe(side);
    expect(Math.abs(angleOf(made, b) - whole / 4)).toBeLessThan(0.002);
    expect(Math.abs(angleOf(made, a) - (whole * 3) / 4)).toBeLessThan(0.01);
    expect(Math.abs((netEdgeLength(made, waist) ?? 0) - 220)).toBeLessThan(0.5);
  });

  it('refuses one part, places that are not there, and mouths over one another', () => {
    const part = (id: string, along: number, edgeId = waist) => ({ id, share: 1, at: { edgeId, along } });
    const why = (parts: Parameters<typeof splitDart>[2], id = 'd') => {
      const made = splitDart(darted, id, parts);
      return 'why' in made ? made.why : undefined;
    };
    expect(why([part('a', 90)])).toBe('one-part');
    expect(why([part('a', 90), part('b', 130)], 'x')).toBe('no-dart');
    expect(why([part('a', 90), part('b', 9999)])).toBe('no-such-place');
    expect(why([part('a', 120), part('b', 132)])).toBe('overlap');
  });
});
