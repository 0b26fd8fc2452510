import { expect, it } from 'vitest';
import { seededRandom } from '../../core/cloth/seeded-random';

it('seededRandom(seed) gives the same numbers again, other ones for another seed, evenly from 0 to 1', () => {
  const [one, again, other] = [seededRandom(5), seededRandom(5), seededRandom(6)];
  const numbers = Array.from({ length: 8000 }, () => one());
  expect(numbers).toEqual(Array.from({ length: 8000 }, () => again()));
  expect(numbers).not.toEqual(Array.from({ length: 8000 }, () => other()));
  expect(Math.min(...numbers)).toBeGreaterThanOrEqual(0);
  expect(Math.max(...numbers)).toBeLessThan(1);
  // Of 8000 even numbers 800 a tenth are expected; 100 off would be nearly four standard deviations.
  for (let tenth = 0; tenth < 10; tenth++) {
    expect(Math.abs(numbers.filter((n) => Math.floor(n * 10) === tenth).length - 800)).toBeLessThan(100);
  }
});
