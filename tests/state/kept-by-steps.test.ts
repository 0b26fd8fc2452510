import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { useGarment } from '../../app/state/garment-store';
import { movePiece } from '../../core/garment/move-piece';
import { withPiece } from '../../core/garment/with-piece';
import { linden } from '../garment/linden';
import { randomEdit, seeded } from '../storage/random-edits';

const now = () => useGarment.getState();
const nudge = (dx: number) => (garment: ReturnType<typeof linden>) =>
  withPiece(garment, 'panel', (piece) => movePiece(piece, { dx, dy: 0 }));

beforeEach(() => {
  vi.useFakeTimers({ now: 1_790_000_000_000 });
});
afterEach(() => {
  now().close();
  vi.useRealTimers();
});

it.each([7, 11, 1013])('no edit, undo or redo changes how a piece was first drawn (chance %i)', (seed) => {
  const random = seeded(seed);
  const { traced: _, ...start } = linden();
  now().open({ ...start, pieces: start.pieces.map((piece) => ({ ...piece })) });
  const first = new Map<string, string>();
  for (let step = 0; step < 150; step++) {
    vi.advanceTimersByTime(1000);
    const chance = random();
    if (chance < 0.15) now().undo();
    else if (chance < 0.25) now().redo();
    else now().edit(`step ${step}`, randomEdit(random));
    const { garment, past } = now();
    for (const piece of garment?.traced ?? []) {
      // A piece whose drawing was undone and another drawn is another piece, by its id.
      const drawn = JSON.stringify(piece);
      expect(first.get(piece.id) ?? drawn).toBe(drawn);
      first.set(piece.id, drawn);
    }
    const here = new Set(garment?.traced?.map(({ id }) => id));
    if (past.length > 0) expect(garment?.pieces.every(({ id, use }) => use === 'guide' || here.has(id))).toBe(true);
    // The reading is what was done and not undone, in order; a step that left the pieces alone is not in it.
    const labels = past.map(({ label }) => label);
    const read = garment?.steps?.map(({ label }) => label) ?? [];
    expect(labels.filter((label) => read.includes(label))).toEqual(read);
  }
  expect(first.size).toBeGreaterThan(2);
});

it('nudges that are one step are one line of the reading, and undo takes it out', () => {
  now().open(linden());
  now().edit('nudged', nudge(1), { merge: 'nudge panel' });
  vi.advanceTimersByTime(200);
  now().edit('nudged', nudge(1), { merge: 'nudge panel' });
  expect(now().garment?.steps).toEqual([{ label: 'nudged', time: 1_790_000_000_200, pieceIds: ['panel'] }]);
  now().undo();
  expect(now().garment?.steps).toBeUndefined();
  now().redo();
  expect(now().garment?.steps).toHaveLength(1);
});

it('a drag is one line, under way none', () => {
  now().open(linden());
  now().beginDrag('moved the panel');
  now().drag(nudge(5));
  expect(now().garment?.steps).toBeUndefined();
  now().drag(nudge(9));
  now().endDrag();
  expect(now().garment?.steps?.map(({ label }) => label)).toEqual(['moved the panel']);
});
