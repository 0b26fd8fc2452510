import { describe, expect, it } from 'vitest';
import { transformPoint } from '../../core/geometry/affine';
import type { Point } from '../../core/geometry/point';
import { bestSimilarity } from '../../core/geometry/similarity';

const pair = (x: number, y: number, u: number, v: number) => ({ from: { x, y }, to: { x: u, y: v } });
const at = (map: ReturnType<typeof bestSimilarity>, point: Point) => map && transformPoint(map, point);

describe('bestSimilarity', () => {
  it('is exact for two pairs when the size is free', () => {
    const pairs = [pair(3, 4, 10, -2), pair(8, 16, 62, 19)];
    const map = bestSimilarity(pairs, 'free');
    for (const { from, to } of pairs) {
      expect(at(map, from)?.x).toBeCloseTo(to.x, 9);
      expect(at(map, from)?.y).toBeCloseTo(to.y, 9);
    }
  });

  it('keeps lengths when the size is kept, and shares what is left evenly between two ends', () => {
    // 13 long against 15: half an inch of two is over at each end.
    const map = bestSimilarity([pair(0, 0, 0, 0), pair(5, 12, 15, 0)], 'kept');
    expect(Math.hypot(map?.a ?? 0, map?.b ?? 0)).toBeCloseTo(1, 12);
    expect(at(map, { x: 0, y: 0 })?.x).toBeCloseTo(1, 9);
    expect(at(map, { x: 5, y: 12 })?.x).toBeCloseTo(14, 9);
    expect(at(map, { x: 5, y: 12 })?.y).toBeCloseTo(0, 9);
  });

  it('gives the numbers of the worked example in Umeyama 1991, three points of which two would need a mirror', () => {
    // From the paper's figure 1: (0,0), (1,0), (0,2) to (0,0), (-1,0), (0,2). Least squares without mirroring: the turn has
    // cosine 0.832 and sine 0.555, and the size is 0.721.
    const map = bestSimilarity([pair(0, 0, 0, 0), pair(1, 0, -1, 0), pair(0, 2, 0, 2)], 'free');
    const size = Math.hypot(map?.a ?? 0, map?.b ?? 0);
    expect(size).toBeCloseTo(0.721, 3);
    expect((map?.a ?? 0) / size).toBeCloseTo(0.832, 3);
    expect(Math.abs(map?.b ?? 0) / size).toBeCloseTo(0.555, 3);
  });

  it('says nothing for one place', () => {
    expect(bestSimilarity([pair(1, 2, 3, 4)], 'free')).toBeUndefined();
    expect(bestSimilarity([pair(1, 2, 3, 4), pair(1, 2, 5, 4)], 'kept')).toBeUndefined();
  });
});
