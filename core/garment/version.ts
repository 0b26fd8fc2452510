import * as z from 'zod/mini';
import type { Change } from './change';
import type { Garment } from './garment';
import { changedGarment, garmentChange } from './garment-change';
import { readStoredGarment } from './migrate';
import { versionMark } from './version-mark';

/** What is known of a version without opening it. */
export interface VersionHead {
  readonly garmentId: string;
  /** 1, 2, 3 … in the order in which they were kept. */
  readonly number: number;
  readonly name: string;
  /** YYYY-MM-DD */
  readonly made: string;
  readonly note: string;
  /** The mark of its pieces, as it stands on pages. */
  readonly mark: string;
}

/** A version as it is stored: now and then whole, mostly as what changed since the version before it. */
export interface StoredVersion extends VersionHead {
  readonly kept:
    | { readonly kind: 'whole'; readonly garment: unknown }
    | { readonly kind: 'change'; readonly change: Change };
}

/** Every so many versions one is kept whole, so that opening one never follows a long row of changes. */
const WHOLE_EVERY = 20;

/** The next version of a garment after those there are. `before` is the garment of the last of them. */
export function nextVersion(
  garment: Garment,
  head: Pick<VersionHead, 'name' | 'made' | 'note'>,
  last: { readonly number: number; readonly garment: Garment } | undefined,
): StoredVersion {
  const number = (last?.number ?? 0) + 1;
  const { id } = garment;
  const isWhole = !last || number % WHOLE_EVERY === 1;
  return {
    garmentId: id,
    number,
    ...head,
    mark: versionMark(garment),
    kept: isWhole ? { kind: 'whole', garment } : { kind: 'change', change: garmentChange(last.garment, garment) },
  };
}

/**
 * The garment of a version, from the nearest one kept whole before it. `undefined` where the number is not there, or
 * what is stored cannot be read any more.
 */
export function garmentOfVersion(versions: readonly StoredVersion[], number: number): Garment | undefined {
  const ordered = versions.toSorted((a, b) => a.number - b.number);
  const end = ordered.findIndex((version) => version.number === number);
  const start = ordered.findLastIndex(({ kept }, index) => index <= end && kept.kind === 'whole');
  const whole = ordered[start]?.kept;
  if (end < 0 || whole?.kind !== 'whole') return undefined;
  const read = readStoredGarment(whole.garment);
  if (read.kind !== 'garment') return undefined;
  try {
    const garment = ordered
      .slice(start + 1, end + 1)
      .reduce((so, { kept }) => (kept.kind === 'change' ? changedGarment(so, kept.change) : so), read.garment);
    const checked = readStoredGarment(garment);
    return checked.kind === 'garment' ? checked.garment : undefined;
  } catch {
    // A change that does not belong: the row was damaged. What the other versions hold is not touched by that.
    return undefined;
  }
}

/** The versions that can be opened: a damaged row takes only those with it that were built on it. Each is read once. */
export function readableVersions(versions: readonly StoredVersion[]): StoredVersion[] {
  let before: Garment | undefined;
  return versions
    .toSorted((a, b) => a.number - b.number)
    .filter(({ kept }) => {
      before = readAfter(before, kept);
      return before !== undefined;
    });
}

function readAfter(before: Garment | undefined, kept: StoredVersion['kept']): Garment | undefined {
  try {
    const garment = kept.kind === 'whole' ? kept.garment : before && changedGarment(before, kept.change);
    const read = readStoredGarment(garment);
    return read.kind === 'garment' ? read.garment : undefined;
  } catch {
    return undefined;
  }
}

/** The newest version whose pieces are exactly those of the garment; `undefined` when something changed since. */
export function versionNow<Head extends VersionHead>(versions: readonly Head[], garment: Garment): Head | undefined {
  const mark = versionMark(garment);
  return versions.findLast((version) => version.mark === mark);
}

const change = z.array(
  z.looseObject({ kind: z.enum(['value', 'run']), at: z.array(z.union([z.string(), z.number()])) }),
);
const stored = z.strictObject({
  garmentId: z.string(),
  number: z.int().check(z.minimum(1), z.maximum(1e6)),
  name: z.string().check(z.maxLength(10_000)),
  made: z.iso.date(),
  note: z.string().check(z.maxLength(10_000)),
  mark: z.string(),
  kept: z.discriminatedUnion('kind', [
    z.strictObject({ kind: z.literal('whole'), garment: z.unknown() }),
    z.strictObject({ kind: z.literal('change'), change }),
  ]),
});

/** The versions of a garment from outside: rows that are not versions, or not of this garment, are left out. */
export function readVersions(value: unknown, garmentId: string): StoredVersion[] {
  if (!Array.isArray(value)) return [];
  const rows = value.flatMap((row) => {
    const read = stored.safeParse(row);
    // What a change says of values is checked where it is applied: what comes of it must be a garment.
    return read.success && read.data.garmentId === garmentId ? [read.data as StoredVersion] : [];
  });
  return rows.filter((row, index) => rows.findIndex(({ number }) => number === row.number) === index);
}
