import type { Box } from '../geometry/bounds';
import type { Point } from '../geometry/point';

/** The test square is one of these (mm): the largest that leaves room for the rest. */
const SIDES = { in: [8, 6, 4, 2, 1].map((side) => side * 25.4), cm: [200, 150, 100, 50, 20] } as const;

/** It takes no more than this share of the shorter side of what is in sight. */
const SHARE = 0.45;

/** A square to be measured with a ruler: its side, and where its top left corner stands on the plane (mm). */
export interface TestSquare {
  readonly at: Point;
  readonly side: number;
}

/** The square in that corner of what is in sight where the fewest places of the piece's lines lie in it; at the top if all are alike. */
export function testSquare(sight: Box, shownIn: 'in' | 'cm', drawn: readonly Point[]): TestSquare {
  const [width, height] = [sight.maxX - sight.minX, sight.maxY - sight.minY];
  const sides = SIDES[shownIn];
  const side = sides.find((one) => one <= Math.min(width, height) * SHARE) ?? (sides.at(-1) as number);
  const inset = Math.min(side * 0.3, (width - side) / 2, (height - side) / 2);
  const [left, right] = [sight.minX + inset, sight.maxX - inset - side];
  // Lower down than half way the buttons would hide it.
  const top = sight.minY + inset;
  const bottom = sight.minY + Math.max(inset, (height - side) / 2);
  const places = [
    { x: right, y: top },
    { x: left, y: top },
    { x: left, y: bottom },
    { x: right, y: bottom },
  ];
  const inside = ({ x, y }: Point) =>
    drawn.filter((point) => point.x >= x && point.x <= x + side && point.y >= y && point.y <= y + side).length;
  const counts = places.map(inside);
  return { at: places[counts.indexOf(Math.min(...counts))] as Point, side };
}

export function squareCorners({ x, y }: Point, side: number): Point[] {
  return [
    { x, y },
    { x: x + side, y },
    { x: x + side, y: y + side },
    { x, y: y + side },
  ];
}
