import { describe, expect, it } from 'vitest';
import { inches } from '../../core/units/inch';
import { generatedPhoto, settingsOf } from './generated-photo';
import { tracedTruth } from './traced-truth';

const SIZE = { width: 1200, height: 1600 };
const traced = (index: number) => tracedTruth(generatedPhoto(settingsOf(index, SIZE)));

// Whole photos, from the picture as it was taken to the outline at full size; the measured set is the bench's.
describe('a piece of 26 in traced by its ink on a generated photo is true at full size', () => {
  it.each([0, 17])('within 1/16 in on a flat page: photo %d', { timeout: 60_000 }, (index) => {
    const found = traced(index);
    expect(found?.off).toBeLessThan(inches(1 / 16));
    expect(found?.presses).toBe(7);
  });

  // The second is a page whose bow is lost when its proposal is looked for anew from its corners alone.
  it.each([12, 63])('within 1/8 in on a curled one: photo %d', { timeout: 60_000 }, (index) => {
    expect(traced(index)?.off).toBeLessThan(inches(1 / 8));
  });
});
