import { describe, expect, it } from 'vitest';
import { sameEitherSide } from '../../core/cloth/same-either-side';
import { rectangle } from './rings';

describe('sameEitherSide(outline)', () => {
  const gore = (slope: number) => [
    { x: 0, y: 30 },
    { x: 700, y: 0 },
    { x: 700, y: 200 + slope },
    { x: 0, y: 170 },
  ];

  it('knows a gore that flares alike on both sides, wherever it lies', () => {
    expect(sameEitherSide(rectangle(300, 70))).toBe(true);
    expect(sameEitherSide(gore(0))).toBe(true);
    expect(sameEitherSide(gore(0).map(({ x, y }) => ({ x: x - 90, y: y + 41 })))).toBe(true);
  });

  it('tells one that does not, by a few millimetres, and one that is alike only end for end', () => {
    expect(sameEitherSide(gore(9))).toBe(false);
    const slanted = gore(0).map(({ x, y }) => ({ x, y: y + 0.2 * x }));
    expect(sameEitherSide(slanted)).toBe(false);
    const step = [
      ...rectangle(300, 70).slice(0, 2),
      { x: 300, y: 20 },
      { x: 292, y: 20 },
      { x: 292, y: 70 },
      { x: 0, y: 70 },
    ];
    expect(sameEitherSide(step)).toBe(false);
  });
});
