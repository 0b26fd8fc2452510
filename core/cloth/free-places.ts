/**
 * Where a shape could be put so that it touches what is laid: the corners of all no-fit areas, where these cross one
 * another and the edges of the cloth, and the corners of the cloth, as far as no area covers them. A placing as near the
 * beginning of the cloth as can be is among them.
 *
 * What is laid only becomes more, so the places of a shape are kept and each newly laid piece is reckoned with once.
 */
import type { LayField } from './lay-field';
import { firstOnRepeat } from './lay-room';
import { type LayShape, noFitOf } from './lay-table';
import { depthIn, SIDE } from './no-fit-cells';

/** A place that is looked at costs so much, in units of `work`, and two sides held against each other so much. */
const WORK_A_PLACE = 1;
const WORK_A_CROSSING = 0.01;

/** The free places of one shape in the field, and with how many of the laid pieces they reckon. */
export interface FreePlaces {
  readonly x: number[];
  readonly y: number[];
  seen: number;
}

/** Reckons with what was laid since, until so much is worked out in all; whether with everything now. */
export function reckonWith(
  field: LayField,
  number: number,
  places: FreePlaces,
  laid: readonly number[],
  until: number,
): boolean {
  const { table } = field;
  const shape = table.shapes[number] as LayShape;
  const top = shape.heldY ? 0 : Math.max(0, table.across - shape.high);
  const add = (wantedX: number, wantedY: number) => {
    if (wantedX < -field.touch || wantedY < -field.touch || wantedY > top + field.touch) return;
    const x = shape.heldX ? 0 : firstOnRepeat(Math.max(0, wantedX), table.repeatX, shape.phaseX);
    const y = shape.heldY ? 0 : firstOnRepeat(Math.min(Math.max(0, wantedY), top), table.repeatY, shape.phaseY);
    if (y > top || !isFree(field, number, x, y, laid, places.seen)) return;
    places.x.push(x);
    places.y.push(y);
  };
  if (places.seen === 0) for (const y of top > 0 ? [0, top] : [0]) add(0, y);
  while (places.seen < laid.length) {
    if (table.work >= until) return false;
    const j = laid[places.seen++] as number;
    dropCovered(field, number, places, j);
    alone(field, number, j, top, add);
    for (let k = 0; k < places.seen - 1; k++) crossings(field, number, j, laid[k] as number, top, add);
  }
  return true;
}

function dropCovered(field: LayField, number: number, { x, y }: FreePlaces, j: number): void {
  const area = noFitOf(field.table, field.shape[j] as number, number);
  const atX = field.x[j] as number;
  const atY = field.y[j] as number;
  let left = 0;
  for (let k = 0; k < x.length; k++) {
    if (depthIn(area, (x[k] as number) - atX, (y[k] as number) - atY) > field.touch) continue;
    x[left] = x[k] as number;
    y[left++] = y[k] as number;
  }
  x.length = left;
  y.length = left;
}

/** The places that one laid piece gives: its no-fit area's corners, where it crosses the edges of the cloth, and beyond it. */
function alone(field: LayField, number: number, j: number, top: number, add: (x: number, y: number) => void): void {
  const area = noFitOf(field.table, field.shape[j] as number, number);
  const atX = field.x[j] as number;
  const atY = field.y[j] as number;
  add(atX + area.maxX, 0);
  for (let k = 0; k < area.count * SIDE; k += SIDE) {
    const x = atX + (area.sides[k] as number);
    const y = atY + (area.sides[k + 1] as number);
    const runX = area.sides[k + 2] as number;
    const runY = area.sides[k + 3] as number;
    add(x, y);
    const low = -y / runY;
    if (low >= 0 && low <= 1) add(x + low * runX, 0);
    const high = (top - y) / runY;
    if (top > 0 && high >= 0 && high <= 1) add(x + high * runX, top);
    const end = -x / runX;
    if (end >= 0 && end <= 1) add(0, y + end * runY);
  }
}

/** The places where the no-fit areas of two laid pieces cross, on the cloth. */
function crossings(
  field: LayField,
  number: number,
  j: number,
  other: number,
  top: number,
  add: (x: number, y: number) => void,
): void {
  const { table } = field;
  const a = noFitOf(table, field.shape[j] as number, number);
  const b = noFitOf(table, field.shape[other] as number, number);
  const atX = field.x[j] as number;
  const atY = field.y[j] as number;
  const offX = (field.x[other] as number) - atX;
  const offY = (field.y[other] as number) - atY;
  // Where the boxes round the two and the cloth have a part in common.
  const lowX = Math.max(a.minX, b.minX + offX, -atX);
  const highX = Math.min(a.maxX, b.maxX + offX);
  const lowY = Math.max(a.minY, b.minY + offY, -atY);
  const highY = Math.min(a.maxY, b.maxY + offY, top - atY);
  if (lowX > highX || lowY > highY) return;
  for (let k = 0; k < a.count * SIDE; k += SIDE) {
    const x = a.sides[k] as number;
    const y = a.sides[k + 1] as number;
    const runX = a.sides[k + 2] as number;
    const runY = a.sides[k + 3] as number;
    if ((runX < 0 ? x + runX : x) > highX || (runX < 0 ? x : x + runX) < lowX) continue;
    if ((runY < 0 ? y + runY : y) > highY || (runY < 0 ? y : y + runY) < lowY) continue;
    table.work += WORK_A_CROSSING * b.count;
    for (let m = 0; m < b.count * SIDE; m += SIDE) {
      const otherX = b.sides[m + 2] as number;
      const otherY = b.sides[m + 3] as number;
      const lean = runX * otherY - runY * otherX;
      if (lean === 0) continue;
      const toX = (b.sides[m] as number) + offX - x;
      const toY = (b.sides[m + 1] as number) + offY - y;
      const t = (toX * otherY - toY * otherX) / lean;
      if (!(t > 0 && t < 1)) continue;
      const u = (toX * runY - toY * runX) / lean;
      if (u > 0 && u < 1) add(atX + x + t * runX, atY + y + t * runY);
    }
  }
}

/** Whether a shape at (x, y) is clear of the first `count` of the laid pieces. */
function isFree(
  field: LayField,
  number: number,
  x: number,
  y: number,
  laid: readonly number[],
  count: number,
): boolean {
  const { wide, high } = field.table;
  const [endX, endY] = [x + (wide[number] as number), y + (high[number] as number)];
  field.table.work += WORK_A_PLACE;
  for (let k = count - 1; k >= 0; k--) {
    const j = laid[k] as number;
    const [dx, dy] = [x - (field.x[j] as number), y - (field.y[j] as number)];
    const other = field.shape[j] as number;
    if (dx >= (wide[other] as number) || dy >= (high[other] as number)) continue;
    if ((field.x[j] as number) >= endX || (field.y[j] as number) >= endY) continue;
    if (depthIn(noFitOf(field.table, other, number), dx, dy) > field.touch) return false;
  }
  return true;
}
