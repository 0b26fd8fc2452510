import type { Page } from '@playwright/test';

/** Unfolds every card that is in sight of the room, and those that came up in them. */
export async function unfoldAll(page: Page): Promise<void> {
  const folded = page.locator('details:not([open]) > summary:visible');
  for (let presses = 0; presses < 60 && (await folded.count()) > 0; presses++) await folded.first().click();
}
