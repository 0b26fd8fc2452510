import type { LayField } from './lay-field';
import type { LayShape, LayTable } from './lay-table';

/** What rounding may put a piece as wide as the cloth beyond its edges: a thousand-millionth of the width. */
const ROUNDING_SHARE = 1e-9;

/** The place along the cloth nearest to `x` where a shape may begin: on the cloth, held to its end, on the repeat. */
export function placeAlong(field: LayField, shape: LayShape, x: number): number {
  if (shape.heldX) return 0;
  return nearestPlace(x, field.length - shape.wide, field.table.repeatX, shape.phaseX);
}

/** The place across the cloth nearest to `y` where a shape may begin. */
export function placeAcross(field: LayField, shape: LayShape, y: number): number {
  if (shape.heldY) return 0;
  return nearestPlace(y, field.table.across - shape.high, field.table.repeatY, shape.phaseY);
}

/** Whether a shape goes across the cloth at all, on the repeat if there is one. */
export function goesAcross({ across, repeatY }: LayTable, shape: LayShape): boolean {
  const most = across - shape.high;
  if (most < -ROUNDING_SHARE * across) return false;
  return shape.heldY === 1 || repeatY === 0 || firstOnRepeat(0, repeatY, shape.phaseY) <= most;
}

/** The first place at or beyond `from` that is on the repeat; `from` itself where there is no repeat. */
export function firstOnRepeat(from: number, repeat: number, phase: number): number {
  if (repeat === 0) return from;
  return phase + Math.ceil((from - phase) / repeat - ROUNDING_SHARE) * repeat;
}

function nearestPlace(wanted: number, most: number, repeat: number, phase: number): number {
  const inside = most < 0 ? 0 : Math.min(Math.max(wanted, 0), most);
  if (repeat === 0) return inside;
  const near = phase + Math.round((inside - phase) / repeat) * repeat;
  if (near < 0) return near + repeat;
  return near > most && near - repeat >= 0 ? near - repeat : near;
}
