/**
 * The state of a search: where everything lies now, how deep pieces lie in one another, and how much each such overlap
 * counts. Mutable and in plain numbers, for a search asks for a million depths a second.
 */
import { type LayItem, type LayTable, noFitOf } from './lay-table';
import { depthIn } from './no-fit-cells';
import { noWays, type WaysKnown } from './ways-known';

export interface LayField {
  readonly table: LayTable;
  readonly count: number;
  /** The cloth's length that is tried for now. */
  length: number;
  readonly shape: Int32Array;
  readonly x: Float64Array;
  readonly y: Float64Array;
  /** Whether a piece never moves. */
  readonly fixed: Uint8Array;
  /** How much an overlap of two pieces counts, by `one * count + other`. */
  readonly weight: Float64Array;
  /** What the overlap of two pieces counts before it has proved stubborn: more for larger ones. */
  readonly worth: Float64Array;
  /** How deep two pieces lie in one another, by `one * count + other`. */
  readonly depth: Float64Array;
  /** A depth below this is a touch: a hundred-millionth of the cloth's width, far below any tool. */
  readonly touch: number;
  /** The numbers of all pieces. */
  readonly all: readonly number[];
  /** Room for the others near a piece, used again and again. */
  readonly near: Others;
  /** The ways clear of these, likewise. */
  readonly ways: WaysKnown;
}

const TOUCH_SHARE = 1e-8;

/** An overlap counts by this power of the product of two areas: found by trial on published sets. */
const WORTH_BY_AREA = 0.35;

/** A field with everything at the origin in its first shape, fixed things in their places, all weights 1. */
export function layField(table: LayTable): LayField {
  const count = table.items.length;
  const field: LayField = {
    table,
    count,
    length: 0,
    shape: new Int32Array(count),
    x: new Float64Array(count),
    y: new Float64Array(count),
    fixed: new Uint8Array(count),
    weight: new Float64Array(count * count).fill(1),
    worth: pairWorth(table),
    depth: new Float64Array(count * count),
    touch: TOUCH_SHARE * table.across,
    all: [...Array(count).keys()],
    near: { list: new Int32Array(count), count: 0 },
    ways: noWays(),
  };
  table.items.forEach(({ shapes, fixed }: LayItem, i) => {
    field.shape[i] = fixed?.shape ?? (shapes[0] as number);
    field.x[i] = fixed?.at.x ?? 0;
    field.y[i] = fixed?.at.y ?? 0;
    field.fixed[i] = fixed ? 1 : 0;
  });
  return field;
}

/** The larger the two pieces the more an overlap counts, so that small ones give way. */
function pairWorth({ items, shapes }: LayTable): Float64Array {
  const areas = items.map(({ shapes: [first] }) => shapes[first as number]?.area ?? 0);
  const most = Math.max(...areas);
  return Float64Array.from(areas.flatMap((a) => areas.map((b) => ((a * b) / (most * most)) ** WORTH_BY_AREA)));
}

/** Other pieces near enough to matter to a piece, by number: the first `count` of `list`. */
export interface Others {
  readonly list: Int32Array;
  count: number;
}

/** Puts into `others` every piece that piece `i`, in `shape`, could overlap anywhere within `reach` of (x, y). */
export function noteOthers(
  field: LayField,
  i: number,
  shape: number,
  x: number,
  y: number,
  reach: number,
  others: Others,
): void {
  const { count } = field;
  const { wide, high } = field.table;
  const [endX, endY] = [x + (wide[shape] as number) + reach, y + (high[shape] as number) + reach];
  others.count = 0;
  for (let j = 0; j < count; j++) {
    const atX = field.x[j] as number;
    const atY = field.y[j] as number;
    if (atX >= endX || atY >= endY || j === i) continue;
    const other = field.shape[j] as number;
    if (atX + (wide[other] as number) <= x - reach || atY + (high[other] as number) <= y - reach) continue;
    others.list[others.count++] = j;
  }
}

