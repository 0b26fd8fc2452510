import { expect, it } from 'vitest';
import { EASED_GARMENTS, suggestedEase, withSuggestedEase } from '../../core/fit/ease';
import { GIRTHS } from '../../core/garment/measure';
import { inches } from '../../core/units/inch';
import { fourGores } from './panels';

it.each([
  // Central Washington University, costume text, chapter 16, "Ease in clothing".
  ['skirt', 'straight', 'waist', 0.5, 0.75],
  ['dress', 'straight', 'waist', 0.75, 1],
  ['bodice', 'straight', 'bust', 1.5, 2],
  ['skirt', 'straight', 'hip', 2, 2.75],
  // Burton, School Sewing Based on Home Problems: none is added at the waist.
  ['period-skirt', 'straight', 'waist', 0, 0],
  // Common practice.
  ['slip', 'straight', 'bust', 2, 3],
  ['slip', 'bias', 'hip', 0, 1],
] as const)('suggestedEase of a %s, cut %s, at the %s spans %f to %f in', (garment, cloth, girth, low, high) => {
  const ease = suggestedEase(garment, cloth, girth);
  expect(ease).toMatchObject({ low: inches(low), high: inches(high) });
});

it('suggestedEase lies inside its range everywhere and is silent where no source speaks', () => {
  for (const garment of EASED_GARMENTS) {
    for (const girth of GIRTHS) {
      const ease = suggestedEase(garment, 'straight', girth);
      if (!ease) continue;
      expect(ease.usual).toBeGreaterThanOrEqual(ease.low);
      expect(ease.usual).toBeLessThanOrEqual(ease.high);
    }
  }
  expect(suggestedEase('skirt', 'straight', 'knee')).toBeUndefined();
});

it('withSuggestedEase writes the ease at the levels of one ring', () => {
  const { garment, ring } = fourGores();
  const eased = withSuggestedEase(garment, ring.id, { kind: 'period-skirt', cloth: 'straight' });
  expect(eased.rings[0]?.levels.map(({ ease }) => ease)).toEqual([0, inches(0.5), inches(1)]);
  expect(withSuggestedEase(garment, 'none', { kind: 'skirt', cloth: 'bias' })).toBe(garment);
});
