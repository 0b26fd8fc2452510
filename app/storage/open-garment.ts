import { connected } from './connection';
import { database, type JournalRow, type SnapshotRow } from './database';
import { followFrom, keepAside, keepWhole, pendingRows } from './journal';
import { type Replayed, replay, storedStep } from './replay';
import { rowsAside } from './set-aside';

export type Opened = ReturnType<typeof replay> | { readonly kind: 'missing' };

/** Whether opening gave a garment and not a refusal. */
export function isReplayed(opened: Opened): opened is Replayed {
  return 'garment' in opened;
}

type Refused = Exclude<Opened, Replayed>;

interface Found extends Replayed {
  readonly snapshotSeq: number;
  /** The last entry there is, followed or not. */
  readonly lastSeq: number;
  /** Those of them that were set aside as the page closed, and are nowhere else. */
  readonly aside: readonly JournalRow[];
}

/** A garment with its history as it lies on the shelf, only to be looked at, saved or copied. */
export async function lookAtGarment(id: string): Promise<Opened> {
  return find(id);
}

/**
 * A garment with its history, as it was when it was last on the table; the journal follows it from here on. When the
 * end of the journal cannot be followed, what came before it is kept as a whole, beside the damaged entries.
 */
export async function takeFromShelf(id: string): Promise<Opened> {
  const found = await find(id);
  if (!isFound(found)) return found;
  const { garment, past, future, lastSeq, aside, snapshotSeq, lost } = found;
  if (lost === 0) {
    keepAside(garment, aside);
    followFrom(id, { seq: lastSeq, snapshotSeq });
  } else {
    const history = { past: past.map(storedStep), future: future.map(storedStep) };
    keepWhole({ garmentId: id, seq: lastSeq + 1, garment, ...history }, garment);
  }
  return found;
}

/** From the newest snapshot that can be read, with everything that happened after it. */
async function find(id: string): Promise<Found | Refused> {
  const [snapshots, entries] = await connected(() =>
    database.transaction('r', [database.snapshots, database.journal], async () => [
      await database.snapshots.where('garmentId').equals(id).sortBy('seq'),
      await database.journal.where('garmentId').equals(id).sortBy('seq'),
    ]),
  );
  // What the device would not take yet belongs to the garment all the same, and what was set aside as the page closed.
  const known = withLater(entries as JournalRow[], pendingRows(id));
  const rows = withLater(known, rowsAside(id));
  let refusal: Refused = { kind: 'missing' };
  for (const snapshot of (snapshots as SnapshotRow[]).reverse()) {
    const replayed = replay(
      snapshot,
      rows.filter(({ seq }) => seq > snapshot.seq),
    );
    if (isReplayed(replayed)) {
      const aside = rows.slice(known.length).filter(({ seq }) => seq > snapshot.seq);
      return { ...replayed, snapshotSeq: snapshot.seq, lastSeq: Math.max(snapshot.seq, rows.at(-1)?.seq ?? 0), aside };
    }
    if (refusal.kind === 'missing') refusal = replayed;
  }
  return refusal;
}

/** Entries with those of others that come after them. */
function withLater(rows: readonly JournalRow[], others: readonly JournalRow[]): readonly JournalRow[] {
  const last = rows.at(-1)?.seq ?? 0;
  return [...rows, ...others.filter(({ seq }) => seq > last)];
}

function isFound(found: Found | Refused): found is Found {
  return 'garment' in found;
}
