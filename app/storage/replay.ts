import type { Garment } from '../../core/garment/garment';
import { changedGarment, garmentChange, unchangedGarment } from '../../core/garment/garment-change';
import { readStoredGarment, type StoredReading } from '../../core/garment/migrate';
import { type History, MOST_STEPS, type Step } from '../state/garment-store';
import type { JournalRow, SnapshotRow, StoredStep } from './database';

interface State extends History {
  readonly garment: Garment;
}

export interface Replayed extends State {
  /** Entries of the journal that could not be followed; the garment is as it was before the first of them. */
  readonly lost: number;
}

/** A step as it is stored: what changed, not two whole garments. */
export function storedStep({ before, after, label, time }: Step): StoredStep {
  return { change: garmentChange(before, after), label, time };
}

/** The garment and its history from a snapshot and the entries after it, in order. */
export function replay(
  snapshot: SnapshotRow,
  entries: readonly JournalRow[],
): Replayed | Exclude<StoredReading, { kind: 'garment' }> {
  const read = readStoredGarment(snapshot.garment);
  if (read.kind !== 'garment') return read;
  let state: State = withHistory(read.garment, snapshot);
  for (const [index, { seq, entry }] of entries.entries()) {
    const next = seq === snapshot.seq + 1 + index ? attempt(() => follow(state, entry)) : undefined;
    if (!next) return { ...state, lost: entries.length - index };
    state = next;
  }
  return { ...state, lost: 0 };
}

/** Steps backwards from the snapshot for what can be undone, forwards for what can be done again. */
function withHistory(garment: Garment, { past, future }: SnapshotRow): State {
  // A damaged history is no reason to lose the garment it led to.
  return (
    attempt(() => {
      let at = garment;
      const undone = past.toReversed().map(({ change, label, time }) => {
        const after = at;
        at = unchangedGarment(after, change);
        return { before: at, after, label, time };
      });
      at = garment;
      const toCome = future.toReversed().map(({ change, label, time }) => {
        const before = at;
        at = changedGarment(before, change);
        return { before, after: at, label, time };
      });
      return { garment, past: undone.reverse(), future: toCome.reverse() };
    }) ?? { garment, past: [], future: [] }
  );
}

function follow({ garment, past, future }: State, entry: JournalRow['entry']): State | undefined {
  const [last, next] = [past.at(-1), future.at(-1)];
  switch (entry.kind) {
    case 'step': {
      const step = stepFrom(garment, entry.step);
      return step && { garment: step.after, past: [...past, step].slice(-MOST_STEPS), future: [] };
    }
    case 'grown': {
      const step = last && stepFrom(last.before, entry.step);
      return step && { garment: step.after, past: past.with(-1, step), future: [] };
    }
    case 'undo':
      return last && { garment: last.before, past: past.slice(0, -1), future: [...future, last] };
    case 'redo':
      return next && { garment: next.after, past: [...past, next], future: future.slice(0, -1) };
  }
}

function stepFrom(before: Garment, { change, label, time }: StoredStep): Step | undefined {
  const after = changedGarment(before, change);
  return readStoredGarment(after).kind === 'garment' ? { before, after, label, time } : undefined;
}

/** What damaged rows do to the work of reading them is not foreseen one by one. */
function attempt<Answer>(work: () => Answer): Answer | undefined {
  try {
    return work();
  } catch {
    return undefined;
  }
}
