import { move, type PhotoPoint } from '../geometry/point';
import { levelsNear } from './arm';
import { aboveGround, darkBeside, type LineBeside, lineBetween, topsOf } from './beside-line';
import type { GreyPicture } from './grey-picture';

/** Where a dimension line is meant to end. */
export interface LineEnd {
  readonly at: PhotoPoint;
  /** A tick or another line across it; the tip where its ink stops (an arrow's point); or the click, where nothing was found. */
  readonly by: 'tick' | 'tip' | 'click';
}

/** The two ends of a dimension line, in the order of the clicks. */
export interface DimensionEnds {
  readonly from: LineEnd;
  readonly to: LineEnd;
}

/** How dark it must be beside the line for a tick. */
const TICK = 0.5;

/** Offsets, in widths of the line, at which ticks, and longer lines across, are looked for. */
const TICK_WIDTHS = [1.4, 3] as const;
const LONG_WIDTHS = [4, 7] as const;

/** A tick lies within this many widths of where the ink of the line stops, or the line goes on past it. */
const AT_TIP_WIDTHS = 0.9;

/** How much darker the line must be than what lies beyond its tip. */
const LEAST_INK = 0.3;

/** Readings a pixel along the line. */
const FINE = 4;

/** The ends of the dimension line clicked at about `a` and `b`, each looked for within `reachPx` of its click along the line. */
export function endTicks(
  picture: GreyPicture,
  a: PhotoPoint,
  b: PhotoPoint,
  options: { readonly reachPx: number },
): DimensionEnds | undefined {
  const line = lineBetween(picture, a, b);
  if (!line) return undefined;
  const reach = Math.min(options.reachPx, line.length * 0.4);
  return {
    from: endNear(picture, line, 0, -1, reach),
    to: endNear(picture, line, line.length, 1, reach),
  };
}

function endNear(picture: GreyPicture, whole: LineBeside, clicked: number, outward: 1 | -1, reach: number): LineEnd {
  const count = Math.round(2 * reach * FINE) + 1;
  // From inside the line outwards.
  const placeOf = (i: number) => clicked + outward * (i / FINE - reach);
  const w = Math.max(1, whole.widthPx);
  // Light may differ from one end to the other.
  const levels = levelsNear(picture, move(whole.from, whole.along, clicked), reach + LONG_WIDTHS[1] * w);
  const line = levels ? { ...whole, levels } : whole;
  const beside = (widths: readonly [number, number], side: 1 | -1) =>
    aboveGround(
      readings(count, (i) =>
        darkBeside(picture, line, placeOf(i), { near: side * widths[0] * w, far: side * widths[1] * w }),
      ),
      Math.round(4 * w * FINE),
    );
  const own = readings(count, (i) => darkBeside(picture, line, placeOf(i), { near: -0.3 * w, far: 0.3 * w }));
  const tip = tipOf(own);
  const clickAt = reach * FINE;
  const near = ([1, -1] as const).map((side) => topsOf(beside(TICK_WIDTHS, side), TICK).map(({ at }) => at));
  const far = ([1, -1] as const).flatMap((side) => topsOf(beside(LONG_WIDTHS, side), TICK).map(({ at }) => at));
  const long = nearest(far, clickAt);
  const [one, other] = near.map((tops) => nearest(tops, long ?? clickAt));
  const sides = [one, other].filter(
    (at) => at !== undefined && (long === undefined || Math.abs(at - long) < 3 * w * FINE),
  );
  const at = sides.length > 0 ? sides.reduce((a: number, b) => a + (b as number), 0) / sides.length : undefined;
  // A tick stands at both sides, where the ink of the line stops or past which it goes on; an arrow's wings lie further in.
  const isAcross = at !== undefined && (long !== undefined || sides.length === 2);
  if (isAcross && (long !== undefined || tip === undefined || Math.abs(at - tip) < AT_TIP_WIDTHS * w * FINE)) {
    return { at: move(line.from, line.along, placeOf(at)), by: 'tick' };
  }
  if (tip !== undefined) return { at: move(line.from, line.along, placeOf(tip)), by: 'tip' };
  return { at: move(line.from, line.along, clicked), by: 'click' };
}

function nearest(places: readonly number[], to: number): number | undefined {
  return places.reduce<number | undefined>(
    (best, at) => (best === undefined || Math.abs(at - to) < Math.abs(best - to) ? at : best),
    undefined,
  );
}

function readings(count: number, at: (i: number) => number): Float64Array {
  return Float64Array.from({ length: count }, (_, i) => at(i));
}

/** Where the ink of the line stops for good, going outwards; `undefined` when it runs on, or was never there. */
function tipOf(own: Float64Array): number | undefined {
  const inked = aboveGround(own, own.length);
  const half = Math.max(...inked) / 2;
  let last = inked.length - 1;
  while (last >= 0 && (inked[last] as number) < half) last--;
  if (half < LEAST_INK / 2 || last < 0 || last === inked.length - 1) return undefined;
  const [here, next] = [inked[last] as number, inked[last + 1] as number];
  return last + (here - half) / (here - next || 1);
}
