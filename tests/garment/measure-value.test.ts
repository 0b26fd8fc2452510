import { expect, it } from 'vitest';
import type { MeasureSet } from '../../core/garment/measure';
import { currentSet, depthOf, halfGirths, measureOf } from '../../core/garment/measure-value';
import { linden } from './linden';

const set: MeasureSet = {
  id: 's',
  date: '2026-02-03',
  wornOver: '',
  measures: {
    waist: { length: 702 },
    highHip: { length: 880, depth: 97 },
    waistToHip: { length: 204 },
    waistToHighHip: { length: 111 },
    waistToFloorSide: { length: 1031, right: 1024 },
  },
};

it('currentSet is the set in use; a garment without it is a bug', () => {
  expect(currentSet(linden()).id).toBe('set-autumn');
  const { wearer } = linden();
  expect(() => currentSet({ ...linden(), wearer: { ...wearer, currentSetId: 'gone' } })).toThrow('gone');
});

it('measureOf gives the mean of two sides that differ', () => {
  expect(measureOf(set, 'waistToFloorSide')).toBe(1027.5);
  expect(measureOf(set, 'waist')).toBe(702);
  expect(measureOf(set, 'bust')).toBeUndefined();
});

it('depthOf prefers the depth noted with the girth', () => {
  expect(depthOf(set, 'highHip')).toBe(97);
  expect(depthOf(set, 'hip')).toBe(204);
  expect(depthOf(set, 'waist')).toBe(0);
  expect(depthOf(set, 'bust')).toBeUndefined();
  expect(depthOf(set, 'knee')).toBeUndefined();
});

it('halfGirths are the two sides of a girth taped apart, together the whole', () => {
  const uneven = { ...set, measures: { waist: { length: 700, right: 740 } } };
  expect(halfGirths(uneven, 'waist')).toEqual({ left: 350, right: 370 });
  expect(measureOf(uneven, 'waist')).toBe(720);
  expect(halfGirths(set, 'waist')).toBeUndefined();
});
