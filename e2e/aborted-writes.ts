import type { Page } from '@playwright/test';

/** Once the page's window has something called `aborts`, the browser aborts every entry of the journal. */
export async function canAbortWrites(page: Page): Promise<void> {
  await page.addInitScript(() => {
    const add = IDBObjectStore.prototype.add;
    IDBObjectStore.prototype.add = function (...row) {
      const request = add.apply(this, row);
      if (this.name === 'journal' && 'aborts' in window) this.transaction.abort();
      return request;
    };
  });
}
