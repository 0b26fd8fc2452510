import { describe, expect, it } from 'vitest';
import { skirtLevels } from '../../core/fit/default-ring';
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
