import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { linden } from '../garment/linden';
import { emptyBrowser, type Program, reload } from './fresh';

const ID = 'linden-petticoat';
const KEY = `inchsquare not yet kept ${ID}`;
const state = (program: Program) => program.useGarment.getState();
const rename = (program: Program, name: string) => state(program).edit('renamed', (garment) => ({ ...garment, name }));

let kept: Map<string, string>;
let program: Program;
beforeEach(async () => {
  kept = new Map();
  vi.stubGlobal('localStorage', {
    getItem: (key: string) => kept.get(key) ?? null,
    setItem: (key: string, value: string) => kept.set(key, value),
    removeItem: (key: string) => kept.delete(key),
  });
  program = await emptyBrowser();
  await program.startGarment(linden());
});
afterEach(() => {
  vi.unstubAllGlobals();
});

/** What is not on the device yet is set aside, and then the page is gone with all that was in its memory. */
async function closedAmid(names: readonly string[]): Promise<Program> {
  const bulkAdd = vi.spyOn(program.database.journal, 'bulkAdd').mockRejectedValue(new DOMException('', 'AbortError'));
  for (const name of names) rename(program, name);
  await program.flushJournal();
  program.setAside(ID, program.pendingRows(ID));
  bulkAdd.mockRestore();
  const next = await reload();
  await next.openFromShelf(ID);
  await next.flushJournal();
  return next;
}

it('what was set aside as the page closed is there when the garment is opened, is kept then, and aside no more', async () => {
  rename(program, 'Alder');
  await program.flushJournal();
  const next = await closedAmid(['Ash', 'Birch']);
  expect(state(next)).toMatchObject({ garment: { name: 'Birch' }, saving: 'saved' });
  expect([...kept.keys()]).toEqual([]);
  const later = await reload();
  await later.openFromShelf(ID);
  expect(state(later).past.map(({ after }) => after.name)).toEqual(['Alder', 'Ash', 'Birch']);
  expect((await later.listShelf()).map(({ name }) => name)).toEqual(['Birch']);
});

it('what arrived on the device after all is not done twice', async () => {
  rename(program, 'Ash');
  const rows = program.pendingRows(ID);
  expect(rows).toHaveLength(1);
  await program.flushJournal();
  program.setAside(ID, rows);
  const next = await reload();
  await next.openFromShelf(ID);
  rename(next, 'Birch');
  await next.flushJournal();
  expect(state(next).past.map(({ after }) => after.name)).toEqual(['Ash', 'Birch']);
  expect(await next.database.journal.count()).toBe(2);
});

it.each(['not JSON', '{}', '[null, 3]', `[{"garmentId":"${ID}","seq":1}]`, `[{"garmentId":"other","seq":1}]`])(
  'what stands there spoilt (%s) harms nothing',
  async (spoilt) => {
    kept.set(KEY, spoilt);
    const next = await reload();
    await next.openFromShelf(ID);
    rename(next, 'Ash');
    await next.flushJournal();
    const later = await reload();
    await later.openFromShelf(ID);
    expect(state(later).garment?.name).toBe('Ash');
  },
);

it('of a garment that is taken off the shelf nothing stays aside', async () => {
  program.setAside(ID, [{ garmentId: ID, seq: 1, entry: { kind: 'undo' } }]);
  await program.removeFromShelf(ID);
  expect([...kept.keys()]).toEqual([]);
});
