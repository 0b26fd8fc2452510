import { expect, it } from 'vitest';
import {
  centimetres,
  inches,
  MM_PER_FOOT,
  MM_PER_INCH,
  MM_PER_METRE,
  MM_PER_NAIL,
  MM_PER_YARD,
  squareSize,
} from '../../core/units/inch';

it('an inch is 25.4 mm exactly (National Bureau of Standards, Refinement of Values for the Yard and the Pound, 1959)', () => {
  expect(inches(7)).toBe(177.79999999999998);
  expect(Math.abs(inches(7) - 177.8)).toBeLessThan(1e-12);
  expect(centimetres(7)).toBe(70);
});

it('feet, yards and nails are whole numbers of inches, the yard 0.9144 m', () => {
  expect(MM_PER_FOOT / MM_PER_INCH).toBeCloseTo(12, 12);
  expect(MM_PER_YARD / MM_PER_METRE).toBe(0.9144);
  expect(MM_PER_YARD / MM_PER_NAIL).toBe(16);
});

it('a drafting square is an inch, or two centimetres', () => {
  expect([squareSize('in'), squareSize('cm')]).toEqual([25.4, 20]);
});
