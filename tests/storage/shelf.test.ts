import { beforeEach, expect, it, vi } from 'vitest';
import { onShelf } from '../../app/shelf/shelf-order';
import { isFound } from '../../core/garment/shelf-text';
import { linden } from '../garment/linden';
import { EARLIER_STORES, emptyBrowser, type Program, reload, storeOfVersion } from './fresh';

const ID = 'linden-petticoat';
const bytes = (...values: number[]) => new Uint8Array(values).buffer;
const photo = (id: string) => ({ id, bytes: bytes(7, 11, 13), type: 'image/png', name: 'p', widthPx: 3, heightPx: 4 });

let program: Program;
beforeEach(async () => {
  program = await emptyBrowser();
  await program.startGarment({ ...linden(), id: 'apron', name: 'Apron', pieces: [], rings: [] });
  await program.startGarment(linden());
});

it('listShelf gives name, number of pieces and time of change, the last changed first', async () => {
  const apron = program.database.shelf;
  await apron.update('apron', { changed: 5 });
  const rows = await program.listShelf();
  expect(rows.map(({ id, name, pieces }) => [id, name, pieces])).toEqual([
    [ID, 'Linden petticoat', 2],
    ['apron', 'Apron', 0],
  ]);
  expect(rows[1]?.changed).toBe(5);
});

it('listShelf shows a damaged row last and hides none', async () => {
  await program.database.shelf.put({ id: 'odd' } as never);
  await program.database.shelf.put({ id: 'odder', name: 5, changed: 'yesterday', pieces: null } as never);
  const rows = await program.listShelf();
  expect(rows.map(({ id }) => id).sort()).toEqual(['apron', ID, 'odd', 'odder']);
  expect(rows.slice(2)).toEqual([
    { id: 'odd', name: '', changed: 0, pieces: 0, isPutAway: false },
    { id: 'odder', name: '', changed: 0, pieces: 0, isPutAway: false },
  ]);
});

it('copyOnShelf lays a copy beside the garment, which then goes its own way', async () => {
  const copy = await program.copyOnShelf(ID, { newId: () => 'linden-2', name: 'Linden again' });
  expect(copy).toEqual({ ...linden(), id: 'linden-2', name: 'Linden again' });
  await program.openFromShelf('linden-2');
  program.useGarment.getState().edit('renamed', (garment) => ({ ...garment, name: 'Third' }));
  await program.flushJournal();
  expect((await program.takeForSaving(ID))?.name).toBe('Linden petticoat');
  expect((await program.takeForSaving('linden-2'))?.name).toBe('Third');
  expect(await program.copyOnShelf('gone', { newId: () => 'x', name: 'x' })).toBeUndefined();
});

it('removeFromShelf takes one garment with its journal and leaves the others', async () => {
  program.useGarment.getState().edit('renamed', (garment) => ({ ...garment, name: 'Ash' }));
  await program.flushJournal();
  await program.removeFromShelf(ID);
  expect((await program.listShelf()).map(({ id }) => id)).toEqual(['apron']);
  expect(await program.openFromShelf(ID)).toEqual({ kind: 'missing' });
  expect(await program.database.journal.count()).toBe(0);
});

it('a garment taken off the shelf while it is on the table does not come back with the next step', async () => {
  await program.removeFromShelf(ID);
  program.useGarment.getState().edit('renamed', (garment) => ({ ...garment, name: 'Ash' }));
  await program.flushJournal();
  expect((await program.listShelf()).map(({ id }) => id)).toEqual(['apron']);
});

it('removeFromShelf takes the pictures that no other garment speaks of, in its past either', async () => {
  for (const id of ['photo-14', 'photo-15', 'photo-hat']) await program.putPhoto(photo(id));
  await program.openFromShelf('apron');
  // Photo 14 is now only in what the apron can take back.
  program.useGarment.getState().edit('took a picture off', (garment) => ({
    ...garment,
    diagrams: garment.diagrams.slice(1),
  }));
  await program.flushJournal();
  await program.removeFromShelf(ID);
  expect(await program.database.photos.toCollection().primaryKeys()).toEqual(['photo-14', 'photo-15', 'photo-hat']);
  await program.removeFromShelf('apron');
  expect(await program.database.photos.toCollection().primaryKeys()).toEqual(['photo-hat']);
});

