import { expect, it } from 'vitest';
import { chooseSet, copySet, describeSet, setMeasure } from '../../core/garment/wearer-edits';
import { linden } from './linden';

it('setMeasure changes the set in use only', () => {
  const garment = linden();
  const after = setMeasure(garment, 'waist', { length: 710, right: 705 });
  expect(after.wearer.sets[1]?.measures.waist).toEqual({ length: 710, right: 705 });
  expect(after.wearer.sets[0]).toBe(garment.wearer.sets[0]);
  expect(setMeasure(garment, 'waist', undefined).wearer.sets[1]?.measures).not.toHaveProperty('waist');
});

it('copySet dates a copy, uses it from now on and leaves the old set as it was', () => {
  const garment = linden();
  const after = copySet(garment, { newId: () => 'set-winter', date: '2026-12-01' });
  expect(after.wearer.currentSetId).toBe('set-winter');
  expect(after.wearer.sets).toHaveLength(3);
  expect(after.wearer.sets[1]).toBe(garment.wearer.sets[1]);
  expect(after.wearer.sets[2]).toMatchObject({ date: '2026-12-01', wornOver: 'corset and one petticoat' });
  const changed = setMeasure(after, 'hip', { length: 999 });
  expect(changed.wearer.sets[1]).toBe(garment.wearer.sets[1]);
});

it('chooseSet and describeSet change which set is in use and what it says', () => {
  const spring = chooseSet(linden(), 'set-spring');
  expect(describeSet(spring, { wornOver: 'shift and stays' }).wearer.sets[0]).toMatchObject({
    date: '2026-04-19',
    wornOver: 'shift and stays',
  });
});

it('wearer edits give the same garment back when nothing changes', () => {
  const garment = linden();
  expect(setMeasure(garment, 'hip', { length: 38.25 * 25.4, depth: 8 * 25.4 })).toBe(garment);
  expect(setMeasure(garment, 'thigh', undefined)).toBe(garment);
  expect(chooseSet(garment, 'set-autumn')).toBe(garment);
  expect(chooseSet(garment, 'set-summer')).toBe(garment);
  expect(describeSet(garment, { date: '2026-10-02' })).toBe(garment);
});
