/**
 * A page with all four sides bowed, laid flat by their four curves alone: squared up by its corners, then drawn straight
 * by S. Coons's patch, in which the shift of each place is mixed from the shifts of the sides (Surfaces for computer-aided
 * design of space forms, MIT 1967). Nothing is known of the paper's own length here, so it is right at the sides and a
 * guess between them.
 */
import type { Point } from '../geometry/point';
import { applyHomography, type Homography } from '../geometry/projective';
import { type Side, sideAt } from './curl-side';

/** How far each side lies off the straight side of the squared-up page, at even steps. */
export interface CoonsShift {
  readonly across: number;
  readonly down: number;
  readonly top: Float64Array;
  readonly bottom: Float64Array;
  readonly left: Float64Array;
  readonly right: Float64Array;
}

const STEPS = 128;

/** The shifts of four sides (clockwise) on a page squared up by `toFlat`; `undefined` when a side runs back on itself. */
export function coonsShift(
  [top, right, bottom, left]: readonly [Side, Side, Side, Side],
  toFlat: Homography,
  { across, down }: { readonly across: number; readonly down: number },
): CoonsShift | undefined {
  const run = (side: Side, axis: 'x' | 'y', { isBack, base }: { readonly isBack: boolean; readonly base: number }) => {
    const places: Point[] = [];
    for (let k = 0; k <= 2 * STEPS; k++) {
      const t = k / (2 * STEPS);
      const flat = applyHomography(toFlat, sideAt(side, isBack ? 1 - t : t));
      if (!flat) return undefined;
      places.push(flat);
    }
    return evenSteps(places, axis, { length: axis === 'x' ? across : down, base });
  };
  const above = run(top, 'x', { isBack: false, base: 0 });
  const below = run(bottom, 'x', { isBack: true, base: down });
  const before = run(left, 'y', { isBack: true, base: 0 });
  const after = run(right, 'y', { isBack: false, base: across });
  if (!(above && below && before && after)) return undefined;
  return { across, down, top: above, bottom: below, left: before, right: after };
}

function evenSteps(
  places: readonly Point[],
  axis: 'x' | 'y',
  { length, base }: { readonly length: number; readonly base: number },
): Float64Array | undefined {
  const other = axis === 'x' ? 'y' : 'x';
  const list = new Float64Array(STEPS + 1);
  let at = 0;
  for (let k = 1; k < places.length; k++) {
    if (!((places[k] as Point)[axis] > (places[k - 1] as Point)[axis])) return undefined;
  }
  for (let k = 0; k <= STEPS; k++) {
    const wanted = (length * k) / STEPS;
    while (at < places.length - 2 && (places[at + 1] as Point)[axis] < wanted) at++;
    const [a, b] = [places[at] as Point, places[at + 1] as Point];
    list[k] = a[other] - base + ((b[other] - a[other]) * (wanted - a[axis])) / (b[axis] - a[axis]);
  }
  return list;
}

/** How far a place of the flat page lies from where plain squaring up would put it. */
export function shiftAt(shift: CoonsShift, { x, y }: Point): Point {
  const [u, v] = [x / shift.across, y / shift.down];
  const [cu, cv] = [Math.min(Math.max(u, 0), 1), Math.min(Math.max(v, 0), 1)];
  return {
    x: (1 - cu) * listAt(shift.left, v) + cu * listAt(shift.right, v),
    y: (1 - cv) * listAt(shift.top, u) + cv * listAt(shift.bottom, u),
  };
}

function listAt(list: Float64Array, share: number): number {
  const at = Math.min(Math.max(share, 0), 1) * STEPS;
  const k = Math.min(Math.floor(at), STEPS - 1);
  return (list[k] as number) + ((list[k + 1] as number) - (list[k] as number)) * (at - k);
}

/** The place that is shifted to `shifted`, by repeated correction; the shifts are small and even, so it settles at once. */
export function unshifted(shift: CoonsShift, shifted: Point): Point {
  let place = shifted;
  for (let round = 0; round < 40; round++) {
    const by = shiftAt(shift, place);
    const next = { x: shifted.x - by.x, y: shifted.y - by.y };
    const moved = Math.abs(next.x - place.x) + Math.abs(next.y - place.y);
    place = next;
    if (moved < 1e-10 * shift.across) break;
  }
  return place;
}