/** The weighted depth of piece `i` in the others, were it in `shape` at (x, y); more than `enough` once that is passed. */
export function weightedDepth(field: LayField, i: number, shape: number, x: number, y: number, enough: number): number {
  const { table, count, weight } = field;
  const { noFits, wide, high } = table;
  const shapeCount = table.shapes.length;
  const row = i * count;
  const [endX, endY] = [x + (wide[shape] as number), y + (high[shape] as number)];
  let sum = 0;
  for (let j = 0; j < count; j++) {
    const atX = field.x[j] as number;
    if (atX >= endX || j === i) continue;
    const atY = field.y[j] as number;
    if (atY >= endY) continue;
    const other = field.shape[j] as number;
    if (atX + (wide[other] as number) <= x || atY + (high[other] as number) <= y) continue;
    const area = noFits[other * shapeCount + shape] ?? noFitOf(table, other, shape);
    const depth = depthIn(area, x - atX, y - atY);
    if (depth <= field.touch) continue;
    sum += depth * (weight[row + j] as number);
    if (sum > enough) return sum;
  }
  return sum;
}

/**
 * Makes the no-fit areas that a piece in any of `shapes` needs beside others as they lie, until so much is worked out in
 * all; whether all of them are known now.
 */
export function knowNoFits(
  { table, shape }: LayField,
  shapes: readonly number[],
  others: Iterable<number>,
  until: number,
): boolean {
  for (const j of others) {
    const row = (shape[j] as number) * table.shapes.length;
    for (const number of shapes) {
      if (table.noFits[row + number]) continue;
      if (table.work >= until) return false;
      noFitOf(table, shape[j] as number, number);
    }
  }
  return true;
}

/** Works out anew how deep piece `i` lies in each other piece before number `end`. */
export function noteDepths(field: LayField, i: number, end = field.count): void {
  const { count } = field;
  for (let j = 0; j < end; j++) {
    if (j === i || (field.fixed[i] && field.fixed[j])) continue;
    const depth = boxesMeet(field, i, j) ? depthOfTwo(field, i, j) : 0;
    const counted = depth <= field.touch ? 0 : depth;
    field.depth[i * count + j] = counted;
    field.depth[j * count + i] = counted;
  }
}

/** The same for all pieces. */
export function noteAllDepths(field: LayField): void {
  for (let i = 0; i < field.count; i++) noteDepths(field, i, i);
}

/** Whether the boxes round two pieces share any area. */
export function boxesMeet({ table: { wide, high }, shape, x, y }: LayField, i: number, j: number): boolean {
  const [iX, iY, jX, jY] = [x[i] as number, y[i] as number, x[j] as number, y[j] as number];
  const [one, other] = [shape[i] as number, shape[j] as number];
  if (iX >= jX + (wide[other] as number) || jX >= iX + (wide[one] as number)) return false;
  return iY < jY + (high[other] as number) && jY < iY + (high[one] as number);
}

function depthOfTwo({ table, shape, x, y }: LayField, i: number, j: number): number {
  const area = noFitOf(table, shape[j] as number, shape[i] as number);
  return depthIn(area, (x[i] as number) - (x[j] as number), (y[i] as number) - (y[j] as number));
}

/** How deep piece `i` lies in others, all together. */
export function depthOf(field: LayField, i: number): number {
  let sum = 0;
  for (let j = 0; j < field.count; j++) sum += field.depth[i * field.count + j] as number;
  return sum;
}

/** How deep all pieces lie in one another, each two once, by what their overlap counts at first. */
export function totalDepth({ depth, worth, count }: LayField): number {
  let sum = 0;
  for (let i = 1; i < count; i++) {
    for (let k = i * count; k < i * count + i; k++) sum += (depth[k] as number) * (worth[k] as number);
  }
  return sum;
}

/** The length of cloth that the pieces take: the furthest end of any, places kept free not counted. */
export function usedLength(field: LayField): number {
  let length = 0;
  for (let i = 0; i < field.count; i++) {
    if (field.table.items[i]?.isKept) continue;
    length = Math.max(length, (field.x[i] as number) + (field.table.shapes[field.shape[i] as number]?.wide ?? 0));
  }
  return length;
}
