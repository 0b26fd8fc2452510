import { expect, type Page, test } from '@playwright/test';
import { openDemo } from './demo';
import { savedReport } from './fault-report';
import { waist } from './waist';

const strip = (page: Page) => page.getByText(/Something went wrong just now/).filter({ visible: true });

test('a fault behind a press is said, with a report that tells nothing of hers, and the work goes on', async ({
  page,
}) => {
  await openDemo(page);
  for (const how of ['thrown', 'refused'] as const) {
    await test.step(how, async () => {
      await page.evaluate((way) => {
        const fault = new RangeError('the waist of “Anna” is 28.5');
        setTimeout(() => {
          if (way === 'refused') void Promise.reject(fault);
          else throw fault;
        });
      }, how);
      await expect(strip(page).first()).toBeVisible();
      const text = await savedReport(page);
      expect(text).toContain('a fault in Draft');
      expect(text).toContain('RangeError: the waist of … is #');
      await page.getByRole('button', { name: 'Put this away' }).click();
      await expect(strip(page)).toHaveCount(0);
    });
  }
  await page.getByRole('navigation').getByRole('button', { name: 'Wearer' }).click();
  await expect(waist(page)).toHaveValue('28 in');
});

test('what was called off, and what the browser itself is late with, is no fault', async ({ page }) => {
  await openDemo(page);
  await page.evaluate(() => {
    void Promise.reject(new DOMException('called off', 'AbortError'));
    window.dispatchEvent(new ErrorEvent('error', { message: 'ResizeObserver loop completed' }));
  });
  await page.waitForTimeout(300);
  await expect(strip(page)).toHaveCount(0);
});

test('a garment that can no longer be read is named on the shelf when the page opens with it', async ({ page }) => {
  await openDemo(page);
  await expect(page.getByText('Kept on this device')).toBeVisible();
  await page.evaluate(spoilAll);
  await page.reload();
  await expect(
    page.getByText(/On the table last was Linden petticoat\. What is stored of that garment is damaged/),
  ).toBeVisible();
  await expect(page.getByRole('heading', { name: 'On the shelf' })).toBeVisible();
});

/** In the page: every snapshot there is holds no garment any more. */
async function spoilAll(): Promise<void> {
  await new Promise<void>((done) => {
    const opening = indexedDB.open('inchsquare');
    opening.onsuccess = () => {
      const change = opening.result.transaction(['snapshots', 'journal'], 'readwrite');
      const snapshots = change.objectStore('snapshots');
      const rows = snapshots.getAll();
      rows.onsuccess = () => {
        for (const row of rows.result) snapshots.put({ ...row, garment: { spoilt: 1 } });
      };
      change.objectStore('journal').clear();
      change.oncomplete = () => {
        opening.result.close();
        done();
      };
    };
  });
}
