import { readFileSync } from 'node:fs';
import { gzipSync } from 'node:zlib';
import type { Browser, BrowserContext, Page } from '@playwright/test';
import type { Figure } from './figure';
import { inBrowser } from './in-browser';
import { quantile } from './timing';

const ROUNDS = 5;

/**
 * What a first visit loads, packed, until the shelf can be used and until the first piece can be traced; and how long
 * until the workbench answers: never seen, seen before, and without a network.
 */
export async function startFigures(): Promise<Figure[]> {
  return inBrowser(async (browser, url) => {
    const cold: number[] = [];
    const warm: number[] = [];
    const offline: number[] = [];
    let bytes = { shelf: 0, trace: 0 };
    for (let round = 0; round < ROUNDS; round++) {
      const context = await browser.newContext();
      const page = await context.newPage();
      const loaded = loadedFiles(page, url);
      cold.push(await untilAnswers(page, url));
      const shelf = packed(loaded);
      await page.getByRole('button', { name: /^Try the demo garment/ }).click();
      await page.getByRole('radio', { name: 'Trace a piece' }).waitFor();
      bytes = { shelf, trace: packed(loaded) };
      await untilKept(page);
      warm.push(await again(context, url));
      offline.push(await again(context, url, 'offline'));
      await context.close();
    }
    return [
      { name: 'first_use_gzip_kb', value: bytes.shelf / 1024, unit: 'kB' },
      { name: 'first_trace_gzip_kb', value: bytes.trace / 1024, unit: 'kB' },
      { name: 'interactive_cold_ms', value: quantile(cold, 0.5), unit: 'ms' },
      { name: 'interactive_warm_ms', value: quantile(warm, 0.5), unit: 'ms' },
      { name: 'interactive_offline_ms', value: quantile(offline, 0.5), unit: 'ms' },
      { name: 'interactive_empty_ms', value: await emptyPage(browser, url), unit: 'ms' },
    ];
  });
}

/** The files of ours a page asks for itself; what the service worker lays by for later is not among them. */
function loadedFiles(page: Page, url: string): ReadonlySet<string> {
  const files = new Set<string>();
  page.on('response', (response) => {
    if (response.url().startsWith(url) && !response.request().serviceWorker()) {
      const path = new URL(response.url()).pathname.slice(1) || 'index.html';
      if (!path.endsWith('sw.js')) files.add(path);
    }
  });
  return files;
}

function packed(files: ReadonlySet<string>): number {
  return [...files].reduce((sum, file) => sum + gzipSync(readFileSync(`dist/${file}`), { level: 9 }).length, 0);
}

async function untilAnswers(page: Page, url: string): Promise<number> {
  const began = performance.now();
  await page.goto(url);
  await page
    .getByRole('button', { name: /demo|Draft/i })
    .first()
    .click({ trial: true });
  return performance.now() - began;
}

async function untilKept(page: Page): Promise<void> {
  await page.evaluate(async () => {
    const { active } = await navigator.serviceWorker.ready;
    if (active && active.state !== 'activated')
      await new Promise((done) => active.addEventListener('statechange', done, { once: true }));
  });
}

async function again(context: BrowserContext, url: string, network: 'online' | 'offline' = 'online'): Promise<number> {
  await context.setOffline(network === 'offline');
  const page = await context.newPage();
  const took = await untilAnswers(page, url);
  await page.close();
  return took;
}

/** The browser's own share of it: a page of one button from the same server. */
async function emptyPage(browser: Browser, url: string): Promise<number> {
  const times: number[] = [];
  for (let round = 0; round < ROUNDS; round++) {
    const context = await browser.newContext();
    const page = await context.newPage();
    await page.route(url, (route) => route.fulfill({ contentType: 'text/html', body: '<button>demo</button>' }));
    times.push(await untilAnswers(page, url));
    await context.close();
  }
  return quantile(times, 0.5);
}
