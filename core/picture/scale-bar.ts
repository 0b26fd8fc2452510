import { move, type PhotoPoint } from '../geometry/point';
import { aboveGround, darkBeside, type LineBeside, lineBetween, topsOf } from './beside-line';
import type { GreyPicture } from './grey-picture';

/** A printed scale bar: even intervals between its marks. */
export interface ScaleBar {
  /** Intervals from the first mark to the last: one fewer than the marks. */
  readonly intervals: number;
  readonly intervalPx: number;
  /** The places of the first and the last mark on the bar. */
  readonly from: PhotoPoint;
  readonly to: PhotoPoint;
  /** How far the bar's own line goes on before the first and past the last mark, in intervals; it may be a tail, or an interval whose mark is lacking. */
  readonly before: number;
  readonly after: number;
}

/** How dark it must be beside the bar for a mark. */
const MARK = 0.45;

/** Offsets, in widths of the bar's line, at which marks are looked for, on either side. */
const MARK_WIDTHS = [1.2, 2.4] as const;

/** How far beyond the clicks marks are looked for, as a share of the bar. */
const BEYOND = 0.15;

/** A mark this far (in intervals) from where the one before would have it is none of them. */
const UNEVEN = 0.2;

/** Readings a pixel along the bar. */
const FINE = 3;

/** The intervals of the bar clicked at about its two ends; `undefined` where fewer than two even marks are seen. */
export function scaleBar(picture: GreyPicture, a: PhotoPoint, b: PhotoPoint): ScaleBar | undefined {
  const bar = lineBetween(picture, a, b);
  if (!bar) return undefined;
  const w = Math.max(1.5, bar.widthPx);
  const start = -BEYOND * bar.length;
  const count = Math.round(bar.length * (1 + 2 * BEYOND) * FINE);
  const placeOf = (i: number) => start + i / FINE;
  let best: readonly number[] = [];
  for (const side of [1, -1]) {
    const offsets = { near: side * MARK_WIDTHS[0] * w, far: side * MARK_WIDTHS[1] * w };
    const beside = Float64Array.from({ length: count }, (_, i) => darkBeside(picture, bar, placeOf(i), offsets));
    const marks = evenOnes(topsOf(aboveGround(beside, Math.round(4 * w * FINE)), MARK).map(({ at }) => placeOf(at)));
    if (marks.length > best.length) best = marks;
  }
  return best.length >= 2 ? barOf(picture, bar, best) : undefined;
}

/** The longest chain of marks at intervals that hardly change from one to the next; one in a row may be missing. */
function evenOnes(marks: readonly number[]): readonly number[] {
  let best: readonly number[] = [];
  for (let i = 0; i < marks.length; i++) {
    for (let j = i + 1; j < Math.min(marks.length, i + 4); j++) {
      const chain = chainFrom(marks, i, j);
      if (chain.length > best.length) best = chain;
    }
  }
  return best;
}

function chainFrom(marks: readonly number[], i: number, j: number): readonly number[] {
  const chain = [marks[i] as number, marks[j] as number];
  let gap = (chain[1] as number) - (chain[0] as number);
  for (;;) {
    const last = chain[chain.length - 1] as number;
    const next = [1, 2]
      .map((step) => ({ step, mark: nearestTo(marks, last + step * gap) }))
      .find(({ step, mark }) => mark !== undefined && mark > last && Math.abs(mark - last - step * gap) < UNEVEN * gap);
    if (next?.mark === undefined) return chain;
    gap = (next.mark - last) / next.step;
    chain.push(next.mark);
  }
}

function nearestTo(marks: readonly number[], place: number): number | undefined {
  return marks.reduce<number | undefined>(
    (best, mark) => (best === undefined || Math.abs(mark - place) < Math.abs(best - place) ? mark : best),
    undefined,
  );
}

function barOf(picture: GreyPicture, bar: LineBeside, marks: readonly number[]): ScaleBar {
  const [first, last] = [marks[0] as number, marks[marks.length - 1] as number];
  // One gap in two may hide a missing mark, so each is counted by the narrowest of its neighbours.
  const gaps = marks.slice(1).map((mark, i) => mark - (marks[i] as number));
  const intervals = gaps.reduce(
    (sum, gap, i) => sum + Math.round(gap / Math.min(gap, ...gaps.slice(Math.max(0, i - 2), i + 3))),
    0,
  );
  const intervalPx = (last - first) / intervals;
  const runOn = (from: number, way: 1 | -1) => {
    let gone = 0;
    while (gone < bar.length && darkBeside(picture, bar, from + way * (gone + 0.5), { near: -0.3, far: 0.3 }) > 0.4)
      gone += 0.5;
    return Math.max(0, gone - bar.widthPx / 2) / intervalPx;
  };
  return {
    intervals,
    intervalPx,
    from: move(bar.from, bar.along, first),
    to: move(bar.from, bar.along, last),
    before: runOn(first, -1),
    after: runOn(last, 1),
  };
}
