/**
 * The first lay: pieces one by one, large ones first, each as near the beginning of the cloth as it goes.
 *
 * Tried are the corners of all no-fit areas, where these cross the edges of the cloth, and the corners of the cloth.
 */
import { depthIn, knowNoFits, type LayField } from './lay-field';
import { firstOnRepeat, goesAcross } from './lay-room';
import { type LayShape, noFitOf, SIDE } from './lay-table';

/** A place that is tried costs so much, in units of `work`. */
const WORK_A_PLACE = 1;

/** What a piece is large by: the four orders of which the shortest lay is kept. */
const LARGE_BY: readonly ((shape: LayShape) => number)[] = [
  ({ area }) => area,
  ({ wide, high }) => Math.max(wide, high),
  ({ wide }) => wide,
  ({ high }) => high,
];

/** A first lay under way: one order after another, piece by piece. */
export interface FirstLay {
  /** The orders still to be tried, the one under way first. */
  readonly orders: number[][];
  /** How many of the first order are laid, and all that is laid so far. */
  next: number;
  laid: number[];
}

/** Begins a first lay: nothing is laid but what is fixed. */
export function firstLay(field: LayField): FirstLay {
  return { orders: LARGE_BY.map((by) => orderOf(field, by)), next: 0, laid: fixedOf(field) };
}

/**
 * Goes on until so much is worked out in all. `laid` when an order is through: the field then lies so. `no-room` when an
 * order is through but for pieces held to the fold across the cloth; `more` when there is more to do first.
 */
export function layOn(field: LayField, first: FirstLay, until: number): 'laid' | 'no-room' | 'more' {
  const order = first.orders[0] ?? [];
  while (first.next < order.length) {
    const i = order[first.next] as number;
    if (!knowNoFits(field, i, first.laid, until)) return 'more';
    if (!layOne(field, i, first.laid)) break;
    first.laid.push(i);
    first.next++;
  }
  const found = first.next < order.length ? 'no-room' : 'laid';
  first.orders.shift();
  first.next = 0;
  first.laid = fixedOf(field);
  return found;
}

/**
 * Lays only the pieces held to the fold across the cloth, in the first order in which that fold has room for all. Gives
 * the pieces that find none.
 */
export function layHeldAcross(field: LayField): readonly number[] {
  let left: number[] = [];
  for (const by of LARGE_BY) {
    const laid = fixedOf(field);
    left = orderOf(field, by).filter((i) => {
      if (!firstShape(field, i).heldX) return false;
      if (!layOne(field, i, laid)) return true;
      laid.push(i);
      return false;
    });
    if (left.length === 0) break;
  }
  return left;
}

function firstShape({ table }: LayField, i: number): LayShape {
  return table.shapes[table.items[i]?.shapes[0] as number] as LayShape;
}

function fixedOf(field: LayField): number[] {
  return [...Array(field.count).keys()].filter((i) => field.fixed[i]);
}

/** Every piece that is not fixed; those held to a fold go first, for they have least choice. */
function orderOf(field: LayField, by: (shape: LayShape) => number): number[] {
  const order = [...Array(field.count).keys()].filter((i) => !field.fixed[i]);
  return order.sort((i, j) => {
    const [a, b] = [firstShape(field, i), firstShape(field, j)];
    return b.heldX + b.heldY - a.heldX - a.heldY || by(b) - by(a) || i - j;
  });
}

/** Lays a piece; whether there was room for it. */
function layOne(field: LayField, i: number, laid: readonly number[]): boolean {
  const { table } = field;
  let best = { end: Number.POSITIVE_INFINITY, x: 0, y: 0, shape: field.shape[i] as number };
  for (const number of table.items[i]?.shapes ?? []) {
    const shape = table.shapes[number] as LayShape;
    if (!goesAcross(table, shape)) continue;
    const consider = (wantedX: number, wantedY: number) => {
      const x = shape.heldX ? 0 : firstOnRepeat(Math.max(0, wantedX), table.repeatX, shape.phaseX);
      const y = shape.heldY ? 0 : firstOnRepeat(Math.max(0, wantedY), table.repeatY, shape.phaseY);
      if (y > Math.max(0, table.across - shape.high) || wantedX < -field.touch || wantedY < -field.touch) return;
      const end = x + shape.wide;
      if (end > best.end || (end === best.end && (x > best.x || (x === best.x && y >= best.y)))) return;
      if (isFree(field, number, x, y, laid)) best = { end, x, y, shape: number };
    };
    forCandidates(field, number, laid, consider);
  }
  field.shape[i] = best.shape;
  field.x[i] = best.x;
  field.y[i] = best.y;
  return best.end < Number.POSITIVE_INFINITY;
}

function forCandidates(
  field: LayField,
  number: number,
  laid: readonly number[],
  consider: (x: number, y: number) => void,
): void {
  const { table } = field;
  const shape = table.shapes[number] as LayShape;
  const edges = shape.heldY ? [0] : [0, Math.max(0, table.across - shape.high)];
  for (const y of edges) consider(0, y);
  let beyond = 0;
  for (const j of laid) {
    const area = noFitOf(table, field.shape[j] as number, number);
    const atX = field.x[j] as number;
    const atY = field.y[j] as number;
    beyond = Math.max(beyond, atX + area.maxX);
    for (let k = 0; k < area.count * SIDE; k += SIDE) {
      const x = atX + (area.sides[k] as number);
      const y = atY + (area.sides[k + 1] as number);
      if (!shape.heldY) consider(x, y);
      const runY = area.sides[k + 3] as number;
      for (const edge of edges) {
        const t = (edge - y) / runY;
        if (t >= 0 && t <= 1) consider(x + t * (area.sides[k + 2] as number), edge);
      }
      const runX = area.sides[k + 2] as number;
      const t = -x / runX;
      if (t >= 0 && t <= 1) consider(0, y + t * runY);
    }
  }
  consider(beyond, 0);
}

function isFree(field: LayField, number: number, x: number, y: number, laid: readonly number[]): boolean {
  const { wide, high } = field.table;
  const [endX, endY] = [x + (wide[number] as number), y + (high[number] as number)];
  field.table.work += WORK_A_PLACE;
  for (let k = laid.length - 1; k >= 0; k--) {
    const j = laid[k] as number;
    const [dx, dy] = [x - (field.x[j] as number), y - (field.y[j] as number)];
    const other = field.shape[j] as number;
    if (dx >= (wide[other] as number) || dy >= (high[other] as number)) continue;
    if ((field.x[j] as number) >= endX || (field.y[j] as number) >= endY) continue;
    if (depthIn(noFitOf(field.table, other, number), dx, dy) > field.touch) return false;
  }
  return true;
}
