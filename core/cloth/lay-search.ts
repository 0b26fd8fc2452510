/**
 * Laying, step by step. A plain lay stands at once and a good first one soon; then the cloth is shortened, the pieces are taken apart on what is
 * left, and so on. Where that fails the lays that came nearest are stirred and tried again. The best lay is kept, and it
 * never gets longer.
 *
 * The method is that of guided cuckoo search (Elkeran 2013) and of Gardeyn and Wauters (2025): overlaps are allowed for a
 * while and count the more the longer they stay.
 */
import { layInColumns } from './columns';
import { firstLay, layHeldAcross, layOn } from './first-lay';
import { isClear, isOnCloth, leastLength } from './lay-bounds';
import { type LayField, layField, noteDepths, usedLength } from './lay-field';
import { goesAcross } from './lay-room';
import { FIRST_SHORTER, shortenCloth, stir } from './lay-shorten';
import { type LayShape, layTable } from './lay-table';
import type { Lay, LayTask, Placed } from './lay-task';
import type { Random, SearchEffort } from './place-search';
import { type Doing, keptOf, type LaySearch, restore } from './search-state';
import { roundOf, separate } from './separate';

/** What one piece's search costs, the rounds in vain and the strikes after which a length is given up: found by trial. */
const EFFORT: SearchEffort = { anywhere: 12, near: 8, touching: 16, bettered: 3 };
const ROUNDS_IN_VAIN = 150;
const STRIKES = 3;

/** Where pieces are few, rounds cost little: they go on until so many pieces were placed in vain. */
const PLACED_IN_VAIN = 15_000;

/** What a step works out at most before it ends, in units of the table's `work`: about so many microseconds. */
const STEP_WORK = 8000;

/** Overlaps must become less by so much for the rounds to count anew, and after a lay the next step grows by so much. */
const NEARER = 0.98;
const AFTER_LAY = 1.3;

/** The search begins again after so many rounds and some times as many as it took to come where it is. */
const ROUNDS_AT_LEAST = 6000;
const AS_LONG_AGAIN = 2;

/** A lay found in so few rounds came quickly; then the cloth is shortened by this share at most. */
const QUICK = 12;
const BOLDEST = 0.03;

/** Pieces that go across the cloth in no stance. */
export interface NotAcross {
  readonly kind: 'not-across';
  readonly ids: readonly string[];
}

/** Pieces held to a fold across the cloth, for which that fold has no room. */
export interface NoRoomOnFold {
  readonly kind: 'no-room-on-fold';
  readonly ids: readonly string[];
}

/** A lay of her own to begin from; it may overlap. Pieces it does not name lie where the first lay puts them. */
export interface LayStart {
  readonly from?: Lay;
}

/**
 * Begins a search, with a lay of hers or with a plain one, which is there at once. Hers is the best so far only if it has
 * no overlaps; if it has, the search takes it apart. `random` gives numbers from 0 to 1; the same ones give the same lays.
 */
export function startLay(task: LayTask, random: Random, { from }: LayStart = {}): LaySearch | NotAcross | NoRoomOnFold {
  const table = layTable(task);
  const stuck = table.items.filter(
    ({ shapes, fixed }) => !fixed && !shapes.some((number) => goesAcross(table, table.shapes[number] as LayShape)),
  );
  if (stuck.length > 0) return { kind: 'not-across', ids: [...new Set(stuck.map(({ id }) => id))] };
  const field = layField(table);
  const left = layHeldAcross(field);
  const ids = [...new Set(left.map((i) => table.items[i]?.id ?? ''))];
  if (ids.length > 0) return { kind: 'no-room-on-fold', ids };
  layInColumns(field);
  const plain = keptNow(field);
  if (from) putDown(field, from);
  field.length = usedLength(field);
  const goesOn = from !== undefined && isOnCloth(field) && isClear(field);
  const stands = goesOn ? keptNow(field) : plain;
  const search: LaySearch = {
    kind: 'search',
    field,
    random,
    least: leastLength(field),
    doing: { kind: 'first', first: firstLay(field), ...(from ? { hers: from } : {}) },
    best: stands,
    ...begunFrom(stands),
    nearest: { ...keptOf(field), depth: 0 },
    rounds: 0,
    roundsInVain: 0,
    strikes: 0,
  };
  if (goesOn) shortenCloth(search);
  return search;
}

/**
 * One step of a few milliseconds (see `STEP_WORK`): `better` when there is a better lay now, `shortest` when there can be
 * none.
 */
