import { expect, it } from 'vitest';
import type { Point } from '../../core/geometry/point';
import { straightRun } from '../../core/picture/straight-run';

const [from, to] = [
  { x: 10, y: 20 },
  { x: 610, y: 220 },
];
const along = (count: number, [first, last]: readonly [number, number] = [0, 1], bow = 0): Point[] =>
  Array.from({ length: count }, (_, k) => {
    const t = first + ((last - first) * k) / (count - 1);
    const out = bow * (1 - (2 * t - 1) ** 2);
    return { x: from.x + 600 * t - out / Math.sqrt(10), y: from.y + 200 * t + (3 * out) / Math.sqrt(10) };
  });

it('keeps at most 48 places of a followed line, the first and the last among them', () => {
  const places = along(400);
  const kept = straightRun(places, from, to);
  expect(kept).toHaveLength(48);
  expect(kept?.[0]).toEqual(places[0]);
  expect(kept?.at(-1)).toEqual(places.at(-1));
  expect(straightRun(along(7), from, to)).toHaveLength(7);
});

it('keeps a bow as it was seen, and refuses a way that went elsewhere', () => {
  const bowed = straightRun(along(101, [0, 1], 30), from, to);
  expect(bowed?.[24]).toEqual(along(101, [0, 1], 30)[51]);
  expect(straightRun(along(101, [0, 1], 70), from, to)).toBeUndefined();
});

it('refuses a line seen along too little of the way, too few places and no length', () => {
  expect(straightRun(along(101, [0.05, 0.9]), from, to)).toBeDefined();
  expect(straightRun(along(101, [0, 0.7]), from, to)).toBeUndefined();
  expect(straightRun(along(2), from, to)).toBeUndefined();
  expect(straightRun([], from, to)).toBeUndefined();
  expect(straightRun(along(50), from, from)).toBeUndefined();
});
