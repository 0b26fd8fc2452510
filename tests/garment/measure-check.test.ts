import { describe, expect, it } from 'vitest';
import type { MeasureSet } from '../../core/garment/measure';
import { measureFindings } from '../../core/garment/measure-check';
import { guessMeasure } from '../../core/garment/measure-guess';
import { depthOf, measureOf } from '../../core/garment/measure-value';

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

it('holds the halves of a girth against one another, not what two such halves would come to', () => {
  // 1 in between the halves is stored as 2 in; more than 1 1/2 is asked about.
  const halves = (by: number) =>
    setOf({ waist: { length: 720, right: 720 + 2 * by }, hip: { length: 965, depth: 200 } });
  expect(measureFindings(halves(25.4))).toEqual([]);
  expect(measureFindings(halves(41))).toMatchObject([{ kind: 'sides-differ', by: 41 }]);
});

describe('a hip depth noted with the hip', () => {
  const waist = { length: 720 };

  it('stands in for waist to hip, and is asked about beside the hip when it is unlikely', () => {
    expect(measureFindings(setOf({ waist, hip: { length: 965, depth: 200 } }))).toEqual([]);
    expect(measureFindings(setOf({ waist, hip: { length: 965, depth: 330 } }))).toEqual([
      expect.objectContaining({ kind: 'measure-unlikely', measure: 'waistToHip', value: 330 }),
    ]);
    expect(measureFindings(setOf({ waist, hip: { length: 965, depth: 330 } }))[0]?.place).toEqual({
      kind: 'measure',
      measure: 'hip',
    });
  });

  // Hip depths in use (common practice): 6 to 9 in below the waist.
  it.each([152.4, 177.8, 203.2, 228.6])('%d mm is not asked about', (depth) => {
    expect(measureFindings(setOf({ waist, hip: { length: 965, depth } }))).toEqual([]);
  });

  // Less than 4 in, more than 12 in.
  it.each([95.3, 311.2])('%d mm is asked about', (depth) => {
    expect(measureFindings(setOf({ waist, hip: { length: 965, depth } }))).toHaveLength(1);
  });
});

describe('depthOf', () => {
  it('takes the depth noted with a girth before the measure that says it, and 0 for the waist', () => {
    const set = setOf({ hip: { length: 965, depth: 210 }, waistToHip: { length: 190 }, waistToKnee: { length: 560 } });
    expect([depthOf(set, 'hip'), depthOf(set, 'knee'), depthOf(set, 'waist'), depthOf(set, 'thigh')]).toEqual([
      210,
      560,
      0,
      undefined,
    ]);
  });
});

describe('measureOf', () => {
  it('is the mean of the two sides where they differ', () => {
    expect(measureOf(setOf({ waistToFloorSide: { length: 1010, right: 1022 } }), 'waistToFloorSide')).toBe(1016);
  });
});

describe('guessMeasure', () => {
  it('takes hip from waist along the line of the survey: 852 mm gives about the middle hip, 1,018', () => {
    expect(guessMeasure(setOf({ waist: { length: 852 } }), 'hip')).toEqual({ length: 1016, guessed: true });
  });

  it('guesses waist to hip from the depth noted with the hip, else between 7 and 9 in (common practice)', () => {
    expect(guessMeasure(setOf({ hip: { length: 965, depth: 215 } }), 'waistToHip')?.length).toBe(215);
    const plain = guessMeasure(setOf({}), 'waistToHip')?.length ?? 0;
    expect(plain).toBeGreaterThanOrEqual(177.8);
    expect(plain).toBeLessThanOrEqual(228.6);
  });

  it('gives nothing where there is nothing to go on', () => {
    expect(guessMeasure(setOf({}), 'hip')).toBeUndefined();
    expect(guessMeasure(setOf({}), 'bustSpan')).toBeUndefined();
  });
});
