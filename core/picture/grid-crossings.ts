/**
 * The crossings of a printed grid, numbered from its top left corner. Each is looked for where the grid's own corners
 * and its found neighbours say it should be, so a grid on a curled page is followed as it bows; what is found is the
 * place where the two printed lines meet, sub-pixel.
 *
 * Limits: squares smaller than about 12 pixels; the corners must be those of the outermost lines.
 */
import { distance, type PhotoPoint, unit, type Vector, vectorBetween } from '../geometry/point';
import { applyHomography, homographyFrom } from '../geometry/projective';
import type { QuadCorners } from '../geometry/rectangle-aspect';
import { armFrom, levelsNear } from './arm';
import { type GreyPicture, greyAt } from './grey-picture';
import { lineAt } from './line-width';
import { nearestToLines } from './straight-through';

/** A crossing: which line down (from the left) and which across (from the top), counted from 0, and where. */
export interface GridCrossing {
  readonly column: number;
  readonly row: number;
  readonly at: PhotoPoint;
}

/** How many squares the grid has. */
export interface GridCounts {
  readonly columns: number;
  readonly rows: number;
}

/** How far from where it should be a crossing is looked for, as a share of a square. */
const REACH = 0.28;

/** The stretch of the lines from which a crossing is read, as shares of a square. */
const READ = [0.1, 0.42] as const;

/** Squares of fewer pixels than this are not told apart. */
const LEAST_SQUARE_PX = 8;

function unitPairs(corners: QuadCorners, { columns, rows }: GridCounts) {
  const places = [
    { x: 0, y: 0 },
    { x: columns, y: 0 },
    { x: columns, y: rows },
    { x: 0, y: rows },
  ];
  return places.map((from, i) => ({ from, to: corners[i] as PhotoPoint }));
}

/** All crossings that are to be seen of a grid with these corners and so many squares; none for impossible corners. */
export function gridCrossings(picture: GreyPicture, corners: QuadCorners, counts: GridCounts): readonly GridCrossing[] {
  const toPhoto = homographyFrom(unitPairs(corners, counts));
  if ('kind' in toPhoto) return [];
  const { columns, rows } = counts;
  const found = new Map<number, GridCrossing>();
  const keyOf = (column: number, row: number) => row * (columns + 1) + column;
  const plain = (column: number, row: number) => applyHomography(toPhoto, { x: column, y: row });
  // From the four corners inwards: what lies nearer to a corner is surer.
  const order: { readonly column: number; readonly row: number; readonly ring: number }[] = [];
  for (let row = 0; row <= rows; row++) {
    for (let column = 0; column <= columns; column++) {
      order.push({ column, row, ring: Math.min(column, columns - column) + Math.min(row, rows - row) });
    }
  }
  order.sort((a, b) => a.ring - b.ring || a.row - b.row || a.column - b.column);
  for (const { column, row } of order) {
    const guess = plain(column, row);
    const ahead = plain(column + 0.5, row);
    const behind = plain(column - 0.5, row);
    const below = plain(column, row + 0.5);
    const above = plain(column, row - 0.5);
    if (!guess || !ahead || !behind || !below || !above) continue;
    const shift = shiftOfNeighbours(column, row, (c, r) => {
      const near = found.get(keyOf(c, r));
      const should = near && plain(c, r);
      return near && should && c >= 0 && c <= columns ? vectorBetween(should, near.at) : undefined;
    });
    const at = crossingNear(
      picture,
      { x: guess.x + shift.dx, y: guess.y + shift.dy },
      { along: vectorBetween(behind, ahead), down: vectorBetween(above, below) },
      { left: column > 0, right: column < columns, top: row > 0, bottom: row < rows },
    );
    if (at) found.set(keyOf(column, row), { column, row, at });
  }
  return [...found.values()].sort((a, b) => a.row - b.row || a.column - b.column);
}

/** By how much the found neighbours lie aside of where the corners alone would have them: gone on from two in a row. */
function shiftOfNeighbours(column: number, row: number, shiftAt: (c: number, r: number) => Vector | undefined): Vector {
  const shifts: Vector[] = [];
  for (const [dc, dr] of [
    [-1, 0],
    [1, 0],
    [0, -1],
    [0, 1],
  ] as const) {
    const one = shiftAt(column + dc, row + dr);
    const two = one && shiftAt(column + 2 * dc, row + 2 * dr);
    if (one) shifts.push(two ? { dx: 2 * one.dx - two.dx, dy: 2 * one.dy - two.dy } : one);
  }
  const sum = shifts.reduce((a, b) => ({ dx: a.dx + b.dx, dy: a.dy + b.dy }), { dx: 0, dy: 0 });
  const count = Math.max(1, shifts.length);
  return { dx: sum.dx / count, dy: sum.dy / count };
}

interface Sides {
  readonly left: boolean;
  readonly right: boolean;
  readonly top: boolean;
  readonly bottom: boolean;
}

function crossingNear(
  picture: GreyPicture,
  guess: PhotoPoint,
  { along, down }: { readonly along: Vector; readonly down: Vector },
  sides: Sides,
): PhotoPoint | undefined {
  const square = Math.min(Math.hypot(along.dx, along.dy), Math.hypot(down.dx, down.dy));
  if (!(square >= LEAST_SQUARE_PX)) return undefined;
  const levels = levelsNear(picture, guess, square * 0.6);
  const a = unit(along);
  const b = unit(down);
  if (!levels || !a || !b) return undefined;
  const ways = [
    ...(sides.right ? [a] : []),
    ...(sides.left ? [{ dx: -a.dx, dy: -a.dy }] : []),
    ...(sides.bottom ? [b] : []),
    ...(sides.top ? [{ dx: -b.dx, dy: -b.dy }] : []),
  ];
  const near = darkestCross(picture, guess, ways, square);
  const width = lineAt(picture, near, { withinPx: 2, mostPx: square / 2 })?.widthPx ?? 2;
  let at = near;
  for (let round = 0; round < 2; round++) {
    const arms = ways.flatMap((way) => {
      const startPx = Math.max(READ[0] * square, width);
      const arm = armFrom(picture, at, way, {
        startPx,
        endPx: READ[1] * square,
        widthPx: Math.min(width, square / 4),
        levels,
      });
      return arm ? [arm.line] : [];
    });
    const meets = nearestToLines(arms);
    if (!meets || distance(meets, guess) > 1.5 * REACH * square) return undefined;
    at = meets;
  }
  return at;
}

/** The place near a guess from which lines leave in the given ways most darkly, to a pixel. */
function darkestCross(picture: GreyPicture, guess: PhotoPoint, ways: readonly Vector[], square: number): PhotoPoint {
  const reach = Math.ceil(REACH * square);
  let best = guess;
  let least = Infinity;
  const steps = [0.08, 0.16, 0.24, 0.32, 0.4].map((share) => share * square);
  for (let dy = -reach; dy <= reach; dy++) {
    for (let dx = -reach; dx <= reach; dx++) {
      const [x, y] = [guess.x + dx, guess.y + dy];
      let sum = (Math.hypot(dx, dy) / reach) * 2;
      for (const way of ways)
        for (const r of steps) sum += greyAt(picture, x + way.dx * r, y + way.dy * r) / ways.length / 4;
      if (sum < least) {
        least = sum;
        best = { x, y };
      }
    }
  }
  return best;
}
