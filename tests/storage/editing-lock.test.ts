import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { linden } from '../garment/linden';
import { emptyBrowser, type Program, reload } from './fresh';

const ID = 'linden-petticoat';
const state = (program: Program) => program.useGarment.getState();
const rename = (program: Program, name: string) => state(program).edit('renamed', (garment) => ({ ...garment, name }));

/**
 * Exclusive locks as the Web Locks API describes them: a queue for each name, `signal` to leave it, `steal` to break it,
 * `ifAvailable` to hear at once that it is taken. A browser that is `slow` answers long after it was asked.
 */
function lockManager({ slow = false } = {}) {
  interface Wish {
    readonly grant: () => void;
    readonly broken: (fault: Error) => void;
  }
  const queues = new Map<string, Wish[]>();
  return {
    async request(name: string, options: Options, work: (lock: object | null) => Promise<void> | undefined) {
      if (slow) {
        await new Promise((over) => setTimeout(over, 900));
        options.signal?.throwIfAborted();
      }
      return new Promise<void>((resolve, reject) => {
        const queue = queues.get(name) ?? [];
        queues.set(name, queue);
        if (options.ifAvailable && queue.length > 0) {
          work(null);
          resolve();
          return;
        }
        const leave = () => {
          const index = queue.indexOf(wish);
          if (index >= 0) queue.splice(index, 1);
          if (index === 0) queue[0]?.grant();
        };
        const wish: Wish = {
          grant: () => void work({ name })?.then(leave).then(resolve),
          broken: reject,
        };
        options.signal?.addEventListener('abort', () => {
          if (queue.indexOf(wish) <= 0) return;
          leave();
          reject(options.signal?.reason);
        });
        if (options.steal) queue.shift()?.broken(new DOMException('stolen', 'AbortError'));
        if (options.steal) queue.unshift(wish);
        else queue.push(wish);
        if (queue[0] === wish) wish.grant();
      });
    },
  };
}

type Options = { readonly signal?: AbortSignal; readonly steal?: boolean; readonly ifAvailable?: boolean };

let first: Program;
beforeEach(async () => {
  vi.stubGlobal('navigator', { locks: lockManager() });
  first = await emptyBrowser();
  await first.startGarment(linden());
});
afterEach(() => {
  vi.unstubAllGlobals();
});

it('a second window can look at a garment and not change it, and says why', async () => {
  const second = await reload();
  await second.openFromShelf(ID);
  expect(state(second)).toMatchObject({ editing: 'elsewhere', saving: 'failed' });
  expect(state(second).failure).toMatch(/open in another window/);
  rename(second, 'Birch');
  rename(first, 'Ash');
  await first.flushJournal();
  expect(state(first)).toMatchObject({ editing: 'here', saving: 'saved' });
  expect((await second.takeForSaving(ID))?.name).toBe('Ash');
});

it('editHere takes the garment over with everything done so far; the first window then only looks', async () => {
  const second = await reload();
  await second.openFromShelf(ID);
  rename(first, 'Ash');
  await first.flushJournal();
  await second.editHere();
  expect(state(second)).toMatchObject({ editing: 'here', saving: 'saved', garment: { name: 'Ash' } });
  expect(state(first)).toMatchObject({ editing: 'elsewhere', saving: 'failed' });
  rename(second, 'Birch');
  rename(first, 'Cedar');
  await second.flushJournal();
  expect(await second.database.journal.count()).toBe(2);
  expect((await first.takeForSaving(ID))?.name).toBe('Birch');
});

it('a window that takes another garment gives the first one back', async () => {
  await first.startGarment({ ...linden(), id: 'apron' });
  const second = await reload();
  await second.openFromShelf(ID);
  expect(state(second).editing).toBe('here');
});

it('opening a garment again in the window that has it keeps it there', async () => {
  await first.openFromShelf(ID);
  await first.openFromShelf(ID);
  expect(state(first).editing).toBe('here');
});

it('a browser that takes long to answer is not taken for another window', async () => {
  vi.stubGlobal('navigator', { locks: lockManager({ slow: true }) });
  const alone = await reload();
  await alone.openFromShelf(ID);
  expect(state(alone).editing).toBe('here');
  const second = await reload();
  await second.openFromShelf(ID);
  expect(state(second).editing).toBe('elsewhere');
});

it('a garment that cannot be opened leaves the one on the table held, so that no other window changes it', async () => {
  await first.database.snapshots.add({ garmentId: 'spoilt', seq: 0, garment: { bad: 1 }, past: [], future: [] });
  expect(await first.openFromShelf('spoilt')).toMatchObject({ kind: 'not-a-garment' });
  expect(state(first)).toMatchObject({ editing: 'here', garment: { id: ID } });
  const second = await reload();
  await second.openFromShelf(ID);
  expect(state(second).editing).toBe('elsewhere');
});

it('what a window could not keep before another took its garment over is kept beside, and nothing of either is lost', async () => {
  const refused = new DOMException('no', 'UnknownError');
  const add = vi.spyOn(first.database.journal, 'bulkAdd').mockRejectedValue(refused);
  rename(first, 'Ash');
  await first.flushJournal();
  expect(state(first).saving).toBe('failed');
  const second = await reload();
  await second.openFromShelf(ID);
  await second.editHere();
  rename(second, 'Birch');
  await second.flushJournal();
  expect(state(first)).toMatchObject({ editing: 'elsewhere', garment: { name: 'Ash' } });
  await first.editHere();
  expect(state(first)).toMatchObject({ editing: 'here', garment: { name: 'Ash, kept beside' } });
  expect(state(second)).toMatchObject({ editing: 'here', garment: { name: 'Birch' } });
  add.mockRestore();
  await first.flushJournal();
  const names = (await first.listShelf()).map(({ name }) => name);
  expect(names.toSorted()).toEqual(['Ash, kept beside', 'Birch']);
});
