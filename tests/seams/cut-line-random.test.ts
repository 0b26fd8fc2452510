import { describe, expect, it } from 'vitest';
import { outlineOf } from '../../core/garment/outline';
import type { Piece } from '../../core/garment/piece';
import { distanceToChord, flattenPath } from '../../core/geometry/flatten';
import type { Point } from '../../core/geometry/point';
import { placeInRing, type Ring, ringCrossing } from '../../core/geometry/polygon';
import { cutLine } from '../../core/seams/cut-line';
import { randomPiece, seeded } from './random-piece';

/** How closely lines are flattened here, and so the most two of them may seem to overlap by it, in mm. */
const FLATNESS = 0.1;
const SEEMING = 2 * FLATNESS + 0.02;

function ringOf(path: ReturnType<typeof outlineOf>['whole']): Ring {
  return flattenPath(path, FLATNESS).slice(0, -1);
}

function distanceToRing(ring: Ring, point: Point): number {
  return ring.reduce(
    (least, from, i) => Math.min(least, distanceToChord(point, from, ring[(i + 1) % ring.length] as Point)),
    Infinity,
  );
}

/** How far a point lies on the wrong side of a ring; 0 on the right side. */
function wrongSide(ring: Ring, point: Point, right: 'inside' | 'outside'): number {
  const place = placeInRing(ring, point);
  return place === 'boundary' || place === right ? 0 : distanceToRing(ring, point);
}

/** Pieces from one seed, those whose outline crosses itself left out. */
function simplePieces(count: number, seed: number, allowance?: number): Piece[] {
  const random = seeded(seed);
  const pieces: Piece[] = [];
  while (pieces.length < count) {
    const piece = randomPiece(random, allowance);
    if (cutLine(piece).kind !== 'crossed-outline') pieces.push(piece);
  }
  return pieces;
}

describe('cutLine(piece) of 2000 random outlines', () => {
  const pieces = simplePieces(2000, 7);
  const cuts = pieces.map(cutLine);

  it('fits in all but a few, where a hollow is tighter than its allowance', () => {
    const refused = cuts.filter(({ kind }) => kind !== 'cut-line');
    expect(refused.every(({ kind }) => kind === 'allowance-does-not-fit')).toBe(true);
    expect(refused.length).toBeLessThan(20);
  });

  it('never crosses the stitch line, and goes all the way round it', () => {
    let worst = 0;
    cuts.forEach((cut, i) => {
      if (cut.kind !== 'cut-line') return;
      const stitch = ringOf(outlineOf(pieces[i] as Piece).whole);
      const line = ringOf(cut.whole);
      for (const point of line) worst = Math.max(worst, wrongSide(stitch, point, 'outside'));
      for (const point of stitch) worst = Math.max(worst, wrongSide(line, point, 'inside'));
    });
    expect(worst).toBeLessThan(SEEMING);
  });

  it('never crosses itself', () => {
    const crossed = cuts.filter((cut) => cut.kind === 'cut-line' && ringCrossing(ringOf(cut.whole)));
    expect(crossed).toEqual([]);
  });
});

describe('cutLine(piece) of random outlines with one allowance', () => {
  it('is nowhere nearer to the stitch line than the allowance', () => {
    const width = 13;
    let least = Infinity;
    for (const piece of simplePieces(300, 23, width)) {
      const cut = cutLine(piece);
      if (cut.kind !== 'cut-line') continue;
      const stitch = flattenPath(outlineOf(piece).whole, 0.01);
      for (const point of flattenPath(cut.whole, 1)) least = Math.min(least, distanceToRing(stitch, point));
    }
    expect(least).toBeGreaterThan(width - 0.02);
  });
});
