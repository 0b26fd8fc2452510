import { describe, expect, it } from 'vitest';
import type { Piece } from '../../core/garment/piece';
import { distance } from '../../core/geometry/point';
import { netEdgeLength } from '../../core/seams/edge-length';
import { type DartWish, placeDart } from '../../core/shaping/dart-place';
import { runBackwards } from '../seams/pieces';
import { traced } from './traced';

const skirt = traced('skirt', [
  [[0, 0], 'waist', [[120, 9]]],
  [[260, 0], 'seam'],
  [[300, 640], 'hem'],
  [[0, 640], 'fold'],
]);
const waist = skirt.edges[0]?.id ?? '';
const wish: DartWish = { id: 'd', edgeId: waist, along: 110, width: 24, length: 105, runs: 'square' };

function placed(piece: Piece, more: Partial<DartWish> = {}): Piece {
  const made = placeDart(piece, { ...wish, ...more });
  if ('why' in made) throw new Error(made.why);
  return made;
}

describe('placeDart(piece, wish)', () => {
  it('stands square to its mouth, so that the legs are equal, inside the piece run round either way', () => {
    for (const piece of [skirt, runBackwards(skirt)]) {
      const { darts } = placed(piece, piece === skirt ? {} : { along: 150 });
      const [dart] = darts;
      expect(dart?.point.y).toBeGreaterThan(105);
      expect(dart?.point.y).toBeLessThan(116);
      expect(Math.abs((dart?.point.x ?? 0) - 110)).toBeLessThan(8);
    }
    expect(netEdgeLength(placed(skirt), waist)).toBeCloseTo((netEdgeLength(skirt, waist) ?? 0) - 24, 9);
  });

  it('runs towards a place as far as its length', () => {
    const made = placed(skirt, { runs: { towards: { x: 150, y: 300 } }, length: 90 });
    const point = made.darts[0]?.point ?? { x: 0, y: 0 };
    const middle = { x: 110, y: 9 };
    expect(Math.abs(distance(point, middle) - 90)).toBeLessThan(0.5);
    expect((point.x - middle.x) / (point.y - middle.y)).toBeCloseTo(40 / 291, 2);
  });

  it('refuses a dart without size, beyond its edge, over another, or with its point outside', () => {
    const why = (more: Partial<DartWish>, piece = skirt) => {
      const made = placeDart(piece, { ...wish, ...more });
      return 'why' in made ? made.why : undefined;
    };
    expect(why({ edgeId: 'x' })).toBe('no-edge');
    expect(why({ width: 0 })).toBe('no-size');
    expect(why({ along: 7 })).toBe('past-the-edge');
    expect(why({ id: 'e', along: 130 }, placed(skirt))).toBe('overlaps');
    expect(why({ length: 900 })).toBe('outside');
  });
});
