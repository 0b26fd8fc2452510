import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { MOST_STEPS, useGarment } from '../../app/state/garment-store';
import type { Garment } from '../../core/garment/garment';
import { moveCorner } from '../../core/garment/move-point';
import { withPiece } from '../../core/garment/with-piece';
import { linden } from '../garment/linden';

const moved = (x: number) => (garment: Garment) =>
  withPiece(garment, 'panel', (piece) => moveCorner(piece, 'c-side-hem', { x, y: 700 }));
const renamed = (name: string) => (garment: Garment) => ({ ...garment, name });
const now = () => useGarment.getState();
const x = () => now().garment?.pieces[0]?.corners[2]?.at.x;

let start: Garment;
beforeEach(() => {
  vi.useFakeTimers({ now: 1_790_000_000_000 });
  start = linden();
  now().open(start);
});
afterEach(() => {
  now().close();
  vi.useRealTimers();
});

it('edit makes one step that undo takes back to the very same garment and redo brings again', () => {
  now().edit('moved a point', moved(371));
  const after = now().garment;
  expect(now().past).toMatchObject([{ label: 'moved a point', time: 1_790_000_000_000 }]);
  now().undo();
  expect(now().garment).toBe(start);
  now().redo();
  expect(now().garment).toBe(after);
  expect([now().past.length, now().future.length]).toEqual([1, 0]);
});

it('edit makes no step when nothing changes, in whatever way nothing changes', () => {
  now().edit('renamed', (garment) => garment);
  now().edit('renamed', renamed(start.name));
  expect(now().past).toEqual([]);
  expect(now().garment).toBe(start);
});

it.each([Number.NaN, Number.POSITIVE_INFINITY, 1e7])('edit and drag refuse to take a corner to %s', (wrong) => {
  now().edit('moved a point', moved(wrong));
  now().beginDrag('moved a point');
  now().drag(moved(wrong));
  now().endDrag();
  expect(now().garment).toBe(start);
  expect(now().past).toEqual([]);
  expect(now().refused).toEqual({ label: 'moved a point' });
});

it('a new step forgets what was taken back', () => {
  now().edit('renamed', renamed('Ash'));
  now().edit('renamed', renamed('Birch'));
  now().undo();
  now().edit('renamed', renamed('Cedar'));
  expect(now().future).toEqual([]);
  now().undo();
  now().undo();
  expect(now().garment).toBe(start);
});

it('a drag of 300 moves is one step, always reckoned from where it began', () => {
  now().beginDrag('moved a point');
  for (let i = 1; i <= 300; i++) now().drag(moved(300 + i));
  expect([x(), now().past.length]).toEqual([600, 0]);
  now().endDrag();
  expect(now().past).toHaveLength(1);
  now().undo();
  expect(now().garment).toBe(start);
});

it('a drag back to where it began is no step', () => {
  now().beginDrag('moved a point');
  now().drag(moved(500));
  now().drag(() => linden());
  now().endDrag();
  expect(now().past).toEqual([]);
  expect(now().garment).toBe(start);
});

it('cancelDrag puts everything back, and undo during a drag cancels it first', () => {
  now().edit('renamed', renamed('Ash'));
  const ash = now().garment;
  now().beginDrag('moved a point');
  now().drag(moved(500));
  now().cancelDrag();
  expect(now().garment).toBe(ash);
  now().beginDrag('moved a point');
  now().drag(moved(501));
  now().undo();
  expect(now().garment).toBe(start);
  now().endDrag();
  expect(now().past).toEqual([]);
});

it('an edit during a drag ends the drag first, so that neither is lost', () => {
  now().beginDrag('moved a point');
  now().drag(moved(500));
  now().edit('renamed', renamed('Ash'));
  expect(now().past.map(({ label }) => label)).toEqual(['moved a point', 'renamed']);
  expect([x(), now().garment?.name]).toEqual([500, 'Ash']);
});

it('nudges of one thing within 600 ms are one step, and a pause, another thing or an undo begins another', () => {
  const nudge = (to: number, merge = 'corner') => now().edit('nudged a point', moved(to), { merge });
  nudge(369);
  vi.advanceTimersByTime(500);
  nudge(370);
  vi.advanceTimersByTime(500);
  nudge(371);
  expect(now().past).toHaveLength(1);
  vi.advanceTimersByTime(600);
  nudge(372);
  expect(now().past).toHaveLength(2);
  nudge(373, 'another');
  expect(now().past).toHaveLength(3);
  now().undo();
  nudge(374);
  expect(now().past.map(({ after }) => after.pieces[0]?.corners[2]?.at.x)).toEqual([371, 372, 374]);
  now().undo();
  now().undo();
  now().undo();
  expect(now().garment).toBe(start);
});

it('words of one sitting are one step however long she thinks between, and the next sitting is another', () => {
  const write = (name: string, merge: string) => now().edit('renamed', renamed(name), { merge, merges: 'always' });
  write('A', 'first');
  vi.advanceTimersByTime(90_000);
  write('Ash', 'first');
  expect(now().past).toHaveLength(1);
  write('Ash tree', 'second');
  expect(now().past).toHaveLength(2);
  now().undo();
  expect(now().garment?.name).toBe('Ash');
  now().undo();
  expect(now().garment).toBe(start);
  now().redo();
  now().undo();
  write('Birch', 'first');
  expect(now().past).toHaveLength(1);
});

it('the last 500 steps can be taken back and no more', () => {
  for (let i = 1; i <= MOST_STEPS + 7; i++) now().edit('renamed', renamed(`name ${i}`));
  expect(now().past).toHaveLength(500);
  for (let i = 0; i < MOST_STEPS + 7; i++) now().undo();
  expect(now().garment?.name).toBe('name 7');
  expect(now().future).toHaveLength(500);
});

it('a garment open in another window can be looked at and not changed', () => {
  now().edit('renamed', renamed('Ash'));
  now().beginDrag('moved a point');
  now().drag(moved(500));
  now().setEditing('elsewhere');
  const ash = now().garment;
  expect(x()).toBe(start.pieces[0]?.corners[2]?.at.x);
  now().edit('renamed', renamed('Birch'));
  now().beginDrag('moved a point');
  now().drag(moved(502));
  now().endDrag();
  now().undo();
  expect(now().garment).toBe(ash);
  now().open(start);
  now().edit('renamed', renamed('Cedar'));
  expect(now().garment?.name).toBe('Cedar');
});

it('without a garment nothing can be done, and nothing breaks', () => {
  now().close();
  now().edit('renamed', renamed('Ash'));
  now().beginDrag('moved');
  now().drag(moved(4));
  now().endDrag();
  now().undo();
  now().redo();
  expect(now().garment).toBeUndefined();
});
