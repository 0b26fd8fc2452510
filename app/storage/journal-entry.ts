import type { History } from '../state/garment-store';
import type { JournalRow } from './database';
import { storedStep } from './replay';

/** What the journal notes of a move from one history to the next; nothing when no step was made, undone or redone. */
export function entryFor(before: History, now: History): JournalRow['entry'] | undefined {
  if (now.past === before.past && now.future === before.future) return undefined;
  if (now.future.length > before.future.length) return { kind: 'undo' };
  const step = now.past.at(-1);
  if (!step) return undefined;
  if (now.future.length < before.future.length && step === before.future.at(-1)) return { kind: 'redo' };
  const last = before.past.at(-1);
  if (last && last.before === step.before && last !== step) return { kind: 'grown', step: storedStep(step) };
  return { kind: 'step', step: storedStep(step) };
}
