import { expect, it } from 'vitest';
import { inStance, outlineInStance, placedOutline } from '../../core/cloth/stance-outline';
import { ringArea } from '../../core/geometry/polygon';

const outline = [
  { x: 5, y: 1 },
  { x: 12, y: 1 },
  { x: 5, y: 4 },
];

it('inStance(point, stance) turns clockwise to the eye, over before that, quarter turns exactly', () => {
  expect(inStance({ x: 7, y: 0 }, { turn: Math.PI / 2 })).toEqual({ x: 0, y: 7 });
  expect(inStance({ x: 7, y: 2 }, { turn: 0, over: 'mirrored' })).toEqual({ x: -7, y: 2 });
  expect(inStance({ x: 7, y: 2 }, { turn: Math.PI, over: 'mirrored' })).toEqual({ x: 7, y: -2 });
  const slanted = inStance({ x: 10, y: 0 }, { turn: Math.PI / 6 });
  expect(slanted.y).toBeCloseTo(5, 12);
});

it('outlineInStance(outline, stance) stands at the origin and runs clockwise, turned over or not', () => {
  for (const over of [undefined, 'mirrored'] as const) {
    const ring = outlineInStance(outline, over ? { turn: 1.1, over } : { turn: 1.1 });
    expect(ringArea(ring)).toBeCloseTo(10.5, 9);
    expect(Math.min(...ring.map(({ x }) => x))).toBeCloseTo(0, 12);
    expect(Math.min(...ring.map(({ y }) => y))).toBeCloseTo(0, 12);
  }
});

it('placedOutline(piece, placed) is nothing for a stance the piece does not have', () => {
  const piece = { id: 'a', outline, count: 1, stances: [{ turn: 0 }] };
  expect(placedOutline(piece, { id: 'a', copy: 0, stance: 0, at: { x: 30, y: 40 } })[0]).toEqual({ x: 30, y: 40 });
  expect(placedOutline(piece, { id: 'a', copy: 0, stance: 1, at: { x: 30, y: 40 } })).toEqual([]);
});
