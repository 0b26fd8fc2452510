import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { outlineOf } from '../../core/garment/outline';
import type { Dart, Piece } from '../../core/garment/piece';
import { pathAtLength, pathLength, signedArea } from '../../core/geometry/path';
import { distance, type Point, turnBetween, vectorBetween } from '../../core/geometry/point';
import { closeDart, flarePlace, moveDart } from '../../core/shaping/dart-move';
import { inches, MM_PER_INCH } from '../../core/units/inch';
import { traced } from './traced';

/** A quarter of a skirt on the fold, 10 in wide and 26 long, its hem curved by nothing, with a dart of 1 in, 4 in legs. */
const skirt = traced('skirt', [
  [[0, 0], 'waist'],
  [[inches(10), 0], 'seam'],
  [[inches(10), inches(26)], 'hem'],
  [[0, inches(26)], 'fold'],
]);
const half = Math.asin(1 / 8);
const darted: Piece = {
  ...skirt,
  darts: [
    {
      id: 'd',
      edgeId: skirt.edges[0]?.id ?? '',
      along: inches(5),
      width: inches(1),
      point: { x: inches(5), y: inches(4 * Math.cos(half)) },
    },
  ],
};
const point = { x: inches(5), y: inches(4 * Math.cos(half)) };
const idOf = (index: number) => skirt.edges[index]?.id ?? '';
const lengthOf = (piece: Piece, index: number) => pathLength(outlineOf(piece).edges[index] ?? []);

function pieceOf(made: Piece | { readonly kind: string; readonly why: string }): Piece {
  if ('why' in made) throw new Error(made.why);
  return made;
}

/** The ends of a dart's mouth. */
function mouthOf(piece: Piece, dart: Dart): readonly [Point, Point] {
  const path = outlineOf(piece).edges[piece.edges.findIndex(({ id }) => id === dart.edgeId)] ?? [];
  const [one, two] = [-1, 1].map((side) => pathAtLength(path, dart.along + (side * dart.width) / 2).point);
  if (!one || !two) throw new Error('no mouth');
  return [one, two];
}

const widthOf = (piece: Piece, dart: Dart) => distance(...mouthOf(piece, dart));

function angleOf(piece: Piece, dart: Dart): number {
  const [one, two] = mouthOf(piece, dart);
  return Math.abs(turnBetween(vectorBetween(dart.point, one), vectorBetween(dart.point, two)));
}

