import type { Garment } from '../../core/garment/garment';
import { shelfText } from '../../core/garment/shelf-text';
import { connected } from './connection';
import { database, type ShelfRow, shelfRow } from './database';
import { stopFollowing } from './journal';
import { isReplayed, lookAtGarment } from './open-garment';

export { isReplayed } from './open-garment';

/** A garment as the shelf shows it. */
export interface OnShelf extends ShelfRow {
  readonly isPutAway: boolean;
}

/** Every garment on the shelf, the last changed first. A row that is damaged stands at the end, by what is left of it. */
export async function listShelf(): Promise<OnShelf[]> {
  const rows: Partial<ShelfRow>[] = await connected(() => database.shelf.toArray());
  const away = new Set(await connected(() => database.putAway.toCollection().primaryKeys()));
  return rows
    .map(({ id, name, changed, pieces, made, text }) => ({
      id: String(id),
      name: typeof name === 'string' ? name : '',
      changed: typeof changed === 'number' ? changed : 0,
      pieces: typeof pieces === 'number' ? pieces : 0,
      ...(typeof made === 'string' ? { made } : {}),
      ...(typeof text === 'string' ? { text } : {}),
      isPutAway: away.has(String(id)),
    }))
    .sort((a, b) => b.changed - a.changed);
}

/** Gives rows of before the shelf could be searched what they lack; how many there were. A garment that cannot be read keeps its row. */
export async function bringUpRows(): Promise<number> {
  const lacking = (await listShelf()).filter(({ text }) => text === undefined);
  for (const { id } of lacking) {
    const garment = await takeForSaving(id);
    if (!garment) continue;
    const { made } = garment;
    const text = shelfText(garment);
    // A row that was written anew meanwhile has both already, and newer.
    await connected(() =>
      database.shelf
        .where('id')
        .equals(id)
        .and((row) => row.text === undefined)
        .modify({ made, text }),
    );
  }
  return lacking.length;
}

/** Puts a garment away or brings it out again. It stays as it is, and when it was changed. */
export async function putAway(id: string, isPutAway: boolean): Promise<void> {
  await connected(async () => {
    if (isPutAway) await database.putAway.put({ id });
    else await database.putAway.delete(id);
  });
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
  await addToShelf(garment);
  return garment;
}

/** Lays a garment on the shelf that was not there before, without taking it to the table. */
export async function addToShelf(garment: Garment): Promise<void> {
  await connected(() =>
    database.transaction('rw', [database.shelf, database.snapshots], async () => {
      await database.snapshots.add({ garmentId: garment.id, seq: 0, garment, past: [], future: [] });
      // A row that was left of something unreadable gives way.
      await database.shelf.put(shelfRow(garment));
    }),
  );
}

/** Takes a garment off the shelf for good, with its journal and the pictures that no other garment on the shelf speaks of. */
export async function removeFromShelf(id: string): Promise<void> {
  stopFollowing(id);
  const { shelf, snapshots, journal, photos, versions, putAway: away, covers, copies } = database;
  await connected(() =>
    database.transaction('rw', [shelf, snapshots, journal, photos, versions, away, covers, copies], async () => {
      const mine = await mentions(await photos.toCollection().primaryKeys(), (garmentId) => garmentId === id);
      const others = await mentions(mine, (garmentId) => garmentId !== id);
      await photos.bulkDelete(mine.filter((photoId) => !others.includes(photoId)));
      await shelf.delete(id);
      await away.delete(id);
      await covers.delete(id);
      await copies.delete(id);
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
