import { beforeEach, expect, it, vi } from 'vitest';
import type { Garment } from '../../core/garment/garment';
import { moveCorner } from '../../core/garment/move-point';
import { withPiece } from '../../core/garment/with-piece';
import { linden } from '../garment/linden';
import { emptyBrowser, type Program, reload, theStore } from './fresh';
import { randomEdit, seeded } from './random-edits';

const ID = 'linden-petticoat';
const renamed = (name: string) => (garment: Garment) => ({ ...garment, name });
const state = (program: Program) => program.useGarment.getState();

let program: Program;
beforeEach(async () => {
  program = await emptyBrowser();
  await program.startGarment(linden());
});

/** What comes off the shelf after the page is loaded anew, without a word of goodbye. */
async function afterReload() {
  const next = await reload();
  await next.openFromShelf(ID);
  return next;
}

it('a new garment is on the shelf before anything is done to it', async () => {
  const next = await afterReload();
  expect(state(next).garment).toEqual(linden());
  expect(state(next).saving).toBe('saved');
});

it('a step is kept without being asked for, within 300 ms', async () => {
  state(program).edit('renamed', renamed('Ash'));
  expect(state(program).saving).toBe('waiting');
  await vi.waitFor(() => expect(state(program).saving).toBe('saved'), { timeout: 300, interval: 5 });
  expect(state(await afterReload()).garment?.name).toBe('Ash');
});

it('undo and redo go on after a reload where they stopped', async () => {
  for (const name of ['Ash', 'Birch', 'Cedar', 'Dogwood']) state(program).edit(`renamed to ${name}`, renamed(name));
  state(program).undo();
  state(program).undo();
  state(program).redo();
  await program.flushJournal();
  const next = await afterReload();
  expect(state(next).garment?.name).toBe('Cedar');
  expect(state(next).past.map(({ label }) => label)).toEqual([
    'renamed to Ash',
    'renamed to Birch',
    'renamed to Cedar',
  ]);
  state(next).redo();
  expect(state(next).garment?.name).toBe('Dogwood');
  for (let i = 0; i < 4; i++) state(next).undo();
  expect(state(next).garment).toEqual(linden());
});

it('1,000 random edits with undo and redo among them, reloaded now and then, undo to the start and redo to the end', async () => {
  const random = seeded(7);
  let taken = 0;
  while (taken < 1000) {
    const count = 1 + Math.floor(random() * 160);
    for (let i = 0; i < count && taken < 1000; i++, taken++) {
      const roll = random();
      if (roll < 0.1) state(program).undo();
      else if (roll < 0.15) state(program).redo();
      else state(program).edit(`edit ${taken}`, randomEdit(random));
      if (random() < 0.3) await program.flushJournal();
    }
    const before = state(program);
    await program.flushJournal();
    program = await afterReload();
    const after = state(program);
    expect(after.garment).toEqual(before.garment);
    expect(after.past.map(({ label }) => label)).toEqual(before.past.map(({ label }) => label));
    expect(after.future.map(({ label }) => label)).toEqual(before.future.map(({ label }) => label));
  }
  const end = state(program).garment;
  const steps = state(program).past.length;
  const start = state(program).past[0]?.before;
  expect(steps).toBeGreaterThan(100);
  for (let i = 0; i < steps; i++) state(program).undo();
  expect(state(program).garment).toEqual(start);
  await program.flushJournal();
  program = await afterReload();
  expect(state(program).garment).toEqual(start);
  for (let i = 0; i < steps; i++) state(program).redo();
  expect(state(program).garment).toEqual(end);
}, 30_000);

it('nudges that grew into one step are one step after a reload too', async () => {
  for (const name of ['A', 'As', 'Ash']) {
    state(program).edit('renamed', renamed(name), { merge: 'name' });
    await program.flushJournal();
  }
  const next = await afterReload();
  expect(state(next).past).toHaveLength(1);
  state(next).undo();
  expect(state(next).garment).toEqual(linden());
});

it('a page closed in the middle of a drag loses that drag and nothing else', async () => {
  state(program).edit('renamed', renamed('Ash'));
  state(program).beginDrag('moved a point');
  state(program).drag((garment) =>
    withPiece(garment, 'panel', (piece) => moveCorner(piece, 'c-side-hem', { x: 999, y: 888 })),
  );
  await program.flushJournal();
  expect(state(await afterReload()).garment).toEqual({ ...linden(), name: 'Ash' });
});

