import { expect, test } from '@playwright/test';
import { inches } from '../core/units/inch';
import { byKeys } from './by-hand';
import { byNumbers } from './by-numbers';
import { wholeJob } from './whole-job';

test.describe.configure({ timeout: 240_000 });

test('the whole job by keys alone, from the picture to the pages and the file', async ({ page }) => {
  const hand = byKeys(page);
  const off = await wholeJob(page, hand, byNumbers(page, hand));
  expect(off).toBeLessThan(inches(1 / 16));
});