it('a garment put away stays away while it is changed, is brought out as it was, and leaves nothing when removed', async () => {
  await program.putAway(ID, true);
  await program.openFromShelf(ID);
  program.useGarment.getState().edit('notes', (garment) => ({ ...garment, remarks: 'let down' }));
  await program.flushJournal();
  const away = async () => (await program.listShelf()).filter((row) => row.isPutAway).map(({ id }) => id);
  expect(await away()).toEqual([ID]);
  await program.putAway(ID, false);
  expect(await away()).toEqual([]);
  expect((await program.takeForSaving(ID))?.remarks).toBe('let down');
  await program.putAway(ID, true);
  program.useGarment.getState().close();
  await program.removeFromShelf(ID);
  expect(await program.database.putAway.count()).toBe(0);
});

it('there is an old store of every version before the present one', () => {
  expect(EARLIER_STORES).toBe(program.STORE_VERSION - 1);
});

it.each(Array.from({ length: EARLIER_STORES }, (_, index) => index + 1))(
  'what a store of version %i holds is all there in the present one, its rows can be searched, and work goes on',
  async (version) => {
    const garment = { ...linden(), remarks: 'Sewn with silk' };
    await emptyBrowser();
    const old = storeOfVersion(version);
    const row = { id: garment.id, name: garment.name, changed: 7, pieces: 2 };
    await old.table('shelf').bulkAdd([row, { id: 'broken', name: 'Broken', changed: 5, pieces: 1 }]);
    const snapshot = { garmentId: garment.id, seq: 0, garment, past: [], future: [] };
    await old.table('snapshots').add(snapshot);
    await old.table('photos').add(photo('plate'));
    if (version >= 2) await old.table('versions').add({ garmentId: garment.id, number: 1, name: 'kept' });
    if (version >= 3) await old.table('putAway').add({ id: garment.id });
    old.close();

    program = await reload();
    expect((await program.listShelf()).map(({ id }) => id)).toEqual([garment.id, 'broken']);
    await program.bringUpRows();
    const [first, broken] = await program.listShelf();
    expect(first).toMatchObject({ ...row, made: garment.made, isPutAway: version >= 3 });
    expect(isFound(first?.text ?? '', 'SILK')).toBe(true);
    expect(broken).toMatchObject({ name: 'Broken', changed: 5 });
    expect(await program.takeForSaving(garment.id)).toEqual(garment);
    expect(await program.database.snapshots.toArray()).toEqual([snapshot]);
    expect(await program.database.photos.count()).toBe(1);
    expect(await program.database.versions.count()).toBe(version >= 2 ? 1 : 0);

    await program.openFromShelf(garment.id);
    program.useGarment.getState().edit('rename', (now) => ({ ...now, name: 'Linden, anew' }));
    await program.flushJournal();
    program = await reload();
    expect((await program.takeForSaving(garment.id))?.name).toBe('Linden, anew');
  },
);

it('with 300 garments the shelf is listed without one of them being opened', async () => {
  const rows = Array.from({ length: 300 }, (_, i) =>
    program.shelfRow({ ...linden(), id: `g${i}`, name: `Skirt ${i}` }),
  );
  await program.database.shelf.bulkPut(rows);
  const opened = vi.fn();
  program.database.snapshots.hook('reading', (row) => {
    opened();
    return row;
  });
  const found = onShelf(await program.listShelf(), { sought: 'skirt 29', order: 'name' });
  expect(await program.bringUpRows()).toBe(0);
  expect(found.map(({ name }) => name)).toEqual([
    'Skirt 129',
    'Skirt 229',
    'Skirt 29',
    ...Array.from({ length: 10 }, (_, i) => `Skirt 29${i}`),
  ]);
  expect(opened).not.toHaveBeenCalled();
});
