import type { Garment } from '../../core/garment/garment';
import { type GarmentState, useGarment } from '../state/garment-store';
import { useKept } from '../state/kept-store';
import { newId } from '../state/new-id';
import { storageWords as words } from '../words/storage';
import { Blocked, connected, faultNames, Outdated } from './connection';
import { type JournalRow, type SnapshotRow, shelfRow } from './database';
import { lookAtRoom } from './device-room';
import { holdForEditing, letGoOfOthers } from './editing-lock';
import { entryFor } from './journal-entry';
import { askToStay } from './persistence';
import { type Replayed, replay, storedStep } from './replay';
import { layReserve, spendReserve } from './reserve';
import { setAside } from './set-aside';
import { type Kept, keep, TakenElsewhere } from './write-batch';

/** A whole snapshot after this many entries, so that opening never replays a long journal. */
const SNAPSHOT_EVERY = 50;

/** After a failed write the next try waits this long. */
const TRY_AGAIN_MS = 3000;

/** What is still to be written, in order. It outlives the garment on the table: a failed write is never forgotten. */
let pending: readonly Kept[] = [];

/** The garment being followed and the number of its last entry. */
let following: { readonly id: string; readonly seq: number; readonly sinceSnapshot: number } | undefined;

let working: Promise<void> | undefined;
let nextTry: ReturnType<typeof setTimeout> | undefined;
let listening = false;

/** Puts a garment that is new on the shelf, and follows it from then on. */
export function keepNew(garment: Garment): void {
  keepWhole({ garmentId: garment.id, seq: 0, garment, past: [], future: [] }, garment);
}

/** Keeps a garment with its history as a whole and follows it from there on. */
export function keepWhole(snapshot: SnapshotRow, garment: Garment): void {
  pending = [...pending, { garmentId: garment.id, shelf: shelfRow(garment), snapshot }];
  followFrom(garment.id, { seq: snapshot.seq, snapshotSeq: snapshot.seq });
  void write();
}

/** Keeps every step, undo and redo of a garment from the moment it happens, after entry number `seq`. */
export function followFrom(id: string, last: { readonly seq: number; readonly snapshotSeq: number }): void {
  following = { id, seq: last.seq, sinceSnapshot: last.seq - last.snapshotSeq };
  if (listening) return;
  listening = true;
  useGarment.subscribe(noteStep);
  // A page that is put away may never come back, and one that comes back may have lost its connection.
  globalThis.document?.addEventListener('visibilitychange', () => void write());
  globalThis.addEventListener?.('pagehide', () => {
    void write();
    if (following) setAside(following.id, pendingRows(following.id));
  });
}

/** Entries of a garment that are not on the device yet. */
export function pendingRows(id: string): readonly JournalRow[] {
  return pending.flatMap(({ garmentId, row }) => (garmentId === id && row ? [row] : []));
}

/** Keeps entries that were set aside when the page was closed, of the garment they have led to. */
export function keepAside(garment: Garment, rows: readonly JournalRow[]): void {
  pending = [...pending, ...rows.map((row) => ({ garmentId: garment.id, shelf: shelfRow(garment), row }))];
}

/** Lets go of a garment that is taken off the shelf, so that nothing of it is written afterwards. */
export function stopFollowing(id: string): void {
  pending = pending.filter(({ garmentId }) => garmentId !== id);
  setAside(id, []);
  if (following?.id === id) following = undefined;
}

/**
 * Lays what is on the table beside the garment that another window has changed meanwhile, with its history and then under
 * a name of its own; she goes on with that, and the garment itself stays as the other window left it. Nothing comes back
 * where nothing is followed.
 */
