import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { chromium } from '@playwright/test';
import { build, preview } from 'vite';
import type { Figure } from './figure';
import { quantile } from './timing';

/** What the first visit loads, packed, and how long until the workbench answers, in a browser that has seen nothing. */
export async function startFigures(): Promise<Figure[]> {
  await build({ logLevel: 'error' });
  const bytes = firstUseFiles().reduce((sum, file) => sum + gzipSync(readFileSync(file), { level: 9 }).length, 0);
  const server = await preview({ logLevel: 'error', preview: { host: '127.0.0.1', port: 4187 } });
  const path = process.env.CHROMIUM_PATH ?? (existsSync('/usr/bin/chromium') ? '/usr/bin/chromium' : undefined);
  const browser = await chromium.launch({
    ...(path ? { executablePath: path } : {}),
    args: ['--no-sandbox', '--disable-gpu', '--disable-background-networking'],
  });
  const times: number[] = [];
  for (let round = 0; round < 5; round++) {
    const context = await browser.newContext();
    const page = await context.newPage();
    const began = performance.now();
    await page.goto('http://127.0.0.1:4187/');
    await page.getByRole('button', { name: /demo/i }).waitFor();
    times.push(performance.now() - began);
    await context.close();
  }
  await browser.close();
  await server.close();
  return [
    { name: 'first_use_gzip_kb', value: bytes / 1024, unit: 'kB' },
    { name: 'interactive_cold_ms', value: quantile(times, 0.5), unit: 'ms' },
  ];
}

/** The page, its script and its styles; workers, fonts and pictures come when they are needed. */
function firstUseFiles(): string[] {
  const page = readFileSync('dist/index.html', 'utf8');
  const named = readdirSync('dist/assets').filter((name) => page.includes(name));
  return ['dist/index.html', ...named.map((name) => join('dist/assets', name))];
}
