import type { Page } from '@playwright/test';

/** Unfolds every card of the room, and those that came up in them, as soon as the room is there. */
export async function unfoldAll(page: Page): Promise<void> {
  await page.locator('#app').locator('h1, h2').filter({ visible: true }).first().waitFor();
  const folded = page.locator('details:not([open]) > summary:visible');
  for (let presses = 0; presses < 60 && (await folded.count()) > 0; presses++) await folded.first().click();
}
