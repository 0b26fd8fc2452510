import 'fake-indexeddb/auto';
import Dexie from 'dexie';
import { IDBFactory } from 'fake-indexeddb';
import { vi } from 'vitest';

/** The program as it stands after the page was loaded anew: nothing in memory, only what the browser kept. */
export async function reload() {
  vi.resetModules();
  const [database, journal, openGarment, shelf, photos, bringIn, versions, store] = await Promise.all([
    import('../../app/storage/database'),
    import('../../app/storage/journal'),
    import('../../app/storage/open-garment'),
    import('../../app/storage/shelf'),
    import('../../app/storage/photos'),
    import('../../app/storage/bring-in'),
    import('../../app/storage/versions'),
    import('../../app/state/garment-store'),
  ]);
  return { ...database, ...journal, ...openGarment, ...shelf, ...photos, ...bringIn, ...versions, ...store };
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

/** The store as it was before garments could be put away. */
export function storeOfVersion2(): Dexie {
  const old = new Dexie('inchsquare');
  old.version(1).stores({
    shelf: 'id, changed',
    snapshots: '[garmentId+seq], garmentId',
    journal: '[garmentId+seq], garmentId',
    photos: 'id',
  });
  old.version(2).stores({ versions: '[garmentId+number], garmentId' });
  return old;
}