it('a drag in progress is never part of a snapshot', async () => {
  for (let i = 1; i < 50; i++) state(program).edit('renamed', renamed(`name ${i}`));
  await program.flushJournal();
  state(program).edit('renamed', renamed('name 50'));
  state(program).beginDrag('moved a point');
  state(program).drag(renamed('half way'));
  await program.flushJournal();
  expect(await program.database.snapshots.count()).toBe(2);
  expect(state(await afterReload()).garment?.name).toBe('name 50');
});

it('the journal holds no more than two snapshots and what follows the older one', async () => {
  for (let i = 1; i <= 275; i++) {
    state(program).edit('renamed', renamed(`name ${i}`));
    await program.flushJournal();
  }
  expect(await program.database.snapshots.count()).toBe(2);
  expect(await program.database.journal.count()).toBeLessThanOrEqual(100);
  const next = await afterReload();
  for (let i = 0; i < 275; i++) state(next).undo();
  expect(state(next).garment).toEqual(linden());
});

it('a garment taken from the shelf again while it is on the table is not taken for a step', async () => {
  state(program).edit('renamed', renamed('Ash'));
  await program.openFromShelf(ID);
  await program.openFromShelf(ID);
  state(program).edit('renamed', renamed('Birch'));
  await program.flushJournal();
  expect(await program.database.journal.count()).toBe(2);
  expect(state(await afterReload()).past).toHaveLength(2);
});

it('a connection lost under the program is opened anew, and no step is lost', async () => {
  state(program).edit('renamed', renamed('Ash'));
  program.database.close();
  state(program).edit('renamed', renamed('Birch'));
  await program.flushJournal();
  expect(state(program).saving).toBe('saved');
  expect(state(await afterReload()).garment?.name).toBe('Birch');
});

it('a full device is said at once, the steps stay in memory, and they are kept as soon as there is room', async () => {
  const bulkAdd = vi
    .spyOn(program.database.journal, 'bulkAdd')
    .mockImplementation(() => Promise.reject(new DOMException('no room', 'QuotaExceededError')) as never);
  state(program).edit('renamed', renamed('Ash'));
  await vi.waitFor(() => expect(state(program).saving).toBe('failed'), { timeout: 300, interval: 5 });
  expect(state(program).failure).toMatch(/no room left/);
  state(program).edit('renamed', renamed('Birch'));
  await program.flushJournal();
  expect([state(program).garment?.name, state(program).saving]).toEqual(['Birch', 'failed']);
  expect(await program.database.journal.count()).toBe(0);
  bulkAdd.mockRestore();
  await program.flushJournal();
  expect(state(program).saving).toBe('saved');
  expect(state(await afterReload()).past).toHaveLength(2);
});

it('a failed write is tried again by itself after three seconds', async () => {
  vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] });
  const bulkAdd = vi.spyOn(program.database.journal, 'bulkAdd').mockRejectedValue(new Error('not now'));
  state(program).edit('renamed', renamed('Ash'));
  await program.flushJournal();
  bulkAdd.mockRestore();
  vi.advanceTimersByTime(2900);
  await new Promise(setImmediate);
  expect(state(program).saving).toBe('failed');
  vi.advanceTimersByTime(100);
  vi.useRealTimers();
  await vi.waitFor(() => expect(state(program).saving).toBe('saved'), { interval: 5 });
  expect(state(await afterReload()).garment?.name).toBe('Ash');
});

it('steps that could not be kept outlive another garment on the table', async () => {
  const bulkAdd = vi.spyOn(program.database.journal, 'bulkAdd').mockRejectedValue(new Error('not now'));
  state(program).edit('renamed', renamed('Ash'));
  await program.flushJournal();
  await program.startGarment({ ...linden(), id: 'apron', name: 'Apron' });
  bulkAdd.mockRestore();
  await program.flushJournal();
  expect((await program.listShelf()).map(({ name }) => name).sort()).toEqual(['Apron', 'Ash']);
  expect(state(await afterReload()).garment?.name).toBe('Ash');
});

