/**
 * The first lay: pieces one by one, large ones first, each as near the beginning of the cloth as it goes, or leaning to
 * the edges of the cloth. Several orders are tried.
 */
import { type FreePlaces, reckonWith } from './free-places';
import { knowNoFits, type LayField, usedLength } from './lay-field';
import { goesAcross } from './lay-room';
import type { LayShape } from './lay-table';

/** What a piece is large by. */
const LARGE_BY: readonly ((shape: LayShape) => number)[] = [
  ({ area }) => area,
  ({ wide, high }) => Math.max(wide, high),
  ({ wide }) => wide,
  ({ high }) => high,
  ({ wide, high }) => wide + high,
];

/** How much shorter a place is reckoned for each unit it lies nearer to an edge of the cloth. */
const LEANINGS = [0, 0.15, 0.3];

/** Once so much is worked out no further order is begun: about a quarter of a second. */
const ENOUGH_WORK = 200_000;

/** In so many of its shapes a piece is tried: those it has first, which are not tilted. */
const SHAPES_TRIED = 4;

/** An order and a leaning to be tried. */
interface Try {
  readonly order: readonly number[];
  readonly leaning: number;
}

/** A first lay under way. */
export interface FirstLay {
  /** Still to be tried, the one under way first; none when the first lay is over. */
  readonly tries: Try[];
  /** No more is begun beyond this much work. */
  readonly enough: number;
  /** The shortest length so far. */
  shortest: number;
  /** What is laid of the one under way, the fixed first, and the free places of each shape beside it. */
  laid: number[];
  next: number;
  places: Map<number, FreePlaces>;
}

/** Begins a first lay: nothing is laid but what is fixed. */
export function firstLay(field: LayField): FirstLay {
  const tries = LEANINGS.flatMap((leaning) => LARGE_BY.map((by) => ({ order: orderOf(field, by), leaning })));
  const enough = field.table.work + ENOUGH_WORK;
  return { tries, enough, shortest: Number.MAX_VALUE, next: 0, laid: fixedOf(field), places: new Map() };
}

/**
 * Goes on until so much is worked out in all. `laid` when all pieces lie, and no longer than ever before: the field then
 * lies so. `longer` when an order was given up; `more` when there is more to do first.
 */
export function layOn(field: LayField, first: FirstLay, until: number): 'laid' | 'longer' | 'more' {
  const { tries } = first;
  const [now] = tries;
  if (!now) return 'longer';
  while (first.next < now.order.length) {
    const i = now.order[first.next] as number;
    const end = layOne(field, i, first, now.leaning, until);
    if (end === undefined) return 'more';
    if (end > first.shortest) break;
    first.laid.push(i);
    first.next++;
  }
  const isLaid = first.next === now.order.length;
  tries.shift();
  if (isLaid) first.shortest = usedLength(field);
  first.next = 0;
  first.laid = fixedOf(field);
  first.places = new Map();
  if (field.table.work >= first.enough) tries.length = 0;
  return isLaid ? 'laid' : 'longer';
}

/**
 * Lays only the pieces held to the fold across the cloth, in the first order in which that fold has room for all. Gives
 * the pieces that find none.
 */
export function layHeldAcross(field: LayField): readonly number[] {
  let left: number[] = [];
  for (const by of LARGE_BY) {
    const laid = { laid: fixedOf(field), places: new Map<number, FreePlaces>() };
    left = orderOf(field, by).filter((i) => {
      if (!firstShape(field, i).heldX) return false;
      if (layOne(field, i, laid, 0, Number.POSITIVE_INFINITY) === Number.POSITIVE_INFINITY) return true;
      laid.laid.push(i);
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
  return field.all.filter((i) => field.fixed[i]);
}

/** Every piece that is not fixed; those held to a fold go first, for they have least choice. */
function orderOf(field: LayField, by: (shape: LayShape) => number): number[] {
  const order = field.all.filter((i) => !field.fixed[i]);
  return order.sort((i, j) => {
    const [a, b] = [firstShape(field, i), firstShape(field, j)];
    return b.heldX + b.heldY - a.heldX - a.heldY || by(b) - by(a) || i - j;
  });
}

/** Lays a piece: where it ends along the cloth, beyond everything if there is no room; nothing if there is more to do. */
function layOne(
  field: LayField,
  i: number,
  { laid, places }: Pick<FirstLay, 'laid' | 'places'>,
  leaning: number,
  until: number,
): number | undefined {
  const { table } = field;
  const going = (table.items[i]?.shapes ?? []).filter((number) => goesAcross(table, table.shapes[number] as LayShape));
  const shapes = going.slice(0, SHAPES_TRIED);
  if (!knowNoFits(field, shapes, laid, until)) return undefined;
  let best = { worth: Number.POSITIVE_INFINITY, x: Number.POSITIVE_INFINITY, y: 0, shape: field.shape[i] as number };
  for (const number of shapes) {
    const free = places.get(number) ?? { x: [], y: [], seen: 0 };
    places.set(number, free);
    if (!reckonWith(field, number, free, laid, until)) return undefined;
    const wide = table.wide[number] as number;
    const across = table.across - (table.high[number] as number);
    for (let k = 0; k < free.x.length; k++) {
      const x = free.x[k] as number;
      const y = free.y[k] as number;
      const worth = x + wide + leaning * Math.min(y, across - y);
      const less = worth - best.worth;
      if (less > field.touch || (less > -field.touch && (x > best.x || (x === best.x && y >= best.y)))) continue;
      best = { worth, x, y, shape: number };
    }
  }
  field.shape[i] = best.shape;
  if (best.x === Number.POSITIVE_INFINITY) return best.x;
  field.x[i] = best.x;
  field.y[i] = best.y;
  return best.x + (table.wide[best.shape] as number);
}
