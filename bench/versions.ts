import { type BrowserContext, chromium, type Page } from '@playwright/test';
import { build, preview } from 'vite';
import { type Project, writeProject } from '../app/storage/project-file';
import { garmentOfVersion } from '../core/garment/version';
import { chromiumPath } from '../scripts/chromium-path';
import type { Figure } from './figure';
import { longHistory } from './long-history';
import { quantile, timesOf } from './timing';

const COUNT = 200;
const ROUNDS = 9;

/**
 * What a version costs to keep beside a whole copy of the garment, how long the slowest takes to read, and how long a
 * garment with 200 versions and 20 photos takes to open in a browser, beside the same garment without them: the page anew
 * until the garment is on the table, and the list of versions until all of it is there.
 */
export async function versionsFigures(): Promise<Figure[]> {
  const { garment, versions, garments, photos } = longHistory(COUNT);
  const bytes = (value: unknown) => JSON.stringify(value).length;
  const kept = bytes(versions) / COUNT;
  const whole = garments.reduce((sum, one) => sum + bytes(one), 0) / COUNT;
  const reads = timesOf((index) => garmentOfVersion(versions, (index % COUNT) + 1), { times: COUNT, warm: 20 });

  await build({ logLevel: 'error' });
  const server = await preview({ logLevel: 'error', preview: { host: '127.0.0.1', port: 4188 } });
  // Where that port is taken, it is another.
  const address = server.resolvedUrls?.local[0] ?? '';
  const browser = await chromium.launch({
    executablePath: chromiumPath(),
    args: ['--no-sandbox', '--disable-gpu', '--disable-background-networking'],
  });
  const alone = await opening(await browser.newContext(), address, { garment, versions: [], photos: [] });
  const all = await opening(await browser.newContext(), address, { garment, versions, photos });
  await browser.close();
  await server.close();
  return [
    { name: 'version_bytes', value: kept, unit: 'bytes', baseline: whole, ratio: whole / kept },
    { name: 'version_read_ms_worst', value: Math.max(...reads), unit: 'ms' },
    { name: 'history_open_ms', value: all.open, unit: 'ms', baseline: alone.open },
    { name: 'history_list_ms', value: all.list, unit: 'ms', baseline: alone.list },
  ];
}

/** How long the page takes from nothing to the garment on the table, and the room of versions to its last line (ms). */
async function opening(
  context: BrowserContext,
  address: string,
  project: Project,
): Promise<{ readonly open: number; readonly list: number }> {
  const page = await context.newPage();
  await page.goto(address);
  await page.getByLabel('Open a file').setInputFiles({
    name: 'long.inchsquare.zip',
    mimeType: 'application/zip',
    buffer: Buffer.from(writeProject(project)),
  });
  await page.locator('canvas').first().waitFor();
  await page.getByText('Kept on this device').waitFor();
  const opens: number[] = [];
  const lists: number[] = [];
  for (let round = 0; round < ROUNDS; round++) {
    await page.goto(address);
    opens.push(await since(page, 'canvas', 1, 0));
    const asked = await page.evaluate(() => performance.now());
    await page.getByRole('navigation').getByRole('button', { name: 'Versions' }).click();
    // Each version has a line, and the first tracing one.
    lists.push(await since(page, 'aside ul button', project.versions.length + 1, asked));
  }
  await context.close();
  return { open: quantile(opens, 0.5), list: quantile(lists, 0.5) };
}

/** Milliseconds on the page's own clock until so many of something are on it. */
async function since(page: Page, what: string, count: number, from: number): Promise<number> {
  const there = await page.waitForFunction(
    ([selector, wanted]) => (document.querySelectorAll(selector).length >= wanted ? performance.now() : 0),
    [what, count] as const,
  );
  return Number(await there.jsonValue()) - from;
}
