import { describe, expect, it } from 'vitest';
import { bodiceLevels, skirtLevels } from '../../core/fit/default-ring';
import type { MeasureSet } from '../../core/garment/measure';
import { inches } from '../../core/units/inch';
import { traced } from '../shaping/traced';
import { figure, garmentOf } from './skirts';

describe('proposedRing', () => {
  it('takes in the pieces that have a waist edge', () => {
    const skirt = traced('skirt', [
      [[0, 0], 'waist'],
      [[210, 5], 'seam'],
      [[220, 600], 'hem'],
    ]);
    const flounce = traced('flounce', [
      [[0, 700], 'seam'],
      [[410, 705], 'seam'],
      [[420, 900], 'hem'],
    ]);
    const { ring } = garmentOf([flounce, skirt], figure);
    expect(ring.members).toEqual([{ pieceId: skirt.id }]);
  });
});

describe('skirtLevels', () => {
  it('wants 1/2 in at the waist and 2 in at the hip (Central Washington University, costume text, chapter 16)', () => {
    const levels = skirtLevels(() => 'x');
    expect(levels.map(({ girth, ease }) => [girth, ease])).toEqual([
      ['waist', inches(0.5)],
      ['highHip', inches(1)],
      ['hip', inches(2)],
    ]);
  });
});

describe('bodiceLevels', () => {
  const ids = () => {
    let count = 0;
    return () => `b${++count}`;
  };
  const set = (measures: MeasureSet['measures']): MeasureSet => ({
    id: 's',
    date: '2026-01-02',
    wornOver: '',
    measures,
  });

  it('puts the bust above the waist by front length less bust depth, with 2 and 1 in of ease', () => {
    const levels = bodiceLevels(ids(), set({ frontWaistLength: { length: 430 }, bustDepth: { length: 262 } }));
    expect(levels.map(({ girth, depth, ease }) => [girth, depth, ease])).toEqual([
      ['bust', { kind: 'length', length: -168 }, inches(2)],
      ['waist', { kind: 'length', length: 0 }, inches(1)],
    ]);
  });

  it('leaves the bust out where nobody said how high it lies', () => {
    expect(bodiceLevels(ids(), set({ bustDepth: { length: 262 } })).map(({ girth }) => girth)).toEqual(['waist']);
  });
});
