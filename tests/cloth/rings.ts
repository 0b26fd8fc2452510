import fc from 'fast-check';
import { convexParts } from '../../core/cloth/convex-parts';
import { convexSum } from '../../core/cloth/convex-sum';
import type { Ring } from '../../core/geometry/polygon';

/** From (0, 0) to the right and down. */
export const rectangle = (wide: number, high: number): Ring => [
  { x: 0, y: 0 },
  { x: wide, y: 0 },
  { x: wide, y: high },
  { x: 0, y: high },
];

/** A yoke, hollow on one side: 12 wide, 8 high, the hollow 6 wide and 5 deep. */
export const yoke: Ring = [
  { x: 0, y: 0 },
  { x: 3, y: 0 },
  { x: 3, y: 5 },
  { x: 9, y: 5 },
  { x: 9, y: 0 },
  { x: 12, y: 0 },
  { x: 12, y: 8 },
  { x: 0, y: 8 },
];

/** Rings round (0, 0), hollow and not. */
export const star = fc.array(fc.integer({ min: 30, max: 210 }), { minLength: 4, maxLength: 10 }).map((reach) =>
  reach.map((r, i) => ({
    x: r * Math.cos((2 * Math.PI * i) / reach.length),
    y: r * Math.sin((2 * Math.PI * i) / reach.length),
  })),
);

/** The no-fit area of two rings in another way: as the sums of their convex parts, which cover it. */
export function sumsOfParts(stays: Ring, moves: Ring): Ring[] {
  const turned = convexParts(moves).map((part) => part.map(({ x, y }) => ({ x: -x, y: -y })));
  return convexParts(stays).flatMap((a) => turned.map((b) => convexSum(a, b)));
}
