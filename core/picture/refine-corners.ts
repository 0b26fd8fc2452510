import { distance, type PhotoPoint, type Point } from '../geometry/point';
import type { QuadCorners } from '../geometry/rectangle-aspect';
import type { GreyPicture } from './grey-picture';
import { bowAt } from './robust-fit';
import { followSide, placeOnSide, type SideCourse, type SideKind } from './side-course';

/** Corners made better from the sides between them. */
export interface RefinedCorners {
  readonly corners: QuadCorners;
  /** From the top left corner clockwise: top, right, bottom, left. */
  readonly sides: readonly [SideCourse, SideCourse, SideCourse, SideCourse];
  /** The share of the worst side that is there to be seen, 0 to 1. */
  readonly seen: number;
  /** The strength of the faintest side. */
  readonly strength: number;
}

export interface RefineOptions {
  readonly kind: SideKind;
  /** How far, in pixels of the whole picture, the sides may lie from the straight lines between the given corners. */
  readonly reachPx: number;
  /** 1 for straight sides; more for sides that bow. */
  readonly degree: number;
}

/** On each finer copy the sides are looked for within this many pixels of where the one before left them. */
const STEP_REACH = 4;

/** Steps of Newton's method for a corner; the curves are nearly straight there. */
const ROUNDS = 4;

/**
 * The corners of a page or frame (top left first, clockwise) moved to where its sides meet, sub-pixel, on `levels`, a
 * picture and its halves (`pyramidOf`): first on the smallest, within the reach, then finer and finer. `undefined` when
 * a side cannot be followed or two of them do not meet.
 */
export function refineCorners(
  levels: readonly GreyPicture[],
  corners: QuadCorners,
  { kind, reachPx, degree }: RefineOptions,
): RefinedCorners | undefined {
  const last = levels.length - 1;
  const scale = 2 ** last;
  const small = corners.map(({ x, y }) => ({ x: x / scale, y: y / scale })) as unknown as QuadCorners;
  const coarsest = levels[last];
  let found = coarsest && refinedOn(coarsest, small, { kind, reachPx: reachPx / scale, degree });
  for (let level = last - 1; found && level >= 0; level--)
    found = finer(levels[level] as GreyPicture, found, kind, degree);
  return found;
}

/** The same on one picture alone, twice over: corners far off the mark leave the first readings short or long. */
export function refinedOn(
  picture: GreyPicture,
  corners: QuadCorners,
  options: RefineOptions,
): RefinedCorners | undefined {
  const follow = (at: QuadCorners, reachPx: number) =>
    joined(at.map((corner, i) => followSide(picture, corner, at[(i + 1) % 4] as Point, { ...options, reachPx })));
  const first = follow(corners, options.reachPx);
  return first && follow(first.corners, Math.min(options.reachPx, STEP_REACH + mostBow(first)));
}

/** The sides of one copy followed on the next finer one, about the curves already known. */
function finer(picture: GreyPicture, { sides }: RefinedCorners, kind: SideKind, degree: number) {
  const twice = ({ x, y }: Point): PhotoPoint => ({ x: 2 * x, y: 2 * y });
  return joined(
    sides.map(({ from, to, fit }) =>
      followSide(picture, twice(from), twice(to), {
        kind,
        reachPx: STEP_REACH,
        degree,
        about: fit.terms.map((term) => 2 * term),
      }),
    ),
  );
}

function joined(followed: readonly (SideCourse | undefined)[]): RefinedCorners | undefined {
  if (followed.some((side) => !side)) return undefined;
  const sides = followed as unknown as RefinedCorners['sides'];
  const meetings = sides.map((side, i) => meetingOf(sides[(i + 3) % 4] as SideCourse, side));
  if (meetings.some((meeting) => !meeting)) return undefined;
  return {
    corners: meetings as unknown as QuadCorners,
    sides,
    seen: Math.min(...sides.map((side) => side.seen)),
    strength: Math.min(...sides.map((side) => side.strength)),
  };
}

/** Where the end of one side meets the start of the next, by Newton's method on the two curves. */
function meetingOf(before: SideCourse, after: SideCourse): PhotoPoint | undefined {
  let [s, t] = [1, -1];
  for (let round = 0; round < ROUNDS; round++) {
    const [a, b] = [placeOnSide(before, s), placeOnSide(after, t)];
    const [a1, b1] = [placeOnSide(before, s + 1e-3), placeOnSide(after, t + 1e-3)];
    const [ax, ay] = [(a1.x - a.x) / 1e-3, (a1.y - a.y) / 1e-3];
    const [bx, by] = [(b1.x - b.x) / 1e-3, (b1.y - b.y) / 1e-3];
    const across = ax * -by + bx * ay;
    if (Math.abs(across) < 1e-6 * Math.hypot(ax, ay) * Math.hypot(bx, by)) return undefined;
    const [dx, dy] = [b.x - a.x, b.y - a.y];
    s += (dx * -by + bx * dy) / across;
    t += (ax * dy - ay * dx) / across;
    // A corner lies near the ends of its sides, or they are not its sides.
    if (!(Math.abs(s - 1) < 0.5 && Math.abs(t + 1) < 0.5)) return undefined;
  }
  const [a, b] = [placeOnSide(before, s), placeOnSide(after, t)];
  return distance(a, b) < 0.5 ? { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 } : undefined;
}

/** How far the most bowed side leaves its chord. */
function mostBow({ sides }: RefinedCorners): number {
  return Math.max(...sides.flatMap(({ fit }) => [-0.5, 0, 0.5].map((t) => Math.abs(bowAt(fit.terms, t)))));
}
