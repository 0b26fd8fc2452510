import { describe, expect, it } from 'vitest';
import type { MeasureSet } from '../../core/garment/measure';
import { measureFindings } from '../../core/garment/measure-check';
import { guessMeasure } from '../../core/garment/measure-guess';

function setOf(measures: MeasureSet['measures']): MeasureSet {
  return { id: 's', date: '2026-01-02', wornOver: '', measures };
}

/** Real women of ANSUR II (US Army Natick, 2012): waist, hip, waist height less buttock height, in mm. */
const bodies = [
  ['smallest waist', 611, 853, 152],
  ['largest waist', 1334, 1306, 82],
  ['shortest', 716, 815, 135],
  ['tallest', 777, 997, 194],
] as const;

describe('measureFindings', () => {
  it.each(bodies)('asks, and never refuses, for the %s', (_, waist, hip, toHip) => {
    const found = measureFindings(
      setOf({ waist: { length: waist }, hip: { length: hip }, waistToHip: { length: toHip } }),
    );
    expect(found.every((finding) => finding.weight === 'warn')).toBe(true);
    expect(found.some((finding) => finding.kind === 'waist-over-hip')).toBe(waist > hip);
  });

  it('asks about a hip of 58 in with what is usual', () => {
    const found = measureFindings(
      setOf({ waist: { length: 1000 }, hip: { length: 1473 }, waistToHip: { length: 190 } }),
    );
    expect(found).toEqual([
      expect.objectContaining({ kind: 'measure-unlikely', measure: 'hip', low: 867, high: 1206 }),
    ]);
  });

  it('says which lengths are out of order, which sides differ and what is missing', () => {
    const found = measureFindings(
      setOf({ waist: { length: 720 }, waistToHip: { length: 220 }, waistToKnee: { length: 200, right: 260 } }),
    );
    expect(found.map((finding) => finding.kind)).toEqual(['measure-needed', 'measure-unlikely', 'sides-differ']);
  });
});

describe('guessMeasure', () => {
  it('takes hip from waist along the line of the survey: 852 mm gives about the middle hip, 1,018', () => {
    expect(guessMeasure(setOf({ waist: { length: 852 } }), 'hip')).toEqual({ length: 1016, guessed: true });
  });

  it('gives nothing where there is nothing to go on', () => {
    expect(guessMeasure(setOf({}), 'hip')).toBeUndefined();
    expect(guessMeasure(setOf({}), 'bustSpan')).toBeUndefined();
  });
});
