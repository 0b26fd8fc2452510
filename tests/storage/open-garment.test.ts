import { beforeEach, expect, it } from 'vitest';
import type { Garment } from '../../core/garment/garment';
import { linden } from '../garment/linden';
import { emptyBrowser, type Program, reload } from './fresh';

const ID = 'linden-petticoat';
const renamed = (name: string) => (garment: Garment) => ({ ...garment, name });
const state = (program: Program) => program.useGarment.getState();

/** A browser with the sample on its shelf and this many steps in its journal. */
async function afterSteps(count: number): Promise<Program> {
  const program = await emptyBrowser();
  await program.startGarment(linden());
  for (let i = 1; i <= count; i++) {
    state(program).edit(`step ${i}`, renamed(`name ${i}`));
    await program.flushJournal();
  }
  return program;
}

let program: Program;
beforeEach(async () => {
  program = await afterSteps(8);
});

it('takeFromShelf says that a garment is not there', async () => {
  expect(await program.takeFromShelf('apron')).toEqual({ kind: 'missing' });
});

const damages: [string, (db: Program['database']) => Promise<unknown>][] = [
  ['an entry that is gone', (db) => db.journal.delete([ID, 6])],
  ['an entry of nothing', (db) => db.journal.put({ garmentId: ID, seq: 6 } as never)],
  [
    'an entry at the wrong place',
    (db) => db.journal.get([ID, 2]).then((row) => db.journal.put({ ...row, seq: 6 } as never)),
  ],
  ['a redo of nothing', (db) => db.journal.put({ garmentId: ID, seq: 6, entry: { kind: 'redo' } })],
  [
    'a step to no garment',
    (db) =>
      db.journal.put({
        garmentId: ID,
        seq: 6,
        entry: {
          kind: 'step',
          step: { change: [{ kind: 'value', at: ['name'], before: 'name 5', after: 7 }], label: 'x', time: 1 },
        },
      }),
  ],
];

it.each(damages)('after %s a garment opens to the last good step and says how much was lost', async (_, damage) => {
  await damage(program.database);
  const there = await program.database.journal.count();
  const next = await reload();
  const opened = await next.openFromShelf(ID);
  expect(opened).toMatchObject({ garment: { name: 'name 5' }, lost: there - 5 });
  expect(state(next).past).toHaveLength(5);
});

it('work goes on after damage, is kept, and the damaged entries are not written over', async () => {
  await program.database.journal.put({ garmentId: ID, seq: 6 } as never);
  const next = await reload();
  await next.openFromShelf(ID);
  state(next).edit('renamed', renamed('Ash'));
  await next.flushJournal();
  const last = await reload();
  expect(await last.openFromShelf(ID)).toMatchObject({ garment: { name: 'Ash' }, lost: 0 });
  for (let i = 0; i < 6; i++) state(last).undo();
  expect(state(last).garment).toEqual(linden());
  expect((await last.database.journal.get([ID, 8]))?.entry).toMatchObject({ step: { label: 'step 8' } });
});

it('a damaged snapshot falls back to the one before, and nothing is lost', async () => {
  const long = await afterSteps(120);
  const seqs = (await long.database.snapshots.toArray()).map(({ seq }) => seq);
  expect(seqs).toEqual([50, 100]);
  await long.database.snapshots.update([ID, 100], { garment: { schema: 1, id: ID } });
  const next = await reload();
  expect(await next.openFromShelf(ID)).toMatchObject({ garment: { name: 'name 120' }, lost: 0 });
  expect(state(next).past).toHaveLength(120);
});

it('a damaged history does not hold back the garment it led to', async () => {
  const long = await afterSteps(50);
  await long.database.snapshots.update([ID, 50], { past: [{ change: [{ at: 'nowhere' }] }] as never });
  await long.database.snapshots.delete([ID, 0]);
  const next = await reload();
  expect(await next.openFromShelf(ID)).toMatchObject({ garment: { name: 'name 50' }, lost: 0 });
});

it('a garment of a newer program is named as such and left as it is', async () => {
  await program.database.snapshots.update([ID, 0], { garment: { schema: 99 } });
  const next = await reload();
  expect(await next.openFromShelf(ID)).toEqual({ kind: 'newer', schema: 99 });
  expect(state(next).garment).toBeUndefined();
  expect(await next.database.journal.count()).toBe(8);
});

it('a garment of which nothing can be read is refused with the place of the fault', async () => {
  await program.database.snapshots.update([ID, 0], { garment: { ...linden(), name: 7 } });
  expect(await (await reload()).openFromShelf(ID)).toEqual({ kind: 'not-a-garment', where: 'name', why: 'value' });
});