export function layStep(search: LaySearch): 'better' | 'same' | 'shortest' {
  const { field, doing } = search;
  if (search.best.length <= search.least * (1 + 1e-9)) return 'shortest';
  const until = field.table.work + STEP_WORK;
  if (doing.kind === 'first') return firstStep(search, doing, until);
  if (doing.kind === 'depths') {
    for (; doing.next < field.count; doing.next++) {
      if (field.table.work >= until) return 'same';
      noteDepths(field, doing.next, doing.next);
    }
    search.doing = { kind: 'round', round: roundOf(field, search.random) };
  }
  if (search.doing.kind !== 'round') return 'same';
  const depth = separate(field, search.doing.round, EFFORT, search.random, until);
  return depth === undefined ? 'same' : roundDone(search, depth);
}

function firstStep(search: LaySearch, { first, hers }: Doing & { kind: 'first' }, until: number): 'better' | 'same' {
  const { field } = search;
  const found = layOn(field, first, until);
  if (found === 'more') return 'same';
  const isBetter = found === 'laid' && usedLength(field) < search.best.length && isClear(field);
  if (isBetter) search.best = keptNow(field);
  if (first.tries.length === 0) {
    Object.assign(search, begunFrom(search.best));
    restore(field, search.best);
    if (hers) putDown(field, hers);
    shortenCloth(search);
  }
  return isBetter ? 'better' : 'same';
}

function roundDone(search: LaySearch, depth: number): 'better' | 'same' {
  const { field } = search;
  search.rounds++;
  search.roundsGone++;
  if (depth === 0 && usedLength(field) < search.reached.length && isClear(field)) {
    search.reached = keptNow(field);
    search.roundsTaken = search.roundsGone;
    search.misses = [];
    // A lay that came quickly is far from the shortest there is: the next step may be bold.
    const quick = search.rounds <= QUICK;
    search.shorten = Math.min(quick ? BOLDEST : Math.max(FIRST_SHORTER, search.shorten), search.shorten * AFTER_LAY);
    const isBetter = search.reached.length < search.best.length;
    if (isBetter) search.best = search.reached;
    shortenCloth(search);
    return isBetter ? 'better' : 'same';
  }
  if (depth < search.nearest.depth) {
    if (depth < NEARER * search.nearest.depth) search.roundsInVain = 0;
    search.nearest = { ...keptOf(field), depth };
  } else search.roundsInVain++;
  if (search.roundsInVain > Math.max(ROUNDS_IN_VAIN, PLACED_IN_VAIN / field.count)) {
    search.roundsInVain = 0;
    search.strikes++;
    restore(field, search.nearest);
    search.doing = { kind: 'depths', next: 0 };
    if (search.strikes < STRIKES) return 'same';
    if (search.roundsGone > ROUNDS_AT_LEAST + AS_LONG_AGAIN * search.roundsTaken) beginAgain(search);
    else stir(search);
  } else search.doing = { kind: 'round', round: roundOf(field, search.random) };
  return 'same';
}

/** How a search stands that begins from a lay. */
function begunFrom(lay: LaySearch['best']) {
  return { begun: lay, reached: lay, misses: [], shorten: FIRST_SHORTER, roundsGone: 0, roundsTaken: 0 };
}

/** Nothing better comes of what is reached: from the beginning chance leads elsewhere. */
function beginAgain(search: LaySearch): void {
  Object.assign(search, begunFrom(search.begun));
  restore(search.field, search.begun);
  shortenCloth(search);
}

function keptNow(field: LayField): LaySearch['best'] {
  return { ...keptOf(field), length: usedLength(field) };
}

/** The best lay so far. */
export function bestLay({ field, best }: LaySearch): Lay {
  const placed = field.table.items.flatMap(({ id, copy, shapes, isKept }, i): Placed[] => {
    if (isKept) return [];
    const at = { x: best.x[i] as number, y: best.y[i] as number };
    return [{ id, copy, stance: shapes.indexOf(best.shape[i] as number), at }];
  });
  return { placed, length: best.length };
}

/**
 * The best lay after the first one and so many steps, or as soon as it is no longer than `until`; `undefined` where {@link startLay} refuses.
 */
export function laidFor(
  task: LayTask,
  { steps, random, until = 0 }: { readonly steps: number; readonly random: Random; readonly until?: number },
): Lay | undefined {
  const search = startLay(task, random);
  if (search.kind !== 'search') return undefined;
  while (search.doing.kind === 'first' && search.best.length > until) if (layStep(search) === 'shortest') break;
  for (let step = 0; step < steps && search.best.length > until; step++) if (layStep(search) === 'shortest') break;
  return bestLay(search);
}

/** Puts pieces where a lay has them; pinned ones stay. */
function putDown(field: LayField, lay: Lay): void {
  field.table.items.forEach(({ id, copy, shapes }, i) => {
    const placed = lay.placed.find((one) => one.id === id && one.copy === copy);
    const number = placed && shapes[placed.stance];
    if (!placed || number === undefined || field.fixed[i]) return;
    field.shape[i] = number;
    field.x[i] = placed.at.x;
    field.y[i] = placed.at.y;
  });
}
