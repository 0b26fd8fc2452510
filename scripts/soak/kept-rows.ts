import type { Page } from '@playwright/test';
import type { JournalRow, PhotoRow, ShelfRow, SnapshotRow } from '../../app/storage/database';
import { type Replayed, replay } from '../../app/storage/replay';

/** What the device holds of the garment that was changed last. */
export interface OnDevice {
  readonly garmentId: string;
  readonly lastSeq: number;
  readonly opened: Replayed;
  /** Photos by their id, with their size in bytes. */
  readonly photos: ReadonlyMap<string, number>;
}

interface Rows {
  readonly shelf: readonly ShelfRow[];
  readonly snapshots: readonly SnapshotRow[];
  readonly journal: readonly JournalRow[];
  readonly photos: readonly (Pick<PhotoRow, 'id'> & { readonly size: number })[];
}

/** Reads the browser's store past the program, and follows the journal as the program would. Throws when it cannot. */
export async function onDevice(page: Page): Promise<OnDevice> {
  const rows: Rows = await page.evaluate(readStore);
  const last = [...rows.shelf].sort((a, b) => b.changed - a.changed)[0];
  if (!last) throw new Error('the shelf is empty');
  const mine = <Row extends { readonly garmentId: string; readonly seq: number }>(all: readonly Row[]) =>
    all.filter(({ garmentId }) => garmentId === last.id).sort((a, b) => a.seq - b.seq);
  const snapshot = mine(rows.snapshots).at(-1);
  if (!snapshot) throw new Error('the garment has no snapshot');
  const entries = mine(rows.journal).filter(({ seq }) => seq > snapshot.seq);
  const opened = replay(snapshot, entries);
  if (!('garment' in opened)) throw new Error(`the garment is ${opened.kind}`);
  if (opened.lost > 0) throw new Error(`${opened.lost} entries cannot be followed`);
  return {
    garmentId: last.id,
    lastSeq: Math.max(snapshot.seq, entries.at(-1)?.seq ?? 0),
    opened,
    photos: new Map(rows.photos.map(({ id, size }) => [id, size])),
  };
}

/** In the page. */
async function readStore(): Promise<Rows> {
  const answer = <Value>(request: IDBRequest<Value>) =>
    new Promise<Value>((done, failed) => {
      request.onsuccess = () => done(request.result);
      request.onerror = () => failed(request.error);
    });
  const store = await answer(indexedDB.open('inchsquare'));
  const all = <Row>(name: string): Promise<Row[]> => answer(store.transaction(name).objectStore(name).getAll());
  const photos = await all<PhotoRow>('photos');
  const rows = {
    shelf: await all<ShelfRow>('shelf'),
    snapshots: await all<SnapshotRow>('snapshots'),
    journal: await all<JournalRow>('journal'),
    photos: photos.map(({ id, bytes }) => ({ id, size: bytes.byteLength })),
  };
  store.close();
  return rows;
}
