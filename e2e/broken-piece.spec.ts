import { expect, test } from '@playwright/test';
import { openDemo } from './demo';
import { goTo } from './room';
import { setWaist, waist } from './waist';

test('a piece that cannot be painted keeps no other from being shown, and the work goes on', async ({ page }) => {
  // A fault made by hand: as soon as it is asked for, the name of one piece cannot be written on the canvas.
  await page.addInitScript(() => {
    const written: string[] = [];
    Object.assign(window, { written });
    const fillText = CanvasRenderingContext2D.prototype.fillText;
    CanvasRenderingContext2D.prototype.fillText = function (text, ...place) {
      if ('faulty' in window && /^Panel$/.test(text)) {
        written.push('faulty');
        throw new RangeError('a fault made by hand');
      }
      written.push(text);
      fillText.call(this, text, ...place);
    };
  });
  await openDemo(page);
  await page
    .getByRole('button', { name: /^Panel/ })
    .first()
    .click();
  await page.getByRole('button', { name: 'Copy', exact: true }).click();
  await goTo(page, 'Wearer');
  await page.evaluate(() => {
    Object.assign(window, { faulty: true });
    (window as unknown as { written: string[] }).written.length = 0;
  });
  await goTo(page, 'Fit');
  await goTo(page, 'Draft');
  await expect
    .poll(() => page.evaluate(() => (window as unknown as { written: string[] }).written.join('|')))
    .toMatch(/faulty.*Panel, copy/);
  await expect(page.getByText(/could not be shown/)).toBeHidden();
  await goTo(page, 'Wearer');
  await setWaist(page, '29 1/8');
  await expect(waist(page)).toHaveValue('29 1/8 in');
  await expect(page.getByText('Kept on this device')).toBeVisible();
});
