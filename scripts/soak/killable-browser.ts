import { type ChildProcess, spawn } from 'node:child_process';
import { type Browser, chromium, type Page } from '@playwright/test';
import { chromiumPath } from '../chromium-path';

export interface KillableBrowser {
  readonly page: Page;
  /** Ends the browser and every process of it at once, as a power cut or an overfull memory would. */
  kill(): Promise<void>;
}

/** A Chromium that keeps its profile in `profile`, in a process group of its own. */
export async function openKillable(profile: string): Promise<KillableBrowser> {
  const child = spawn(
    chromiumPath(),
    [
      '--headless=new',
      '--no-sandbox',
      '--disable-gpu',
      '--no-first-run',
      '--disable-background-networking',
      '--disable-component-update',
      '--disable-sync',
      '--disable-dev-shm-usage',
      '--window-size=1440,900',
      '--remote-debugging-port=0',
      `--user-data-dir=${profile}`,
      'about:blank',
    ],
    { detached: true, stdio: ['ignore', 'ignore', 'pipe'] },
  );
  const browser = await chromium.connectOverCDP(await addressOf(child));
  return { page: pageOf(browser), kill: () => kill(child, browser) };
}

function addressOf(child: ChildProcess): Promise<string> {
  return new Promise((found, failed) => {
    let heard = '';
    child.stderr?.on('data', (part) => {
      heard += part;
      const address = /DevTools listening on (ws:\S+)/.exec(heard)?.[1];
      if (address) found(address);
    });
    child.once('exit', (code) => failed(new Error(`the browser ended with ${code}: ${heard.slice(-500)}`)));
  });
}

function pageOf(browser: Browser): Page {
  const page = browser.contexts()[0]?.pages()[0];
  if (!page) throw new Error('the browser opened no page');
  page.setDefaultTimeout(30_000);
  return page;
}

async function kill(child: ChildProcess, browser: Browser): Promise<void> {
  const ended = new Promise((done) => child.once('exit', done));
  process.kill(-(child.pid as number), 'SIGKILL');
  await ended;
  await browser.close().catch(() => undefined);
}
