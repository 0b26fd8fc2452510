/** The last copy of a garment that lies outside the browser, as far as is known here. */
export interface Copied {
  /** Milliseconds since 1970. */
  readonly at: number;
  /** The number of the last entry of the journal that is in it. */
  readonly seq: number;
}

/** How old the copy outside the browser is; `changes` counts what was done since, or ever. */
export type CopyAge =
  | { readonly kind: 'none'; readonly changes: number }
  | { readonly kind: 'copied'; readonly days: number; readonly changes: number };

const DAY_MS = 24 * 60 * 60 * 1000;

/** A copy this old that lacks something is worth a word. */
const OLD_DAYS = 7;

/** So is one that lacks this much, however young; an afternoon's work is about a hundred changes. */
const MANY_CHANGES = 100;

/** Before the first copy there is less to lose, and less to remember. */
const FIRST_CHANGES = 30;

/** How far a copy is behind entry `seq` of the journal at a moment. */
export function copyAge(copied: Copied | undefined, seq: number, now: number): CopyAge {
  if (!copied) return { kind: 'none', changes: seq };
  return {
    kind: 'copied',
    days: Math.max(0, Math.floor((now - copied.at) / DAY_MS)),
    changes: Math.max(0, seq - copied.seq),
  };
}

/** Whether she should be reminded to save a copy. */
export function isOld(age: CopyAge): boolean {
  if (age.kind === 'none') return age.changes >= FIRST_CHANGES;
  return age.changes >= MANY_CHANGES || (age.changes > 0 && age.days >= OLD_DAYS);
}
