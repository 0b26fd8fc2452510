import { describe, expect, it } from 'vitest';
import { patchesOf } from '../../core/picture/patches';

const PICTURE = [
  '..............',
  '.####.......#.',
  '.#..#......#..',
  '.####.....#...',
  '........##....',
  '..............',
];

describe('patchesOf', () => {
  it('finds what hangs together, across corners too, with its outermost pixels clockwise', () => {
    const isIn = Uint8Array.from(PICTURE.flatMap((row) => [...row].map((mark) => (mark === '#' ? 1 : 0))));
    const [ring, aslant, ...others] = patchesOf(isIn, 14, { leastPixels: 5 });
    expect(others).toEqual([]);
    expect(ring?.pixels).toBe(10);
    expect(ring?.hull).toEqual([
      { x: 4.5, y: 1.5 },
      { x: 4.5, y: 3.5 },
      { x: 1.5, y: 3.5 },
      { x: 1.5, y: 1.5 },
    ]);
    expect(aslant?.pixels).toBe(5);
    expect(patchesOf(isIn, 14, { leastPixels: 6 }).length).toBe(1);
  });
});
