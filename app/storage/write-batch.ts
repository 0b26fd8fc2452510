import { changeBetween, type Json } from '../../core/garment/change';
import { database, type JournalRow, type ShelfRow, type SnapshotRow } from './database';

/** Something to be kept of one garment: an entry of its journal or the whole of it, and how the shelf shows it. */
export interface Kept {
  readonly garmentId: string;
  readonly shelf: ShelfRow;
  readonly row?: JournalRow;
  readonly snapshot?: SnapshotRow;
}

/** Another window wrote to the same garment since this one read it. Nothing of either is overwritten. */
export class TakenElsewhere extends Error {
  readonly garmentId: string;
  constructor(garmentId: string) {
    super(`${garmentId} was changed in another window`);
    this.garmentId = garmentId;
  }
}

/**
 * Writes a batch in one transaction: all of it is kept or nothing. Entries that are there already, from a try whose
 * answer was lost, are left as they are; other entries under the same number throw TakenElsewhere. `whole` gives the
 * garment on the table as it is now.
 */
export async function keep(
  batch: readonly Kept[],
  due: SnapshotRow | undefined,
  whole: () => SnapshotRow | undefined,
): Promise<'kept' | 'kept-anew'> {
  return database.transaction('rw', [database.shelf, database.snapshots, database.journal], async () => {
    await addRows(batch.flatMap(({ row }) => (row ? [row] : [])));
    const anew = await startAgain(batch, whole);
    for (const { snapshot } of batch) if (snapshot) await addSnapshot(snapshot);
    await database.shelf.bulkPut(batch.map(({ shelf }) => shelf));
    if (due) {
      await addSnapshot(due);
      await dropOlder(due.garmentId, due.seq);
    }
    return anew;
  });
}

/** Where everything was cleared away under the program, entries have nothing to follow: the garment is kept as a whole. */
async function startAgain(batch: readonly Kept[], whole: () => SnapshotRow | undefined): Promise<'kept' | 'kept-anew'> {
  const row = batch.find(({ row, snapshot }) => row && !snapshot);
  if (!row || batch.some(({ garmentId, snapshot }) => snapshot && garmentId === row.garmentId)) return 'kept';
  if ((await database.snapshots.where('garmentId').equals(row.garmentId).count()) > 0) return 'kept';
  const snapshot = whole();
  if (snapshot?.garmentId !== row.garmentId) return 'kept';
  await addSnapshot(snapshot);
  return 'kept-anew';
}

async function addRows(rows: readonly JournalRow[]): Promise<void> {
  const there = await database.journal.bulkGet(rows.map(({ garmentId, seq }): [string, number] => [garmentId, seq]));
  const missing = rows.filter((row, index) => {
    const other = there[index];
    if (other && !isSame(row, other)) throw new TakenElsewhere(row.garmentId);
    return !other;
  });
  for (const [garmentId, seq] of await newestSnapshots(missing)) {
    // Entries of that number were there and are gone into it: these would be kept and never followed.
    if (missing.some((row) => row.garmentId === garmentId && row.seq <= seq)) throw new TakenElsewhere(garmentId);
  }
  await database.journal.bulkAdd(missing);
}

/** The number of the newest snapshot of every garment of the rows. */
async function newestSnapshots(rows: readonly JournalRow[]): Promise<ReadonlyMap<string, number>> {
  const ids = [...new Set(rows.map(({ garmentId }) => garmentId))];
  const keys = await database.snapshots.where('garmentId').anyOf(ids).primaryKeys();
  return new Map(ids.map((id) => [id, Math.max(-1, ...keys.filter(([own]) => own === id).map(([, seq]) => seq))]));
}

async function addSnapshot({ garment, ...rest }: SnapshotRow): Promise<void> {
  // As JSON: a key that stands for nothing would be kept by the browser and refused when read.
  const snapshot = { ...rest, garment: JSON.parse(JSON.stringify(garment)) };
  const other = await database.snapshots.get([snapshot.garmentId, snapshot.seq]);
  if (!other) await database.snapshots.add(snapshot);
  else if (!isSame(snapshot, other)) throw new TakenElsewhere(snapshot.garmentId);
}

function isSame(one: object, other: object): boolean {
  return changeBetween(one as Json, other as Json).length === 0;
}

/** Keeps the snapshot before this one and what follows it, so that one damaged snapshot is not the end. */
async function dropOlder(id: string, at: number): Promise<void> {
  const earlier = (await database.snapshots.where('garmentId').equals(id).primaryKeys())
    .map(([, seq]) => seq)
    .filter((seq) => seq < at);
  if (earlier.length === 0) return;
  const oldest = Math.max(...earlier);
  await database.snapshots.where('[garmentId+seq]').between([id, -1], [id, oldest]).delete();
  await database.journal.where('[garmentId+seq]').between([id, -1], [id, oldest], true, true).delete();
}
