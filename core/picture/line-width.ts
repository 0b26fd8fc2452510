import type { PhotoPoint, Vector } from '../geometry/point';
import { type GreyPicture, greyAt } from './grey-picture';

/** A printed line where it was measured. */
export interface LineThere {
  /** The middle of the line. */
  readonly at: PhotoPoint;
  /** From edge to edge, where the grey is half way between ink and paper. */
  readonly widthPx: number;
  /** Along the line, length 1; which of the two ways is not said. */
  readonly along: Vector;
}

/** Directions tried: 7.5 degrees apart, so that the width comes out at most 0.2 % too large. */
const DIRECTIONS = 24;

/** Step of the look across a line, in pixels. */
const STEP_PX = 0.25;

/** The share of the brightness by which ink must be darker than its paper. */
const FAINTEST = 0.1;

/** The share of the surroundings that is darker than bare paper. */
const PAPER_RANK = 0.8;

/**
 * The printed line at or nearest to a place, by looking across the darkest spot within `withinPx` in many directions:
 * the shortest way across is square to the line. Lines wider than `mostPx` are not seen. `undefined` on bare paper.
 * A blurred thin line measures as wide as it looks.
 */
export function lineAt(
  picture: GreyPicture,
  place: PhotoPoint,
  options: { readonly withinPx: number; readonly mostPx: number },
): LineThere | undefined {
  const dark = darkestNear(picture, place, options.withinPx);
  const paper = paperNear(picture, dark, options.withinPx + options.mostPx);
  const ink = greyAt(picture, dark.x, dark.y);
  if (!(paper - ink > FAINTEST * paper)) return undefined;
  const half = (paper + ink) / 2;
  let best: LineThere | undefined;
  for (let k = 0; k < DIRECTIONS; k++) {
    const angle = (k * Math.PI) / DIRECTIONS;
    const [dx, dy] = [Math.cos(angle), Math.sin(angle)];
    const ahead = reachOf(picture, dark, dx, dy, half, options.mostPx);
    const back = reachOf(picture, dark, -dx, -dy, half, options.mostPx);
    if (ahead === undefined || back === undefined) continue;
    const widthPx = ahead + back;
    if (widthPx > options.mostPx || (best && widthPx >= best.widthPx)) continue;
    const shift = (ahead - back) / 2;
    best = { widthPx, along: { dx: -dy, dy: dx }, at: { x: dark.x + dx * shift, y: dark.y + dy * shift } };
  }
  return best;
}

/** The centre of the darkest pixel near a place; of equally dark ones the nearest. */
function darkestNear({ width, height, data }: GreyPicture, place: PhotoPoint, withinPx: number): PhotoPoint {
  let best = place;
  let least = Infinity;
  const reach = Math.max(1, withinPx);
  for (let y = Math.max(0, Math.floor(place.y - reach)); y < Math.min(height, place.y + reach); y++) {
    for (let x = Math.max(0, Math.floor(place.x - reach)); x < Math.min(width, place.x + reach); x++) {
      const off = Math.hypot(x + 0.5 - place.x, y + 0.5 - place.y);
      if (off > reach) continue;
      // A spot further off must be clearly darker.
      const level = (data[y * width + x] as number) + (off / reach) * 12;
      if (level < least) {
        least = level;
        best = { x: x + 0.5, y: y + 0.5 };
      }
    }
  }
  return best;
}

/** The grey of bare paper round a place. */
export function paperNear({ width, height, data }: GreyPicture, { x, y }: PhotoPoint, reachPx: number): number {
  const counts = new Int32Array(256);
  let left = 0;
  for (let j = Math.max(0, Math.floor(y - reachPx)); j < Math.min(height, y + reachPx); j++) {
    for (let i = Math.max(0, Math.floor(x - reachPx)); i < Math.min(width, x + reachPx); i++, left++) {
      const level = data[j * width + i] as number;
      counts[level] = (counts[level] as number) + 1;
    }
  }
  left *= PAPER_RANK;
  let level = 0;
  for (; level < 255 && left > (counts[level] as number); level++) left -= counts[level] as number;
  return level;
}

/** How far from a dark spot the grey rises through `half` in one direction; `undefined` when not within `mostPx`. */
function reachOf(
  picture: GreyPicture,
  from: PhotoPoint,
  dx: number,
  dy: number,
  half: number,
  mostPx: number,
): number | undefined {
  let before = greyAt(picture, from.x, from.y);
  for (let r = STEP_PX; r <= mostPx; r += STEP_PX) {
    const grey = greyAt(picture, from.x + dx * r, from.y + dy * r);
    if (grey >= half) return before >= half ? r : r - STEP_PX + (STEP_PX * (half - before)) / (grey - before);
    before = grey;
  }
  return undefined;
}