describe('moveDart', () => {
  it('keeps the angle and lets the width grow with the legs: w2 = w1 L2 / L1 (common practice)', () => {
    fc.assert(
      fc.property(fc.double({ min: inches(2), max: inches(20), noNaN: true }), (along) => {
        const moved = pieceOf(moveDart(darted, 'd', { edgeId: idOf(1), along }));
        const [dart] = moved.darts;
        if (!dart) throw new Error('no dart');
        expect(Math.abs(angleOf(moved, dart) - 2 * half)).toBeLessThan(0.002);
        const leg = distance(point, { x: inches(10), y: along });
        expect(Math.abs(widthOf(moved, dart) - (inches(1) * leg) / inches(4))).toBeLessThan(0.01);
        expect(dart.point).toEqual(point);
      }),
      { seed: 7, numRuns: 40 },
    );
  });

  it('takes the old mouth out of its edge and leaves the fold where it is', () => {
    const moved = pieceOf(moveDart(darted, 'd', { edgeId: idOf(1), along: inches(7) }));
    // Nine inches in two legs that meet at a slight bend, smoothed.
    expect(Math.abs(lengthOf(moved, 0) - inches(9))).toBeLessThan(1);
    expect(moved.corners[0]).toBe(darted.corners[0]);
    expect(moved.corners[3]).toBe(darted.corners[3]);
    expect(lengthOf(moved, 3)).toBeCloseTo(inches(26), 9);
  });

  it('keeps what lies inside: the area is as before, the old mouth’s triangle gone and the new one’s come', () => {
    const moved = pieceOf(moveDart(darted, 'd', { edgeId: idOf(1), along: inches(7) }));
    const triangle = (leg: number) => 0.5 * leg * leg * Math.sin(2 * half);
    const leg = distance(point, { x: inches(10), y: inches(7) });
    const wanted = signedArea(outlineOf(darted).whole) - triangle(inches(4)) + triangle(leg);
    expect(Math.abs(signedArea(outlineOf(moved).whole) - wanted) / wanted).toBeLessThan(0.002);
  });

  it('goes back to where it came from', () => {
    const there = pieceOf(moveDart(darted, 'd', { edgeId: idOf(1), along: inches(7) }));
    const back = pieceOf(moveDart(there, 'd', { edgeId: idOf(0), along: inches(4.5) }));
    for (const [i, corner] of back.corners.entries()) {
      expect(distance(corner.at, darted.corners[i]?.at ?? { x: 0, y: 0 })).toBeLessThan(1);
    }
    expect(Math.abs((back.darts[0]?.width ?? 0) - inches(1))).toBeLessThan(0.5);
  });

  it('refuses what is not there, and its own mouth', () => {
    const to = { edgeId: idOf(1), along: inches(7) };
    expect(moveDart(darted, 'x', to)).toEqual({ kind: 'dart-not-moved', why: 'no-dart' });
    expect(moveDart(darted, 'd', { edgeId: 'x', along: 3 })).toEqual({ kind: 'dart-not-moved', why: 'no-such-place' });
    expect(moveDart(darted, 'd', { edgeId: idOf(0), along: inches(5.2) })).toEqual({
      kind: 'dart-not-moved',
      why: 'in-its-mouth',
    });
  });
});

describe('closeDart', () => {
  it('opens the hem 5.50 in: a dart of 1 in on a 4 in leg, its point 22 in above the hem, 2 L sin(a/2)', () => {
    const longer: Piece = {
      ...darted,
      corners: darted.corners.map((corner, i) =>
        i < 2 ? corner : { ...corner, at: { x: corner.at.x, y: point.y + inches(22) } },
      ),
    };
    const closed = pieceOf(closeDart(longer, 'd', { edgeId: idOf(2), along: inches(5) }));
    const shape = closed.edges[2]?.shape;
    const [one, two] = shape?.kind === 'curve' ? shape.through : [];
    expect(closed.darts).toEqual([]);
    expect(distance(one ?? point, two ?? point) / MM_PER_INCH).toBeCloseTo(5.5, 2);
    expect(lengthOf(closed, 2) / MM_PER_INCH).toBeGreaterThan(15.4);
    expect(lengthOf(closed, 1)).toBeCloseTo(lengthOf(longer, 1), 9);
  });
});

describe('flarePlace(piece, dart)', () => {
  it('is where the middle of the dart, carried on, comes to the hem: closed there, every edge but the hem keeps its length', () => {
    const slanted: Piece = {
      ...darted,
      darts: darted.darts.map((dart) => ({ ...dart, point: { x: inches(5.5), y: inches(4) } })),
    };
    const place = flarePlace(slanted, 'd');
    // From (5, 0) through (5.5, 4) to y = 26 is x = 8.25; the hem runs from x = 10 backwards.
    expect((place?.along ?? 0) / MM_PER_INCH).toBeCloseTo(1.75, 9);
    expect(place?.edgeId).toBe(idOf(2));
    const closed = pieceOf(closeDart(slanted, 'd', place ?? { edgeId: '', along: 0 }));
    expect(lengthOf(closed, 1)).toBeCloseTo(inches(26), 9);
    expect(lengthOf(closed, 3)).toBeCloseTo(inches(26), 9);
    expect(lengthOf(closed, 2)).toBeGreaterThan(inches(15));
  });

  it('is nothing where there is no such dart or no hem', () => {
    expect(flarePlace(darted, 'x')).toBeUndefined();
    const noHem = { ...darted, edges: darted.edges.map((edge) => ({ ...edge, role: 'seam' as const })) };
    expect(flarePlace(noHem, 'd')).toBeUndefined();
  });
});
