import { type PhotoPoint, quarterTurn, type Vector } from '../geometry/point';
import { type GreyPicture, greyAt } from './grey-picture';
import { type StraightLine, straightThrough } from './straight-through';

/** A piece of printed line that leaves a place in a known direction. */
export interface Arm {
  readonly line: StraightLine;
  /** The share of the way on which there was ink. */
  readonly seen: number;
}

/** What counts as ink: the grey of the paper and of the ink there. */
export interface InkLevels {
  readonly paper: number;
  readonly ink: number;
}

/** Readings along an arm, at most this far apart in pixels. */
const STEP_PX = 1.5;

/** A reading with less of the full darkness than this is no ink. */
const FAINT = 0.4;

/** How far a reading may lie aside of the line through all, in pixels, plus a share of the width. */
const ASIDE_PX = 1;
const ASIDE_WIDTHS = 0.35;

/**
 * The line that leaves `from` in a direction (length 1), read between `startPx` and `endPx` from it within a width on
 * either side; `undefined` when on less than half of that way there is ink.
 */
export function armFrom(
  picture: GreyPicture,
  from: PhotoPoint,
  direction: Vector,
  options: { readonly startPx: number; readonly endPx: number; readonly widthPx: number; readonly levels: InkLevels },
): Arm | undefined {
  const { startPx, endPx, widthPx, levels } = options;
  const count = Math.max(4, Math.round((endPx - startPx) / STEP_PX));
  const aside = quarterTurn(direction);
  const middles: PhotoPoint[] = [];
  for (let i = 0; i <= count; i++) {
    const r = startPx + ((endPx - startPx) * i) / count;
    const middle = middleAcross(
      picture,
      { x: from.x + direction.dx * r, y: from.y + direction.dy * r },
      aside,
      Math.max(1.5, widthPx),
      levels,
    );
    if (middle) middles.push(middle);
  }
  if (middles.length < (count + 1) / 2) return undefined;
  const rough = straightThrough(middles);
  if (!rough) return undefined;
  const near = middles.filter((point) => offLine(rough, point) < ASIDE_PX + ASIDE_WIDTHS * widthPx);
  const line = straightThrough(near);
  return line && near.length >= (count + 1) / 2 ? { line, seen: near.length / (count + 1) } : undefined;
}

/** The middle of the ink across a place, weighed by its darkness; `undefined` where it is faint. */
export function middleAcross(
  picture: GreyPicture,
  { x, y }: PhotoPoint,
  aside: Vector,
  reachPx: number,
  { paper, ink }: InkLevels,
): PhotoPoint | undefined {
  let [sum, moment, most] = [0, 0, 0];
  for (let off = -reachPx; off <= reachPx; off += 0.5) {
    const grey = greyAt(picture, x + aside.dx * off, y + aside.dy * off);
    const dark = Math.max(0, (paper - grey) / (paper - ink) - FAINT / 2);
    sum += dark;
    moment += dark * off;
    most = Math.max(most, dark);
  }
  if (most < FAINT / 2) return undefined;
  const off = moment / sum;
  return { x: x + aside.dx * off, y: y + aside.dy * off };
}

/** The grey of the ink and of the paper about a place; `undefined` where there is no contrast. */
export function levelsNear(picture: GreyPicture, place: PhotoPoint, reachPx: number): InkLevels | undefined {
  const counts = new Int32Array(256);
  let all = 0;
  for (let y = Math.max(0, Math.floor(place.y - reachPx)); y < Math.min(picture.height, place.y + reachPx); y++) {
    for (
      let x = Math.max(0, Math.floor(place.x - reachPx));
      x < Math.min(picture.width, place.x + reachPx);
      x++, all++
    ) {
      const level = picture.data[y * picture.width + x] as number;
      counts[level] = (counts[level] as number) + 1;
    }
  }
  const rank = (share: number) => {
    let left = all * share;
    let level = 0;
    for (; level < 255 && left > (counts[level] as number); level++) left -= counts[level] as number;
    return level;
  };
  const [ink, paper] = [rank(0.02), rank(0.8)];
  return paper - ink > 0.12 * paper ? { paper, ink } : undefined;
}

function offLine({ at, along }: StraightLine, point: PhotoPoint): number {
  return Math.abs((point.x - at.x) * along.dy - (point.y - at.y) * along.dx);
}
