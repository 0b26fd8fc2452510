import { beforeEach, expect, it } from 'vitest';
import { linden } from '../garment/linden';
import { emptyBrowser, type Program } from './fresh';

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
    { id: 'odd', name: '', changed: 0, pieces: 0 },
    { id: 'odder', name: '', changed: 0, pieces: 0 },
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