it('steps that could not be kept are there when their garment is taken from the shelf again', async () => {
  const bulkAdd = vi.spyOn(program.database.journal, 'bulkAdd').mockRejectedValue(new Error('not now'));
  state(program).edit('renamed', renamed('Ash'));
  await program.openFromShelf(ID);
  expect(state(program).garment?.name).toBe('Ash');
  state(program).edit('renamed', renamed('Birch'));
  bulkAdd.mockRestore();
  await program.flushJournal();
  expect(state(await afterReload()).past).toHaveLength(2);
});

it('a window woken up late cannot write over what another one did meanwhile; what it did is kept beside, with its history', async () => {
  const late = program;
  state(late).edit('renamed', renamed('Alder'));
  await late.flushJournal();
  const other = await reload();
  await other.openFromShelf(ID);
  state(other).edit('renamed', renamed('Ash'));
  await other.flushJournal();
  state(late).edit('renamed', renamed('Birch'));
  await late.flushJournal();
  expect(state(late)).toMatchObject({ saving: 'saved', editing: 'here', garment: { name: 'Birch, kept beside' } });
  expect(state(await afterReload()).garment?.name).toBe('Ash');
  const beside = await reload();
  await beside.openFromShelf(state(late).garment?.id ?? '');
  expect(state(beside)).toMatchObject({ garment: { name: 'Birch, kept beside', id: state(late).garment?.id } });
  expect(state(beside).past.map(({ after }) => after.name)).toEqual(['Alder', 'Birch', 'Birch, kept beside']);
  expect((await beside.listShelf()).map(({ name }) => name)).toEqual(['Birch, kept beside', 'Ash']);
});

it('a window woken up so late that its numbers are gone into a snapshot does not call that kept what nobody would read', async () => {
  const late = program;
  const other = await reload();
  await other.openFromShelf(ID);
  for (let i = 1; i <= 120; i++) {
    state(other).edit('renamed', renamed(`name ${i}`));
    await other.flushJournal();
  }
  expect(await other.database.journal.get([ID, 1])).toBeUndefined();
  state(late).edit('renamed', renamed('Birch'));
  await late.flushJournal();
  expect((await late.listShelf()).map(({ name }) => name)).toEqual(['Birch, kept beside', 'name 120']);
});

it('a program whose store a newer one has taken over writes nothing more into it, and asks to be reloaded', async () => {
  await new Promise((done) => {
    const request = theStore().open('inchsquare', 990);
    request.onsuccess = done;
  });
  state(program).edit('renamed', renamed('Ash'));
  await program.flushJournal();
  expect([state(program).saving, state(program).failure]).toEqual(['failed', expect.stringMatching(/newer/)]);
});

it('when everything kept is cleared away under the program, the garment is kept anew with its history, and it is said', async () => {
  const { useKept } = await import('../../app/state/kept-store');
  state(program).edit('renamed', renamed('Ash'));
  await program.flushJournal();
  expect(useKept.getState().cleared).toBe(false);
  await new Promise((done) => {
    theStore().deleteDatabase('inchsquare').onsuccess = done;
  });
  state(program).edit('renamed', renamed('Birch'));
  await program.flushJournal();
  expect([state(program).saving, useKept.getState().cleared]).toEqual(['saved', true]);
  const again = state(await afterReload());
  expect([again.garment?.name, again.past.length]).toEqual(['Birch', 2]);
});

it('a write that the browser breaks off is said, and is whole at the next try', async () => {
  const bulkPut = vi.spyOn(program.database.shelf, 'bulkPut').mockImplementationOnce((() => {
    throw new DOMException('broken off', 'AbortError');
  }) as never);
  state(program).edit('renamed', renamed('Ash'));
  await program.flushJournal();
  bulkPut.mockRestore();
  await program.flushJournal();
  expect(state(program).saving).toBe('saved');
  expect(state(await afterReload()).garment?.name).toBe('Ash');
});

it('where the browser keeps nothing, a new garment lies on the table all the same and says that it is not kept', async () => {
  const next = await reload();
  vi.spyOn(next.database, 'transaction').mockRejectedValue(new Error('no store in this window'));
  await next.startGarment({ ...linden(), id: 'apron' });
  expect([state(next).garment?.id, state(next).saving]).toEqual(['apron', 'failed']);
});
