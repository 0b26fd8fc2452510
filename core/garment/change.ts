/**
 * What changed between two immutable values, small enough to be kept for every step. Parts that are the same object on
 * both sides are never looked into, so a moved point costs the depth of the tree and not its size, and an added piece
 * costs that piece and not the list it joined.
 */

/** A value as JSON knows it. */
export type Json = null | boolean | number | string | readonly Json[] | { readonly [key: string]: Json };

type Keys = readonly (string | number)[];

/** One value that changed: the keys that lead to it, and what was and is there; without one of them, nothing. */
interface ValueDifference {
  readonly kind: 'value';
  readonly at: Keys;
  readonly before?: Json;
  readonly after?: Json;
}

/** A run of a list that gave way to another, from the number `from` on. */
interface RunDifference {
  readonly kind: 'run';
  readonly at: Keys;
  readonly from: number;
  readonly gone: readonly Json[];
  readonly come: readonly Json[];
}

export type Change = readonly (ValueDifference | RunDifference)[];

/** The differences that lead from `before` to `after`; none when they are alike. */
export function changeBetween(before: Json, after: Json): Change {
  const found: (ValueDifference | RunDifference)[] = [];
  compare(before, after, [], found);
  return found;
}

/** The change that leads back. */
export function reverseChange(change: Change): Change {
  return change
    .map((one) =>
      one.kind === 'run' ? { ...one, gone: one.come, come: one.gone } : valueDifference(one.at, one.after, one.before),
    )
    .reverse();
}

/**
 * The value after the change. Throws when what the change takes away is not there, for then the change does not belong
 * to the value: a bug or a damaged journal.
 */
export function applyChange(value: Json, change: Change): Json {
  return change.reduce<Json>((changed, one) => put(changed, one, 0), value);
}

function compare(before: Json, after: Json, at: Keys, found: (ValueDifference | RunDifference)[]): void {
  if (before === after) return;
  if (isList(before) && isList(after)) {
    if (before.length === after.length) {
      for (let i = 0; i < before.length; i++) compare(before[i] as Json, after[i] as Json, [...at, i], found);
    } else found.push(runDifference(before, after, at));
    return;
  }
  if (isRecord(before) && isRecord(after)) {
    for (const key of new Set([...Object.keys(before), ...Object.keys(after)])) {
      const [was, is] = [own(before, key), own(after, key)];
      if (was !== undefined && is !== undefined) compare(was, is, [...at, key], found);
      else if (was !== is) found.push(valueDifference([...at, key], was, is));
    }
    return;
  }
  found.push(valueDifference(at, before, after));
}

function valueDifference(at: Keys, before: Json | undefined, after: Json | undefined): ValueDifference {
  return {
    kind: 'value',
    at,
    ...(before === undefined ? {} : { before }),
    ...(after === undefined ? {} : { after }),
  };
}

/** What lies between the alike beginnings and the alike ends of two lists of different length. */
function runDifference(before: readonly Json[], after: readonly Json[], at: Keys): RunDifference {
  const shorter = Math.min(before.length, after.length);
  let from = 0;
  while (from < shorter && isAlike(before[from] as Json, after[from] as Json)) from += 1;
  let end = 0;
  while (end < shorter - from && isAlike(before.at(-1 - end) as Json, after.at(-1 - end) as Json)) end += 1;
  return {
    kind: 'run',
    at,
    from,
    gone: before.slice(from, before.length - end),
    come: after.slice(from, after.length - end),
  };
}

function isAlike(one: Json, other: Json): boolean {
  return one === other || changeBetween(one, other).length === 0;
}

function put(value: Json, one: ValueDifference | RunDifference, depth: number): Json {
  const key = one.at[depth];
  if (key === undefined) return one.kind === 'run' ? putRun(value, one) : putWhole(value, one);
  if (isList(value) && typeof key === 'number') {
    const inner = value[key];
    if (inner === undefined) throw strange(one);
    return value.with(key, put(inner, one, depth + 1));
  }
  if (!isRecord(value) || typeof key !== 'string') throw strange(one);
  const inner = own(value, key);
  if (one.kind === 'value' && depth === one.at.length - 1 && (one.before === undefined || one.after === undefined)) {
    return putOrTake(value, key, one);
  }
  if (inner === undefined) throw strange(one);
  return { ...value, [key]: put(inner, one, depth + 1) };
}

function putRun(value: Json, one: RunDifference): Json {
  if (!isList(value) || value.length < one.from) throw strange(one);
  if (!isAlike(value.slice(one.from, one.from + one.gone.length), one.gone)) throw strange(one);
  return value.toSpliced(one.from, one.gone.length, ...one.come);
}

function putWhole(value: Json, one: ValueDifference): Json {
  if (one.before === undefined || one.after === undefined || !isAlike(value, one.before)) throw strange(one);
  return one.after;
}

/** A key that comes or goes. */
function putOrTake(value: { readonly [key: string]: Json }, key: string, one: ValueDifference): Json {
  const there = own(value, key);
  if (one.before === undefined) {
    if (there !== undefined || one.after === undefined) throw strange(one);
    return { ...value, [key]: one.after };
  }
  if (there === undefined || !isAlike(there, one.before)) throw strange(one);
  return Object.fromEntries(Object.entries(value).filter(([each]) => each !== key));
}

function strange({ at }: ValueDifference | RunDifference): Error {
  return new Error(`the change does not belong to this value: ${at.join('.')}`);
}

function own(record: { readonly [key: string]: Json }, key: string): Json | undefined {
  return Object.hasOwn(record, key) ? record[key] : undefined;
}

function isList(value: Json): value is readonly Json[] {
  return Array.isArray(value);
}

function isRecord(value: Json): value is { readonly [key: string]: Json } {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
