import 'fake-indexeddb/auto';
import Dexie from 'dexie';
import { IDBFactory } from 'fake-indexeddb';
import { vi } from 'vitest';

/** The program as it stands after the page was loaded anew: nothing in memory, only what the browser kept. */
export async function reload() {
  vi.resetModules();
  const [database, journal, openGarment, shelf, photos, bringIn, versions, aside, store] = await Promise.all([
    import('../../app/storage/database'),
    import('../../app/storage/journal'),
    import('../../app/storage/open-garment'),
    import('../../app/storage/shelf'),
    import('../../app/storage/photos'),
    import('../../app/storage/bring-in'),
    import('../../app/storage/versions'),
    import('../../app/storage/set-aside'),
    import('../../app/state/garment-store'),
  ]);
  return { ...database, ...journal, ...openGarment, ...shelf, ...photos, ...bringIn, ...versions, ...aside, ...store };
}

export type Program = Awaited<ReturnType<typeof reload>>;

/** A browser in which nothing was ever kept. */
export function emptyBrowser(): Promise<Program> {
  Dexie.dependencies.indexedDB = new IDBFactory();
  return reload();
}

/** The browser's store itself, as another program would reach it. */
export function theStore(): globalThis.IDBFactory {
  return Dexie.dependencies.indexedDB as globalThis.IDBFactory;
}

/** What each version of the store added, as it was; none of it is ever changed. */
const STORES: readonly Readonly<Record<string, string>>[] = [
  {
    shelf: 'id, changed',
    snapshots: '[garmentId+seq], garmentId',
    journal: '[garmentId+seq], garmentId',
    photos: 'id',
  },
  { versions: '[garmentId+number], garmentId' },
  { putAway: 'id', covers: 'id' },
];

/** How many versions of the store there were before the present one. */
export const EARLIER_STORES = STORES.length;

/** The store as a program of an earlier version made it, 1 for the first. */
export function storeOfVersion(version: number): Dexie {
  const old = new Dexie('inchsquare');
  for (const [index, stores] of STORES.slice(0, version).entries()) old.version(index + 1).stores(stores);
  return old;
}
