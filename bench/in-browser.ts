import { type Browser, chromium } from '@playwright/test';
import { build, preview } from 'vite';
import { chromiumPath } from '../scripts/chromium-path';

/** Builds the app, serves it on this machine and opens a browser on it; all of it is shut again afterwards. */
export async function inBrowser<Result>(measure: (browser: Browser, url: string) => Promise<Result>): Promise<Result> {
  // The server this runs in is one for developing; what is measured is what people get.
  process.env.NODE_ENV = 'production';
  await build({ logLevel: 'error' });
  const server = await preview({ logLevel: 'error', preview: { host: '127.0.0.1', port: 4191 } });
  const browser = await chromium.launch({
    executablePath: chromiumPath(),
    args: ['--no-sandbox', '--disable-gpu', '--disable-background-networking'],
  });
  try {
    const url = server.resolvedUrls?.local[0];
    if (!url) throw new Error('the built app could not be served');
    return await measure(browser, url);
  } finally {
    await browser.close();
    await server.close();
  }
}
