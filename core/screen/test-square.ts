import type { Box } from '../geometry/bounds';
import type { Point } from '../geometry/point';

/** The test square is one of these (mm): the largest that leaves room for the rest. */
const SIDES = { in: [8, 6, 4, 2, 1].map((side) => side * 25.4), cm: [200, 150, 100, 50, 20] } as const;

/** It takes no more than this share of the shorter side of what is in sight. */
const SHARE = 0.45;

/** A smaller square (mm) is measured too roughly to prove a scale. */
const LEAST = 50;

/** It stands so far from any line (mm). */
const CLEAR = 4;

/** So many places across and down are tried between the corners. */
const STEPS = 12;

/** A square to be measured with a ruler: its side, and where its top left corner stands on the plane (mm). */
export interface TestSquare {
  readonly at: Point;
  readonly side: number;
}

/**
 * The largest square that lies clear of the lines of the piece, in a corner of what is in sight if it can, else wherever
 * there is room. A square under LEAST tells too little: where none as large is clear, it is the largest, where it covers
 * the fewest of `drawn`, places close to one another on the lines.
 */
export function testSquare(sight: Box, shownIn: 'in' | 'cm', drawn: readonly Point[]): TestSquare {
  const most = Math.min(sight.maxX - sight.minX, sight.maxY - sight.minY) * SHARE;
  const sides = SIDES[shownIn];
  const fitting = sides.filter((side) => side <= most);
  const largest = fitting[0] ?? (sides.at(-1) as number);
  const covered = ({ x, y }: Point, side: number) =>
    drawn.filter((point) => {
      const [across, down] = [point.x - x, point.y - y];
      return across >= -CLEAR && across <= side + CLEAR && down >= -CLEAR && down <= side + CLEAR;
    }).length;
  for (const side of fitting.filter((one) => one >= LEAST)) {
    const at = placesFor(side, sight).find((place) => covered(place, side) === 0);
    if (at) return { at, side };
  }
  const places = placesFor(largest, sight);
  const counts = places.map((place) => covered(place, largest));
  return { at: places[counts.indexOf(Math.min(...counts))] as Point, side: largest };
}

/** Where a square of that side may stand, corners first; lower down than half way the buttons would hide it. */
function placesFor(side: number, sight: Box): Point[] {
  const [width, height] = [sight.maxX - sight.minX, sight.maxY - sight.minY];
  const inset = Math.min(side * 0.3, (width - side) / 2, (height - side) / 2);
  const [left, right] = [sight.minX + inset, sight.maxX - inset - side];
  const top = sight.minY + inset;
  const bottom = sight.minY + Math.max(inset, (height - side) / 2);
  const corners = [
    { x: right, y: top },
    { x: left, y: top },
    { x: left, y: bottom },
    { x: right, y: bottom },
  ];
  const within = Array.from({ length: STEPS + 1 }, (_, row) =>
    Array.from({ length: STEPS + 1 }, (_, column) => ({
      x: left + ((right - left) * column) / STEPS,
      y: top + ((bottom - top) * row) / STEPS,
    })),
  );
  return [...corners, ...within.flat()];
}

export function squareCorners({ x, y }: Point, side: number): Point[] {
  return [
    { x, y },
    { x: x + side, y },
    { x: x + side, y: y + side },
    { x, y: y + side },
  ];
}
