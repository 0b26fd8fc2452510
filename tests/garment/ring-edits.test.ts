import { expect, it } from 'vitest';
import { addRing, setEase, setInRing, setTimes } from '../../core/garment/ring-edits';
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
