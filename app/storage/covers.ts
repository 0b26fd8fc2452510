import { connected } from './connection';
import { type CoverRow, database } from './database';

/** The cover kept of a garment; `undefined` when there is none, or it is damaged. */
export async function keptCover(id: string): Promise<CoverRow | undefined> {
  const row: Partial<CoverRow> | undefined = await connected(() => database.covers.get(id));
  return row?.bytes instanceof ArrayBuffer && row.bytes.byteLength > 0 ? (row as CoverRow) : undefined;
}

/** Keeps a cover. It can be made again at any time, so a device that will not take it is no trouble. */
export async function keepCover(cover: CoverRow): Promise<void> {
  await connected(async () => {
    // A garment taken off the shelf meanwhile leaves nothing behind.
    if (await database.shelf.get(cover.id)) await database.covers.put(cover);
  }).catch(() => undefined);
}
