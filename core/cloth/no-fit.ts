/**
 * The no-fit area of two shapes: all the moves of the second at which it overlaps the first.
 *
 * It is the sum of the first and the second turned by half (Minkowski): what their convolution goes round, exact but for
 * the grid of the clipping. Moves on its boundary only touch.
 */
import { FillRule, unionD } from 'clipper2-ts';
import { rotationAbout, transformPoint } from '../geometry/affine';
import type { Point } from '../geometry/point';
import type { Ring } from '../geometry/polygon';
import { convolution } from './convolution';

/**
 * Clipping works on a decimal grid no finer than this share of the size of the sums, and at most ten times as coarse: for
 * sums of 2 m, a hundred-thousandth of a millimetre. Products of two such coordinates keep within a number's digits.
 */
const GRID_SHARE = 2 ** -29;

/** The angles of further tries, in radians: no multiples of anything a drafter would draw. */
const ODD_ANGLES = [0.7331, 1.9117];

/** So many steps of the grid wide is a slit that only the rounding has left between two parts of an area. */
const SLIT = 8;

/** How far beside a side it is asked what lies there, as a share of the size of the sums. */
const BESIDE = 1e-6;

/**
 * The boundary of the no-fit area of a shape that stays and one that moves, both clockwise to the eye; holes run the other
 * way. A move `(dx, dy)` is the point `{ x: dx, y: dy }`. The union is held against the convolution it was made of and
 * worked out anew, turned, where they do not agree: sides that lie level on one another can lead the clipping astray.
 */
export function noFit(stays: Ring, moves: Ring): Ring[] {
  const runs = convolution(
    stays,
    moves.map(({ x, y }) => ({ x: 0 - x, y: 0 - y })),
  );
  const size = runs.flat().reduce((most, { x, y }) => Math.max(most, Math.abs(x), Math.abs(y)), 0);
  if (size === 0) return [];
  const decimals = Math.max(0, Math.min(8, Math.floor(-Math.log10(size * GRID_SHARE))));
  const narrow = SLIT / 10 ** decimals;
  const united = (of: readonly Ring[]) => withoutSlits(unionD(of as Point[][], [], FillRule.NonZero, decimals), narrow);
  let rings = united(runs);
  for (const angle of ODD_ANGLES) {
    if (agrees(rings, runs, BESIDE * size)) break;
    const about = rotationAbout({ x: 0, y: 0 }, angle);
    const back = rotationAbout({ x: 0, y: 0 }, -angle);
    const slanted = runs.map((run) => run.map((point) => transformPoint(about, point)));
    rings = united(slanted).map((ring) => ring.map((point) => transformPoint(back, point)));
  }
  return rings;
}

/** The rings without the slits that rounding has left in them: where a ring runs back on itself, and rings without area. */
function withoutSlits(rings: readonly Ring[], narrow: number): Ring[] {
  return rings.map((ring) => withoutFolds(ring, narrow)).filter((ring) => ring.length > 2);
}

function withoutFolds(ring: Ring, narrow: number): Ring {
  const left = [...ring];
  // Each corner is asked again when a neighbour of it has gone.
  for (let k = 0, asked = 0; asked < left.length && left.length > 2; ) {
    const count = left.length;
    const at = k % count;
    if (isFold(left[(at + count - 1) % count] as Point, left[at] as Point, left[(at + 1) % count] as Point, narrow)) {
      left.splice(at, 1);
      k = at + left.length - 1;
      asked = 0;
    } else {
      k = at + 1;
      asked++;
    }
  }
  return left;
}

/** Whether a ring does nothing at a corner but come back the way it went. */
function isFold(before: Point, corner: Point, after: Point, narrow: number): boolean {
  const [inX, inY] = [corner.x - before.x, corner.y - before.y];
  const [outX, outY] = [after.x - corner.x, after.y - corner.y];
  const [inLength, outLength] = [Math.hypot(inX, inY), Math.hypot(outX, outY)];
  if (inLength <= narrow || outLength <= narrow) return true;
  // How far the shorter of the two stands off the line of the longer.
  const off = Math.abs(inX * outY - inY * outX) / Math.max(inLength, outLength);
  return inX * outX + inY * outY < 0 && off <= narrow;
}

/** Whether on both sides of every side, of the rings and of the runs, both say the same: within, and once, or not. */
function agrees(rings: readonly Ring[], runs: readonly Ring[], beside: number): boolean {
  return [...rings, ...runs].every((ring) =>
    ring.every((a, i) => {
      const b = ring[(i + 1) % ring.length] as Point;
      const [dx, dy] = [b.x - a.x, b.y - a.y];
      const length = Math.hypot(dx, dy);
      if (length < 4 * beside) return true;
      // Not quite the middle: there, two sides that cross evenly would be asked at their very crossing.
      const x = a.x + 0.47 * dx;
      const y = a.y + 0.47 * dy;
      return [beside / length, -beside / length].every((by) => {
        const at = { x: x - by * dy, y: y + by * dx };
        return windings(rings, at) === (windings(runs, at) > 0 ? 1 : 0);
      });
    }),
  );
}

/** How often rings go round a point. */
function windings(rings: readonly Ring[], { x, y }: Point): number {
  let times = 0;
  for (const ring of rings) {
    let a = ring[ring.length - 1] as Point;
    for (const b of ring) {
      if (a.y <= y !== b.y <= y && a.x + ((y - a.y) / (b.y - a.y)) * (b.x - a.x) > x) times += b.y > a.y ? 1 : -1;
      a = b;
    }
  }
  return times;
}
