import type { Garment } from '../../core/garment/garment';
import { connected } from './connection';
import { database, type ShelfRow, shelfRow } from './database';
import { stopFollowing } from './journal';
import { isReplayed, lookAtGarment } from './open-garment';

export { isReplayed } from './open-garment';

/** Every garment on the shelf, the last changed first. A row that is damaged stands at the end, by what is left of it. */
export async function listShelf(): Promise<ShelfRow[]> {
  const rows: Partial<ShelfRow>[] = await connected(() => database.shelf.toArray());
  return rows
    .map(({ id, name, changed, pieces }) => ({
      id: String(id),
      name: typeof name === 'string' ? name : '',
      changed: typeof changed === 'number' ? changed : 0,
      pieces: typeof pieces === 'number' ? pieces : 0,
    }))
    .sort((a, b) => b.changed - a.changed);
}

/** A garment as it lies on the shelf, only to be looked at or saved; `undefined` when it cannot be read. */
export async function takeForSaving(id: string): Promise<Garment | undefined> {
  const read = await lookAtGarment(id);
  return isReplayed(read) ? read.garment : undefined;
}

/** Lays a copy of a garment beside it, under its own name and without what went before; `undefined` when it cannot be read. */
export async function copyOnShelf(
  id: string,
  { newId, name }: { readonly newId: () => string; readonly name: string },
): Promise<Garment | undefined> {
  const original = await takeForSaving(id);
  if (!original) return undefined;
  const garment: Garment = { ...original, id: newId(), name };
  await connected(() =>
    database.transaction('rw', [database.shelf, database.snapshots], async () => {
      await database.snapshots.add({ garmentId: garment.id, seq: 0, garment, past: [], future: [] });
      await database.shelf.add(shelfRow(garment));
    }),
  );
  return garment;
}

/** Takes a garment off the shelf for good, with its journal and the pictures that no other garment on the shelf speaks of. */
export async function removeFromShelf(id: string): Promise<void> {
  stopFollowing(id);
  const { shelf, snapshots, journal, photos, versions } = database;
  await connected(() =>
    database.transaction('rw', [shelf, snapshots, journal, photos, versions], async () => {
      const mine = await mentions(await photos.toCollection().primaryKeys(), (garmentId) => garmentId === id);
      const others = await mentions(mine, (garmentId) => garmentId !== id);
      await photos.bulkDelete(mine.filter((photoId) => !others.includes(photoId)));
      await shelf.delete(id);
      await snapshots.where('garmentId').equals(id).delete();
      await journal.where('garmentId').equals(id).delete();
      await versions.where('garmentId').equals(id).delete();
    }),
  );
}

/** Which pictures the garments meant speak of, anywhere in their history. An id found in any other place only keeps more. */
async function mentions(photoIds: readonly string[], isMeant: (garmentId: string) => boolean): Promise<string[]> {
  const found = new Set<string>();
  const look = (row: { readonly garmentId: string }) => {
    if (!isMeant(row.garmentId)) return;
    const text = JSON.stringify(row);
    for (const id of photoIds) if (text.includes(id)) found.add(id);
  };
  await database.snapshots.each(look);
  await database.journal.each(look);
  await database.versions.each(look);
  return [...found];
}
