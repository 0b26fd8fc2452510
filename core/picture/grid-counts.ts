/**
 * How many squares a printed grid has: the lines that leave its four sides inwards are counted, at several distances
 * from the side, so that a letter or a drawn line near one of them is outvoted.
 */
import { move, type PhotoPoint } from '../geometry/point';
import type { QuadCorners } from '../geometry/rectangle-aspect';
import { levelsNear } from './arm';
import { topsOf } from './beside-line';
import { type GreyPicture, greyAt } from './grey-picture';
import type { GridCounts } from './grid-crossings';
import { lineAt } from './line-width';
import { refinedOn } from './refine-corners';
import { placeOnSide, type SideCourse } from './side-course';

/** How far the grid's outermost lines may bow, as a share of the picture's shorter side, and the degree of the curves. */
const MOST_BOW = 0.05;
const DEGREE = 7;

/** Distances inward from a side, in pixels past its own ink, at which the lines leaving it are counted. */
const LOOKS_PX = [2, 4, 6, 8, 11, 14];

/** The depth of each look, in pixels. */
const DEEP_PX = 3;

/** A line is at least this share as dark as the darkest usual ones. */
const LEAST = 0.35;

/** One square may be this much wider than its neighbour, seen aslant on a curled page, before a line between is missing. */
const UNEVEN = 1.55;

/** The squares across and down inside the corners of a grid; `undefined` where the looks disagree too much to tell. */
export function gridCounts(picture: GreyPicture, corners: QuadCorners): GridCounts | undefined {
  const reachPx = MOST_BOW * Math.min(picture.width, picture.height);
  const refined = refinedOn(picture, corners, { kind: 'printed-line', reachPx, degree: DEGREE });
  if (!refined) return undefined;
  const [top, right, bottom, left] = refined.sides;
  const columns = commonest([...countsAlong(picture, top), ...countsAlong(picture, bottom)]);
  const rows = commonest([...countsAlong(picture, left), ...countsAlong(picture, right)]);
  return columns && rows ? { columns, rows } : undefined;
}

function countsAlong(picture: GreyPicture, side: SideCourse): number[] {
  const middle = placeOnSide(side, 0.03);
  const levels = levelsNear(picture, middle, 24);
  if (!levels) return [];
  const own = lineAt(picture, middle, { withinPx: 2, mostPx: 24 })?.widthPx ?? 2;
  const length = Math.hypot(side.to.x - side.from.x, side.to.y - side.from.y);
  const count = Math.round(length);
  return LOOKS_PX.flatMap((look) => {
    const darks = Float64Array.from({ length: count }, (_, i) => {
      const at = placeOnSide(side, (2 * (i + 0.5)) / count - 1);
      return darkInward(picture, at, side, own / 2 + look, levels);
    });
    const usual = darks.slice().sort()[Math.floor(count * 0.97)] ?? 0;
    const tops = usual > 0.15 ? topsOf(darks, LEAST * usual).map(({ at }) => at) : [];
    const inner = tops.filter((at) => at > own + 3 && at < count - own - 3);
    return squaresBetween([0, ...inner, count]);
  });
}

/** The mean darkness of a short look inwards, less that of the paper beside it: shadows do not count. */
function darkInward(
  picture: GreyPicture,
  at: PhotoPoint,
  { inward }: SideCourse,
  from: number,
  { paper, ink }: { readonly paper: number; readonly ink: number },
): number {
  let sum = 0;
  for (let k = 0; k <= DEEP_PX; k++) {
    const p = move(at, inward, from + k);
    const here = greyAt(picture, p.x, p.y);
    const beside = [-6, 6].map((s) => greyAt(picture, p.x - inward.dy * s, p.y + inward.dx * s));
    sum += Math.max(0, Math.min(...beside) - here);
  }
  return sum / (DEEP_PX + 1) / Math.max(1, paper - ink);
}

/** The number of squares between lines at these places; nothing where they stand too unevenly. */
function squaresBetween(places: readonly number[]): number[] {
  const gaps = places.slice(1).map((place, i) => place - (places[i] as number));
  const isEven = gaps.every((gap, i) => {
    const next = gaps[i + 1];
    return next === undefined || Math.max(gap, next) < UNEVEN * Math.min(gap, next);
  });
  return isEven ? [gaps.length] : [];
}

/** What most looks say, if at least two do and no other number as often. */
function commonest(counts: readonly number[]): number | undefined {
  const times = new Map<number, number>();
  for (const count of counts) times.set(count, (times.get(count) ?? 0) + 1);
  const [best, second] = [...times].sort((a, b) => b[1] - a[1]);
  return best && best[1] >= 2 && best[1] > (second?.[1] ?? 0) ? best[0] : undefined;
}
