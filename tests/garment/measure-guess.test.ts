import { expect, it } from 'vitest';
import type { MeasureSet } from '../../core/garment/measure';
import { guessMeasure } from '../../core/garment/measure-guess';

const setOf = (measures: MeasureSet['measures']): MeasureSet => ({
  id: 's',
  date: '2026-02-03',
  wornOver: '',
  measures,
});

it('guessMeasure reads waist and hip off one another by the lines of the survey, to a millimetre', () => {
  // ANSUR II (US Army Natick, 2012), least squares over 1,986 women: 496.5 + 0.6095 × 760, and 1.0567 × 990 - 218.2.
  expect(guessMeasure(setOf({ waist: { length: 760 } }), 'hip')).toEqual({ length: 960, guessed: true });
  expect(guessMeasure(setOf({ hip: { length: 990 } }), 'waist')).toEqual({ length: 828, guessed: true });
});

it('guessMeasure takes the high hip half way, in girth and in depth (common practice)', () => {
  const set = setOf({ waist: { length: 700 }, hip: { length: 960 }, waistToHip: { length: 206 } });
  expect(guessMeasure(set, 'highHip')?.length).toBe(830);
  expect(guessMeasure(set, 'waistToHighHip')?.length).toBe(103);
});

it('guessMeasure falls back on the middle of the survey, or on nothing', () => {
  expect(guessMeasure(setOf({}), 'waistToKnee')?.length).toBe(571);
  expect(guessMeasure(setOf({}), 'neck')?.length).toBe(370);
  expect(guessMeasure(setOf({}), 'hip')).toBeUndefined();
  expect(guessMeasure(setOf({ waist: { length: 700 } }), 'highHip')).toBeUndefined();
  expect(guessMeasure(setOf({}), 'armLength')).toBeUndefined();
});
