import { existsSync } from 'node:fs';
import { chromium } from '@playwright/test';

/** The Chromium named by CHROMIUM_PATH, the system's, or else Playwright's own. */
export function chromiumPath(): string {
  const debian = '/usr/bin/chromium';
  return process.env.CHROMIUM_PATH || (existsSync(debian) ? debian : chromium.executablePath());
}
