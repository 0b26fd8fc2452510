// Takes the README's picture of each room from the demo garment: node scripts/run.mjs scripts/take-pictures.ts
// Needs a build in dist (npm run build) and a Chromium.

import { mkdirSync } from 'node:fs';
import { chromium } from '@playwright/test';
import { preview } from 'vite';
import { shellWords } from '../app/words/en/shell';
import { chromiumPath } from './chromium-path';

const FOLDER = 'e2e/pictures';

export async function main(): Promise<number> {
  mkdirSync(FOLDER, { recursive: true });
  const server = await preview({ logLevel: 'error', preview: { host: '127.0.0.1', port: 4189 } });
  const browser = await chromium.launch({
    executablePath: chromiumPath(),
    args: ['--no-sandbox', '--disable-gpu', '--disable-background-networking'],
  });
  const page = await browser.newPage({ viewport: { width: 1280, height: 800 } });
  await page.goto(`${server.resolvedUrls?.local[0]}#demo`);
  await page.getByRole('navigation').waitFor();
  const { shelf: _, ...rooms } = shellWords.rooms;
  for (const [file, name] of Object.entries(rooms)) {
    await page.getByRole('navigation').getByRole('button', { name }).click();
    if (file === 'draft')
      await page
        .getByRole('button', { name: /^Panel/ })
        .first()
        .click();
    if (file === 'compare')
      await page.getByLabel('With a piece of').selectOption({ label: 'a draft from the wearer’s measures' });
    if (file === 'cloth') {
      await page.getByLabel('Width, selvedges counted').fill('45 in');
      await page.getByLabel('Width, selvedges counted').press('Enter');
      await page.getByRole('radio', { name: 'opened out' }).check();
      await page.getByRole('radio', { name: 'bias', exact: true }).check();
      await page.getByRole('button', { name: 'Facing strip' }).click();
      await page.getByRole('button', { name: 'Lay the pieces' }).click();
      await page.getByRole('button', { name: 'Lay again' }).waitFor();
      await page.getByRole('heading', { name: 'What it comes to' }).scrollIntoViewIfNeeded();
    }
    // The picture is laid flat and the levels are worked out a moment after the room opens.
    await page.waitForTimeout(2000);
    await page.screenshot({ path: `${FOLDER}/${file}.png` });
  }
  await browser.close();
  await server.close();
  return 0;
}
