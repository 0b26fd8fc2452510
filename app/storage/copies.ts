import Dexie from 'dexie';
import { type CopyAge, copyAge } from '../state/copy-age';
import { useKept } from '../state/kept-store';
import { connected } from './connection';
import { type CopyRow, database } from './database';
import { flushJournal } from './journal';

/** Notes that all of a garment as it is now lies outside the browser as well. A device that will not note it only reminds. */
export async function noteCopy(id: string, file?: CopyRow['file']): Promise<void> {
  try {
    await flushJournal();
    const seq = await lastEntry(id);
    // A download leaves the file in the folder as it is, still to be written over some day.
    const last = file ?? (await lastCopy(id))?.file;
    await connected(() => database.copies.put({ id, at: Date.now(), seq, ...(last && { file: last }) }));
  } catch {
    return;
  }
  useKept.setState(({ copies }) => ({ copies: copies + 1 }));
}

/** What is known of the last copy of a garment. */
export async function lastCopy(id: string): Promise<CopyRow | undefined> {
  return connected(() => database.copies.get(id));
}

/** How old the copies of garments are. */
export async function copyAges(ids: readonly string[]): Promise<ReadonlyMap<string, CopyAge>> {
  const now = Date.now();
  const ages = ids.map(async (id) => [id, copyAge(await lastCopy(id), await lastEntry(id), now)] as const);
  return new Map(await Promise.all(ages));
}

/** The number of the last entry there is of a garment. */
async function lastEntry(id: string): Promise<number> {
  const range: [[string, typeof Dexie.minKey], [string, typeof Dexie.maxKey]] = [
    [id, Dexie.minKey],
    [id, Dexie.maxKey],
  ];
  const [entry, snapshot] = await connected(() =>
    Promise.all([
      database.journal
        .where('[garmentId+seq]')
        .between(...range)
        .last(),
      database.snapshots
        .where('[garmentId+seq]')
        .between(...range)
        .last(),
    ]),
  );
  return Math.max(entry?.seq ?? 0, snapshot?.seq ?? 0);
}
