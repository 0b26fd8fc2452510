import { distance, type TablePoint } from '../../core/geometry/point';

/** What snapping may use. Everything in millimetres of the table, so it does not change with nearness. */
export interface SnapTo {
  /** The step of the grid, counted from the table's zero; `undefined` leaves the pointer free. */
  readonly step: number | undefined;
  /** Points that are met exactly when the pointer comes near. */
  readonly points?: readonly TablePoint[];
  /** Points whose height or side the pointer keeps to when it comes near and no grid holds it. */
  readonly inLineWith?: readonly TablePoint[];
  /** How near is near. */
  readonly reach: number;
}

/** Where a place snaps, and to what. */
export interface Snapped {
  readonly at: TablePoint;
  /** `ink` is the middle of a printed line, `meeting` where printed lines meet or end. */
  readonly to: 'point' | 'grid' | 'line' | 'ink' | 'meeting' | 'nothing';
}

/** The nearest of the given points within reach, else the nearest crossing of the grid, else in line, else as it is. */
export function snapped(place: TablePoint, snap: SnapTo): Snapped {
  let best: TablePoint | undefined;
  let off = snap.reach;
  for (const point of snap.points ?? []) {
    const here = distance(point, place);
    if (here <= off) {
      best = point;
      off = here;
    }
  }
  if (best) return { at: { x: best.x, y: best.y }, to: 'point' };
  if (snap.step !== undefined && snap.step > 0) return { at: onGrid(place, snap.step), to: 'grid' };
  const at = inLine(place, snap.inLineWith ?? [], snap.reach / 2);
  return at ? { at, to: 'line' } : { at: { x: place.x, y: place.y }, to: 'nothing' };
}

/** The crossing of a grid through zero that is nearest to a place. */
export function onGrid(place: TablePoint, step: number): TablePoint {
  // Adding zero turns a negative zero into zero.
  return { x: Math.round(place.x / step) * step + 0, y: Math.round(place.y / step) * step + 0 };
}

function inLine(place: TablePoint, points: readonly TablePoint[], reach: number): TablePoint | undefined {
  let x: number | undefined;
  let y: number | undefined;
  let offX = reach;
  let offY = reach;
  for (const point of points) {
    if (Math.abs(point.x - place.x) <= offX) {
      x = point.x;
      offX = Math.abs(point.x - place.x);
    }
    if (Math.abs(point.y - place.y) <= offY) {
      y = point.y;
      offY = Math.abs(point.y - place.y);
    }
  }
  return x === undefined && y === undefined ? undefined : { x: x ?? place.x, y: y ?? place.y };
}
