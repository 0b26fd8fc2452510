import { expect, it } from 'vitest';
import type { Level } from '../../core/garment/garment';
import {
  addLevel,
  addRing,
  removeLevel,
  removeRing,
  renameLevel,
  renameRing,
  setEase,
  setInRing,
  setLevelBody,
  setLevelPlace,
  setTimes,
} from '../../core/garment/ring-edits';
import { linden } from './linden';

it('setInRing takes a piece into a ring and leaves it out', () => {
  const out = setInRing(linden(), 'skirt', 'panel', 'out');
  expect(out.rings[0]?.members).toEqual([{ pieceId: 'band', times: 1 }]);
  expect(setInRing(out, 'skirt', 'panel', 'in').rings[0]?.members[1]).toEqual({ pieceId: 'panel' });
});

it('setTimes says how often a piece goes round, or leaves it to its cut', () => {
  expect(setTimes(linden(), 'skirt', 'panel', 4).rings[0]?.members[0]).toEqual({ pieceId: 'panel', times: 4 });
  expect(setTimes(linden(), 'skirt', 'band', undefined).rings[0]?.members[1]).toEqual({ pieceId: 'band' });
});

it('setEase changes one level, addRing adds a ring', () => {
  expect(setEase(linden(), 'skirt', 'l-hip', 60).rings[0]?.levels.map(({ ease }) => ease)).toEqual([12.7, 60]);
  expect(addRing(linden(), { id: 'flounce', name: 'Flounce', members: [], levels: [] }).rings).toHaveLength(2);
});

it('ring edits give the same garment back when nothing changes', () => {
  const garment = linden();
  expect(setInRing(garment, 'skirt', 'panel', 'in')).toBe(garment);
  expect(setInRing(garment, 'bodice', 'panel', 'in')).toBe(garment);
  expect(setTimes(garment, 'skirt', 'band', 1)).toBe(garment);
  expect(setTimes(garment, 'skirt', 'panel', undefined)).toBe(garment);
  expect(setEase(garment, 'skirt', 'l-hip', 50.8)).toBe(garment);
  expect(setEase(garment, 'skirt', 'l-knee', 5)).toBe(garment);
});

it('levels are added, placed, named, taped and taken away', () => {
  const seat: Level = { id: 'seat', girth: 'hip', depth: { kind: 'length', length: 230 }, ease: 30 };
  const added = addLevel(linden(), 'skirt', seat);
  expect(added.rings[0]?.levels.at(-1)).toBe(seat);
  const named = renameLevel(added, 'skirt', 'seat', 'Seat');
  expect(named.rings[0]?.levels.at(-1)?.name).toBe('Seat');
  expect(renameLevel(named, 'skirt', 'seat', '').rings[0]?.levels.at(-1)).toEqual(seat);
  const taped = setLevelBody(added, 'skirt', 'seat', 1011);
  expect(taped.rings[0]?.levels.at(-1)?.body).toBe(1011);
  expect(setLevelBody(taped, 'skirt', 'seat', undefined).rings[0]?.levels.at(-1)).toEqual(seat);
  const place = { girth: 'bust', depth: { kind: 'length', length: -170 } } as const;
  expect(setLevelPlace(added, 'skirt', 'seat', place).rings[0]?.levels.at(-1)).toEqual({ ...seat, ...place });
  expect(removeLevel(added, 'skirt', 'seat').rings).toEqual(linden().rings);
});

it('rings are renamed and taken away', () => {
  expect(renameRing(linden(), 'skirt', 'Underskirt').rings[0]?.name).toBe('Underskirt');
  expect(removeRing(linden(), 'skirt').rings).toEqual([]);
});

it('level edits give the same garment back when nothing changes', () => {
  const garment = linden();
  const [level] = garment.rings[0]?.levels ?? [];
  if (!level) throw new Error('no level');
  expect(renameLevel(garment, 'skirt', level.id, level.name ?? '')).toBe(garment);
  expect(setLevelBody(garment, 'skirt', level.id, level.body)).toBe(garment);
  expect(setLevelPlace(garment, 'skirt', level.id, { girth: level.girth, depth: { ...level.depth } })).toBe(garment);
  expect(removeLevel(garment, 'skirt', 'none')).toBe(garment);
  expect(removeRing(garment, 'none')).toBe(garment);
  expect(renameRing(garment, 'none', 'x')).toBe(garment);
});
