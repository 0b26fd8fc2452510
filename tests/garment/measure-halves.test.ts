import { describe, expect, it } from 'vitest';
import { canBeHalved, halvesOf, withHalf, withHalvesAlike, withWhole } from '../../core/garment/measure-halves';
import { halfGirths, measureOf } from '../../core/garment/measure-value';

const waist = { length: 720 };
const set = { id: 's', date: '2026-01-05', wornOver: '', measures: {} };

describe('the halves of a girth', () => {
  it('are two for what goes round the body, and none for a limb or a length', () => {
    expect(['waist', 'hip', 'bust'].map((name) => canBeHalved(name as 'waist'))).toEqual([true, true, true]);
    expect(['thigh', 'knee', 'waistToHip'].map((name) => canBeHalved(name as 'thigh'))).toEqual([false, false, false]);
    expect(halfGirths({ ...set, measures: { thigh: { length: 540, right: 560 } } }, 'thigh')).toBeUndefined();
  });

  it('leave the rest of the whole to the other when one is taped first', () => {
    const left = withHalf(waist, 'left', 349);
    expect(left && halvesOf(left)).toEqual({ left: 349, right: 371 });
    const right = withHalf(waist, 'right', 349);
    expect(right && halvesOf(right)).toEqual({ left: 371, right: 349 });
    expect(measureOf({ ...set, measures: { waist: left ?? waist } }, 'waist')).toBe(720);
  });

  it('are each their own once both are there, and the whole is their sum', () => {
    const both = withHalf(withHalf(waist, 'left', 349) ?? waist, 'right', 380);
    expect(both && halvesOf(both)).toEqual({ left: 349, right: 380 });
    expect(measureOf({ ...set, measures: { waist: both ?? waist } }, 'waist')).toBe(729);
  });

  it('cannot be as much as the whole', () => {
    expect(withHalf(waist, 'left', 720)).toBeUndefined();
    expect(withHalf(waist, 'right', 731)).toBeUndefined();
  });

  it('keep their difference when the whole is taped again, and the depth that was noted', () => {
    const hip = { length: 960, right: 990, depth: 203 };
    expect(withWhole(hip, 985)).toEqual({ length: 970, right: 1000, depth: 203 });
    expect(withWhole({ length: 960, depth: 203 }, 985)).toEqual({ length: 985, depth: 203 });
    // Too little is left to keep so large a difference.
    expect(withWhole({ length: 100, right: 900 }, 300)).toEqual({ length: 300 });
  });

  it('are alike again at the same whole', () => {
    expect(withHalvesAlike({ length: 960, right: 990, depth: 203 })).toEqual({ length: 975, depth: 203 });
    expect(withHalvesAlike(waist)).toBe(waist);
  });

  it('are no guess any more once taped', () => {
    expect(withHalf({ length: 720, guessed: true }, 'left', 350)).toEqual({ length: 700, right: 740 });
    expect(withWhole({ length: 720, guessed: true }, 730)).toEqual({ length: 730 });
  });
});
