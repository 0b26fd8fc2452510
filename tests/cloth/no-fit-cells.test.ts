import fc from 'fast-check';
import { expect, it } from 'vitest';
import { convexParts } from '../../core/cloth/convex-parts';
import { depthInConvex } from '../../core/cloth/convex-sum';
import { layTable, noFitOf } from '../../core/cloth/lay-table';
import type { LayTask } from '../../core/cloth/lay-task';
import { depthIn, packedNoFit } from '../../core/cloth/no-fit-cells';
import { distanceToChord } from '../../core/geometry/flatten';
import type { Point } from '../../core/geometry/point';
import { shapes0 } from './published-lays';
import { sumsOfParts } from './rings';

const block = [
  { x: 0, y: 0 },
  { x: 7, y: 0 },
  { x: 7, y: 5 },
  { x: 0, y: 5 },
];
const stances = [{ turn: 0 }];
const blocks: LayTask = { ground: { across: 30, kept: [] }, toLay: [{ id: 'a', outline: block, count: 2, stances }] };

it('depthIn(area, dx, dy) is the shortest way out: for two blocks, the least of the four ways', () => {
  const table = layTable(blocks);
  const area = noFitOf(table, 0, 0);
  expect(depthIn(area, 5, 1)).toBeCloseTo(2, 12);
  expect(depthIn(area, -1, 3.5)).toBeCloseTo(1.5, 12);
  expect(depthIn(area, 7, 0)).toBe(0);
  expect(depthIn(area, 3, -5)).toBe(0);
});

it('depthIn(area, dx, dy) is 0 just where no two convex parts overlap, level with a corner or not', () => {
  const table = layTable(shapes0);
  const sums = table.shapes.map((a) => table.shapes.map((b) => sumsOfParts(a.ring, b.ring)));
  const place = fc.double({ min: -16, max: 16, noNaN: true });
  const level = fc.integer({ min: -16, max: 16 });
  const index = fc.integer({ min: 0, max: 3 });
  fc.assert(
    fc.property(index, index, fc.oneof(place, level), fc.oneof(place, level), (stays, moves, dx, dy) => {
      const area = noFitOf(table, stays, moves);
      const depth = Math.max(...(sums[stays]?.[moves] ?? []).map((part) => depthInConvex(part, { x: dx, y: dy })));
      if (depth > 1e-6) expect(depthIn(area, dx, dy)).toBeGreaterThan(depth - 1e-6);
      if (depth < -1e-6) expect(depthIn(area, dx, dy)).toBe(0);
    }),
    { seed: 7, numRuns: 2000 },
  );
  expect(convexParts(table.shapes[0]?.ring ?? [])).toHaveLength(3);
});

it('depthIn(area, dx, dy) finds no way through where shapes only just go past one another: a slit of rounding is none', () => {
  const table = layTable(shapes0);
  for (const [stays, a] of table.shapes.entries()) {
    for (const [moves, b] of table.shapes.entries()) {
      const area = noFitOf(table, stays, moves);
      const sums = sumsOfParts(a.ring, b.ring);
      // The corners of these shapes stand on whole numbers, and so do the places where they only just go past.
      for (let dx = -14; dx <= 14; dx++) {
        for (let dy = -12; dy <= 12; dy++) {
          const depth = Math.max(...sums.map((part) => depthInConvex(part, { x: dx, y: dy })));
          if (depth > 0.5) expect(depthIn(area, dx, dy)).toBeGreaterThan(0.4);
        }
      }
    }
  }
});

it('depthIn(area, dx, dy) is the distance to the nearest of all sides inside, in every cell of a hollow curved area', () => {
  const wavy = Array.from({ length: 90 }, (_, k): Point => {
    const t = (2 * Math.PI * k) / 90;
    const reach = 7 + 2.5 * Math.sin(3 * t) + 1.1 * Math.cos(8 * t);
    return { x: reach * Math.cos(t), y: 0.6 * reach * Math.sin(t) };
  });
  const hole = [...wavy].reverse().map(({ x, y }) => ({ x: x / 4 + 0.3, y: y / 4 }));
  const area = packedNoFit([wavy, hole], 0);
  const isIn = ({ x, y }: Point) =>
    [wavy, hole]
      .flatMap((ring) => ring.map((a, i) => [a, ring[(i + 1) % ring.length] as Point] as const))
      .filter(([a, b]) => a.y > y !== b.y > y && a.x + ((y - a.y) / (b.y - a.y)) * (b.x - a.x) > x).length %
      2 ===
    1;
  const near = (point: Point) =>
    Math.min(
      ...[wavy, hole].flatMap((ring) =>
        ring.map((a, i) => distanceToChord(point, a, ring[(i + 1) % ring.length] as Point)),
      ),
    );
  const place = fc.record({
    x: fc.double({ min: -11, max: 11, noNaN: true }),
    y: fc.double({ min: -7, max: 7, noNaN: true }),
  });
  fc.assert(
    fc.property(place, (at) => {
      expect(depthIn(area, at.x, at.y)).toBeCloseTo(isIn(at) ? near(at) : 0, 9);
    }),
    { seed: 7, numRuns: 3000 },
  );
});

it('depthIn(area, dx, dy, way) gives the way that leads out in just that depth', () => {
  const table = layTable(shapes0);
  const place = fc.double({ min: -14, max: 14, noNaN: true });
  const index = fc.integer({ min: 0, max: 3 });
  const way = new Float64Array(2);
  fc.assert(
    fc.property(index, index, place, place, (stays, moves, dx, dy) => {
      const area = noFitOf(table, stays, moves);
      const depth = depthIn(area, dx, dy, way);
      if (depth === 0) return;
      const [wayX = 0, wayY = 0] = way;
      expect(Math.hypot(wayX, wayY)).toBeCloseTo(1, 9);
      expect(depthIn(area, dx + 0.5 * depth * wayX, dy + 0.5 * depth * wayY)).toBeCloseTo(0.5 * depth, 9);
      expect(depthIn(area, dx + depth * wayX, dy + depth * wayY)).toBeLessThan(1e-9);
    }),
    { seed: 7, numRuns: 2000 },
  );
});
