import { existsSync } from 'node:fs';
import { chromium } from '@playwright/test';
import { build, preview } from 'vite';
import { writeProject } from '../app/storage/project-file';
import { garmentOfVersion } from '../core/garment/version';
import type { Figure } from './figure';
import { longHistory } from './long-history';
import { quantile, timesOf } from './timing';

const COUNT = 200;

/**
 * What a version costs to keep beside a whole copy of the garment, how long the slowest takes to read, and how long a
 * garment with 200 versions and 20 photos takes to open in a browser: the page anew until the garment can be worked on,
 * and the list of versions until all of it is there.
 */
export async function versionsFigures(): Promise<Figure[]> {
  const { garment, versions, garments, photos } = longHistory(COUNT);
  const bytes = (value: unknown) => JSON.stringify(value).length;
  const kept = bytes(versions) / COUNT;
  const whole = garments.reduce((sum, one) => sum + bytes(one), 0) / COUNT;
  const reads = timesOf((index) => garmentOfVersion(versions, (index % COUNT) + 1), { times: COUNT, warm: 20 });

  await build({ logLevel: 'error' });
  const server = await preview({ logLevel: 'error', preview: { host: '127.0.0.1', port: 4188 } });
  const path = process.env.CHROMIUM_PATH ?? (existsSync('/usr/bin/chromium') ? '/usr/bin/chromium' : undefined);
  const browser = await chromium.launch({
    ...(path ? { executablePath: path } : {}),
    args: ['--no-sandbox', '--disable-gpu', '--disable-background-networking'],
  });
  const page = await browser.newPage();
  await page.goto('http://127.0.0.1:4188/');
  await page.getByLabel('Open a file').setInputFiles({
    name: 'long.inchsquare.zip',
    mimeType: 'application/zip',
    buffer: Buffer.from(writeProject({ garment, versions, photos })),
  });
  await page.getByRole('radio', { name: 'Trace a piece' }).waitFor();
  const opens: number[] = [];
  const lists: number[] = [];
  for (let round = 0; round < 7; round++) {
    const began = performance.now();
    await page.goto('http://127.0.0.1:4188/');
    await page.getByRole('radio', { name: 'Trace a piece' }).waitFor();
    opens.push(performance.now() - began);
    const asked = performance.now();
    await page.getByRole('navigation').getByRole('button', { name: 'Versions' }).click();
    await page.getByRole('button', { name: /Version 1, fitting 1\b/ }).waitFor();
    lists.push(performance.now() - asked);
  }
  await browser.close();
  await server.close();
  return [
    { name: 'version_bytes', value: kept, unit: 'bytes', baseline: whole, ratio: whole / kept },
    { name: 'version_read_ms_worst', value: Math.max(...reads), unit: 'ms' },
    { name: 'history_open_ms', value: quantile(opens, 0.5), unit: 'ms' },
    { name: 'history_list_ms', value: quantile(lists, 0.5), unit: 'ms' },
  ];
}
