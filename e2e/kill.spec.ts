import { expect, test } from '@playwright/test';
import { killAgainAndAgain } from '../scripts/soak/kill';

/** `npm run soak -- kill` does it 300 times. */
test('a browser that is killed in the middle of changes loses nothing that stood for a second', {
  tag: '@alone',
}, async ({ baseURL }) => {
  const { kills, done, oldestLossMs } = await killAgainAndAgain(baseURL ?? '', 5, 11);
  expect(kills).toBe(5);
  expect(done).toBeGreaterThan(3);
  expect(oldestLossMs).toBeLessThanOrEqual(1000);
});
