import type { Page } from '@playwright/test';

/** Collects everything the page complains of: errors and warnings on its console, and faults nobody caught. */
export function listenForTrouble(page: Page): readonly string[] {
  const heard: string[] = [];
  page.on('console', (message) => {
    if (message.type() === 'error' || message.type() === 'warning') heard.push(`${message.type()}: ${message.text()}`);
  });
  page.on('pageerror', (fault) => heard.push(`uncaught: ${fault.message}`));
  return heard;
}
