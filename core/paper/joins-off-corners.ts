import { pathEnd, pathStart } from '../geometry/path';
import { movedPoint } from './moved-marks';
import { planPages } from './page-plan';
import { drawingOf, type TapedSheet } from './placed-piece';

/** A join nearer to a corner of the stitch line, or to a notch, than this runs through it (mm). */
const NEAR = 6;

/** Shifts that are tried lie this far apart (mm), and so many that look best are planned. */
const TRY_EVERY = 3;
const MOST_PLANNED = 12;

/** The drawing keeps this far from the outer edge of the sheets, or as far as it did (mm). */
const CLEAR = 4;

/** What lies along one direction. */
interface Along {
  readonly places: readonly number[];
  readonly drawn: readonly [from: number, to: number];
  readonly origin: number;
  readonly step: number;
  readonly window: number;
  readonly count: number;
}

/**
 * The pages shifted under their pieces so that joins run through as few corners and notches as can be, where that takes no
 * more pages; the very same sheet where nothing is gained.
 */
export function joinsOffCorners(sheet: TapedSheet): TapedSheet {
  const { placed, plan } = sheet;
  if (plan.pages.length === 1 || plan.paper.size === 'roll') return sheet;
  const { origin, step, window, drawn } = plan;
  const places = placed.flatMap(({ piece, motion, marks }) => [
    ...piece.corners.map(({ at }) => movedPoint(motion, at)),
    ...marks.flatMap((mark) =>
      mark.kind === 'stroke' && (mark.line === 'notch' || mark.line === 'opening')
        ? [pathStart(mark.path), pathEnd(mark.path)]
        : [],
    ),
  ]);
  const across = shiftsAlong({
    places: places.map(({ x }) => x),
    drawn: [drawn.minX, drawn.maxX],
    origin: origin.x,
    step: step.across,
    window: window.width,
    count: plan.columns,
  });
  const down = shiftsAlong({
    places: places.map(({ y }) => y),
    drawn: [drawn.minY, drawn.maxY],
    origin: origin.y,
    step: step.down,
    window: window.height,
    count: plan.rows,
  });
  const now = (across[0]?.cut ?? 0) + (down[0]?.cut ?? 0);
  const better = across
    .flatMap((x) => down.map((y) => ({ dx: x.by, dy: y.by, cut: x.cut + y.cut })))
    .filter(({ cut }) => cut < now)
    .sort((a, b) => a.cut - b.cut || Math.hypot(a.dx, a.dy) - Math.hypot(b.dx, b.dy));
  for (const { dx, dy } of better.slice(0, MOST_PLANNED)) {
    const shifted = planPages([...drawingOf(placed)], plan.paper, { x: origin.x + dx, y: origin.y + dy });
    if (shifted && shifted.pages.length <= plan.pages.length) return { placed, plan: shifted };
  }
  return sheet;
}

/** How the sheets may be shifted in one direction, none first, and how many places joins would then run through. */
function shiftsAlong(along: Along): { readonly by: number; readonly cut: number }[] {
  const { places, drawn, origin, step, window, count } = along;
  const end = origin + (count - 1) * step + window;
  const clear = Math.max(0, Math.min(CLEAR, drawn[0] - origin, end - drawn[1]));
  const [least, most] = [drawn[1] + clear - end, drawn[0] - clear - origin];
  const cut = (by: number) => {
    const first = origin + by + (window - step) / 2;
    const joins = Array.from({ length: count - 1 }, (_, k) => first + (k + 1) * step);
    return places.filter((place) => joins.some((join) => Math.abs(join - place) < NEAR)).length;
  };
  const tries = Math.max(0, Math.floor((most - least) / TRY_EVERY));
  return [0, ...Array.from({ length: tries + 1 }, (_, k) => least + k * TRY_EVERY)].map((by) => ({ by, cut: cut(by) }));
}
