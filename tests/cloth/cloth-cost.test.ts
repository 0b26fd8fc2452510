import { expect, it } from 'vitest';
import { clothCost, couponsPerYard } from '../../core/cloth/cloth-cost';
import { inches, MM_PER_YARD } from '../../core/units/inch';

it('clothCost(length, price) is by the yard or by the metre', () => {
  expect(clothCost(2.5 * MM_PER_YARD, { each: 4, per: 'yard' })).toBeCloseTo(10, 12);
  expect(clothCost(1750, { each: 8, per: 'metre' })).toBeCloseTo(14, 12);
});

it.each([
  ['woollen', 36, 3], // The Times, 3 June 1941, as transcribed at pipneyjane.blogspot.com, January 2013
  ['other', 36, 2], // from memory
  ['other', 44, 2.5], // a 1940s booklet, quoted second hand
] as const)('couponsPerYard(): %s cloth %d in wide takes %f', (cloth, width, coupons) => {
  expect(couponsPerYard(inches(width), cloth)).toBe(coupons);
});

it('a slip from 2 1/2 yd of 36 in cloth takes 5 coupons (2 1/2 times 2)', () => {
  const price = { each: couponsPerYard(inches(36), 'other'), per: 'yard' } as const;
  expect(clothCost(inches(90), price)).toBeCloseTo(5, 12);
});
