import { describe, expect, it } from 'vitest';
import { segmentTangent } from '../../core/geometry/cubic-curve';
import { parallelPieces } from '../../core/geometry/parallel-pieces';
import { forwardSpans, parallelPlace } from '../../core/geometry/parallel-source';
import { turnBetween, type Vector } from '../../core/geometry/point';
import { line, type Segment, segmentEnd } from '../../core/geometry/segment';
import { errorAlongNormals } from './parallel-error';
import { cubicOf } from './shapes';

const EDGE = cubicOf([0, 0], [20, 80], [90, 130], [160, 100]);
const WHOLE = { from: 0, to: 1 };

describe('parallelPieces', () => {
  it('meet exactly, in one direction, and end where the true parallel does', () => {
    const pieces = parallelPieces(EDGE, 12, { from: 0.1, to: 0.85 }, 1e-6);
    expect(pieces.length).toBeGreaterThan(2);
    expect(pieces[0]?.p0).toEqual(parallelPlace(EDGE, 12, 0.1).point);
    expect(segmentEnd(pieces[pieces.length - 1] as Segment)).toEqual(parallelPlace(EDGE, 12, 0.85).point);
    pieces.slice(1).forEach((piece, i) => {
      const before = pieces[i] as Segment;
      expect(segmentEnd(before)).toEqual(piece.p0);
      const turn = turnBetween(segmentTangent(before, 1) as Vector, segmentTangent(piece, 0) as Vector);
      expect(Math.abs(turn)).toBeLessThan(1e-9);
    });
  });

  it('are of the sixth order: a 64th of the error costs about twice the pieces', () => {
    const counts = [0.064, 1e-3, 1e-3 / 64].map((accuracy) => {
      const pieces = parallelPieces(EDGE, 12, WHOLE, accuracy);
      expect(errorAlongNormals([EDGE], pieces, 12)).toBeLessThan(accuracy);
      return pieces.length;
    }) as [number, number, number];
    expect(counts[2]).toBeLessThanOrEqual(2 * counts[1] + 1);
    expect(counts[1]).toBeLessThanOrEqual(2 * counts[0] + 1);
  });

  it('is one line for a line and for a cubic that is straight', () => {
    const straight = line({ x: 0, y: 0 }, { x: 30, y: 40 });
    expect(parallelPieces(straight, 5, WHOLE, 0.01)).toEqual([line({ x: 4, y: -3 }, { x: 34, y: 37 })]);
    expect(parallelPieces(cubicOf([0, 0], [3, 4], [15, 20], [30, 40]), 5, WHOLE, 0.01).length).toBe(1);
  });

  it('turns about a place where the stretch turns on the spot', () => {
    // So near a cusp that a halfway turn takes less than a millionth of a millimetre.
    const hook = cubicOf([0, 0], [100 + 1e-5, 100], [-1e-5, 100], [100, 0]);
    for (const offset of [9, -9]) {
      if (forwardSpans(hook, offset).length !== 1) continue;
      const pieces = parallelPieces(hook, offset, { from: 0.2, to: 0.8 }, 0.01);
      expect(pieces.length).toBeLessThan(20);
      expect(errorAlongNormals([hook], pieces, offset)).toBeLessThan(0.01);
    }
  });
});
