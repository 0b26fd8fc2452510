import { expect, it } from 'vitest';
import { outlineInStance } from '../../core/cloth/stance-outline';
import { stripToLay } from '../../core/cloth/strip-to-lay';
import { boxOfPoints } from '../../core/geometry/bounds';
import { inches } from '../../core/units/inch';

it('stripToLay(strip) on the bias takes (L + B) / √2 both ways: 26 by 20 in takes 32 1/2 by 32 1/2 (plane geometry)', () => {
  const strip = stripToLay({ id: 's', length: inches(26), width: inches(20), count: 3, cut: 'bias' }, 1);
  const box = boxOfPoints(outlineInStance(strip.outline, strip.stances[0] ?? { turn: 0 }));
  expect((box?.maxX ?? 0) / inches(1)).toBeCloseTo(32.53, 2);
  expect((box?.maxY ?? 0) / inches(1)).toBeCloseTo(32.53, 2);
  expect(strip.count).toBe(3);
});

it('stripToLay(strip) along and across, and two at a time on double cloth', () => {
  const box = (cut: 'along' | 'across') => {
    const strip = stripToLay({ id: 's', length: 600, width: 80, count: 5, cut }, 2);
    expect(strip.count).toBe(3);
    return boxOfPoints(outlineInStance(strip.outline, strip.stances[0] ?? { turn: 0 }));
  };
  expect(box('along')?.maxX).toBe(600);
  expect(box('across')?.maxX).toBe(80);
});
