import { chromium, type Page } from '@playwright/test';
import { preview } from 'vite';
import { seededRandom } from '../../core/cloth/seeded-random';
import { chromiumPath } from '../chromium-path';

/** Edits between two readings of the heap. */
const EVERY = 250;
/**
 * A heap may grow by this much in the second half, in MB, and still be called flat. In the first it grows by some 6 MB: 500
 * steps can be taken back, and the garment after each has a list of its own of the last 1,000 things done to its pieces.
 */
const FLAT_MB = 1;

/** What the page's heap held after so many edits, with everything collected that nobody holds (MB). */
export interface HeapReading {
  readonly edits: number;
  readonly heapMb: number;
  readonly nodes: number;
}

/** Does so many edits, with some taken back and done again, and writes what the heap held; whether it stayed flat. */
export async function memoryTrial(edits: number, seed: number): Promise<boolean> {
  const server = await preview({
    logLevel: 'error',
    preview: { host: '127.0.0.1', port: Number(process.env.PORT ?? 4188) },
  });
  const browser = await chromium.launch({ executablePath: chromiumPath(), args: ['--no-sandbox', '--disable-gpu'] });
  try {
    const page = await browser.newPage({ viewport: { width: 1440, height: 900 } });
    page.setDefaultTimeout(30_000);
    await page.goto(server.resolvedUrls?.local[0] ?? '');
    await page.getByRole('button', { name: /Try the demo garment/ }).click();
    const readings: HeapReading[] = [];
    for (let done = 0; done < edits; done += EVERY) {
      await edit(page, Math.min(EVERY, edits - done), seededRandom(seed + done));
      const reading = { edits: Math.min(done + EVERY, edits), ...(await heap(page)) };
      readings.push(reading);
      console.log(JSON.stringify(reading));
    }
    const [halfway = 0, ...later] = readings.slice(Math.floor(readings.length / 2) - 1).map(({ heapMb }) => heapMb);
    const grown = Math.max(...later) - halfway;
    console.log(JSON.stringify({ seed, edits, grownMb: Number(grown.toFixed(1)) }));
    return grown <= FLAT_MB;
  } finally {
    await browser.close();
    await server.close();
  }
}

/** Measures, corners and undo, as a person gives them; a third is taken back and half of that done again. */
async function edit(page: Page, times: number, random: () => number): Promise<void> {
  const notebook = page.getByRole('complementary', { name: 'Notebook' });
  let field = notebook.getByLabel('Corner 2, across');
  const isWearer = random() < 0.25;
  await page
    .getByRole('navigation')
    .getByRole('button', { name: isWearer ? 'Wearer' : 'Draft' })
    .click();
  if (isWearer) field = page.getByLabel('Waist', { exact: true });
  else if (!(await field.isVisible())) {
    await notebook
      .getByRole('button', { name: /^Panel/ })
      .first()
      .click();
    await notebook.getByRole('heading', { name: /^Points and edges/ }).click();
  }
  for (let i = 0; i < times; i++) {
    const kind = random();
    if (kind < 0.66) {
      const whole = isWearer ? 24 : 6;
      await field.fill(`${whole + (i % 3)} ${1 + 2 * Math.floor(random() * 16)}/32`);
      await field.press('Enter');
    } else await press(page, kind < 0.84 ? /^Undo: / : /^Do again: /);
  }
}

async function press(page: Page, name: RegExp): Promise<void> {
  const button = page.getByRole('button', { name });
  if ((await button.isVisible()) && (await button.isEnabled())) await button.click();
}

async function heap(page: Page): Promise<Omit<HeapReading, 'edits'>> {
  // What was written lately goes to the store a moment later.
  await page.waitForTimeout(1500);
  const client = await page.context().newCDPSession(page);
  await client.send('HeapProfiler.enable');
  for (let i = 0; i < 3; i++) await client.send('HeapProfiler.collectGarbage');
  const { usedSize } = await client.send('Runtime.getHeapUsage');
  const { nodes } = await client.send('Memory.getDOMCounters');
  await client.detach();
  return { heapMb: Number((usedSize / 1e6).toFixed(2)), nodes };
}