export function layBeside(): Replayed | undefined {
  const whole = wholeNow();
  const { garment } = useGarment.getState();
  if (!whole || !garment) return undefined;
  const id = newId();
  const snapshot = { ...whole, garmentId: id, seq: 0, garment: { ...whole.garment, id } };
  const beside = replay(snapshot, []);
  if (!('garment' in beside)) return undefined;
  stopFollowing(garment.id);
  useGarment.getState().open(beside.garment, beside);
  useKept.setState({ laidBeside: { garmentId: id } });
  void holdForEditing(id).then(letGoOfOthers);
  keepWhole(snapshot, beside.garment);
  const name = words.besideName(garment.name);
  useGarment.getState().edit(words.beside, (now) => ({ ...now, name }));
  return beside;
}

/** Resolves when everything that happened so far is on the device, or has failed and said so. */
export async function flushJournal(): Promise<void> {
  await working;
  if (pending.length > 0) await write();
}

function noteStep(now: GarmentState, before: GarmentState): void {
  const { garment, opening } = now;
  if (!garment || garment.id !== following?.id || opening !== before.opening) return;
  const entry = entryFor(before, now);
  if (!entry) return;
  const { id, seq, sinceSnapshot } = following;
  following = { id, seq: seq + 1, sinceSnapshot: sinceSnapshot + 1 };
  pending = [...pending, { garmentId: id, shelf: shelfRow(garment), row: { garmentId: id, seq: seq + 1, entry } }];
  if (now.saving !== 'failed') now.setSaving('waiting');
  void write();
}

function write(): Promise<void> {
  working ??= writeAll().finally(() => {
    working = undefined;
  });
  return working;
}

async function writeAll(): Promise<void> {
  clearTimeout(nextTry);
  if (pending.length === 0) return;
  while (pending.length > 0) {
    const batch = pending;
    const snapshot = dueSnapshot();
    try {
      const how = await connected(() => keep(batch, snapshot, wholeNow));
      if (how === 'kept-anew') useKept.setState({ cleared: true });
    } catch (fault) {
      if (fault instanceof TakenElsewhere && fault.garmentId === following?.id && layBeside()) continue;
      if (isFull(fault) && (await spendReserve())) continue;
      useGarment.getState().setSaving('failed', reason(fault));
      if (!(fault instanceof TakenElsewhere)) nextTry = setTimeout(() => void write(), TRY_AGAIN_MS);
      return;
    }
    const written = new Set(batch);
    pending = pending.filter((each) => !written.has(each));
    if (snapshot && following?.id === snapshot.garmentId) {
      following = { ...following, sinceSnapshot: following.seq - snapshot.seq };
    }
  }
  if (following) setAside(following.id, []);
  if (useGarment.getState().editing === 'here') useGarment.getState().setSaving('saved');
  void askToStay();
  void lookAtRoom();
  layReserve();
}

/** A snapshot of the garment on the table at its last entry, when it is time for one. */
function dueSnapshot(): SnapshotRow | undefined {
  return following && following.sinceSnapshot >= SNAPSHOT_EVERY ? wholeNow() : undefined;
}

/** The garment on the table with its history, at its last entry. */
function wholeNow(): (SnapshotRow & { readonly garment: Garment }) | undefined {
  const { garment, past, future } = useGarment.getState();
  if (!following || garment?.id !== following.id) return undefined;
  // As the last finished step left it: a drag in progress is not kept.
  const settled = past.at(-1)?.after ?? future.at(-1)?.before ?? garment;
  return {
    garmentId: garment.id,
    seq: following.seq,
    garment: settled,
    past: past.map(storedStep),
    future: future.map(storedStep),
  };
}

function isFull(fault: unknown): boolean {
  return faultNames(fault).includes('QuotaExceededError');
}

/** What is thrown where a page has no store at all, by the absence of it or by a ban. */
const NO_STORE = new Set(['MissingAPIError', 'SecurityError']);

function reason(fault: unknown): string {
  if (fault instanceof TakenElsewhere) return words.changedElsewhere;
  if (fault instanceof Blocked) return words.blocked;
  if (fault instanceof Outdated) return useKept.getState().storeIsNewer ? words.newerStore : words.newerElsewhere;
  if (isFull(fault)) return words.full;
  return faultNames(fault).some((name) => NO_STORE.has(name)) ? words.keepsNothing : words.cannotWrite;
}
