import { expect, type Locator, type Page, test } from '@playwright/test';
import { lindenCornersInPhoto, lindenPhotoSize } from '../app/demo/linden-panel';
import { drag, fittedCanvas, wholePixel } from './canvas';

const SIZES = [
  { name: 'laptop', width: 1440, height: 900 },
  { name: 'phone', width: 390, height: 844 },
] as const;

/** From a picture to pages by whoever has never seen it: nothing is pressed but what the notebook says comes next. */
for (const { name, ...viewport } of SIZES) {
  test.describe(`on a ${name}`, () => {
    test.use({ viewport });
    test('what comes next leads from the picture to the pages', async ({ page }) => {
      await page.goto('/');
      const notebook = page.getByRole('complementary', { name: 'Notebook' });
      const strip = page.getByRole('region', { name: 'What comes next' });
      const count = { presses: 0 };
      const press = async (target: Locator) => {
        count.presses++;
        await target.click();
      };
      const write = async (text: string) => {
        count.presses++;
        await page.keyboard.type(text);
        await page.keyboard.press('Enter');
      };
      /** Presses the strip once it says this; where it names a tool, that is in hand now. */
      const begin = async (words: string) => {
        await expect(strip.getByRole('button', { name: /^Next:/ })).toContainText(words, { timeout: 20_000 });
        await press(strip.getByRole('button', { name: /^Next:/ }));
      };
      /** The same, and has what it led to in sight and in hand. */
      const follow = async (words: string) => {
        await begin(words);
        const lit = page.locator('[data-lit]');
        await expect(lit).toBeInViewport();
        // The light goes out after a moment.
        return page.locator(`[data-step="${await lit.getAttribute('data-step')}"]`).first();
      };
      const later = () => press(strip.getByRole('button', { name: /^Later/ }));

      await press(page.getByRole('button', { name: /^Start from a picture/ }));
      await page.getByLabel('Choose a picture', { exact: true }).setInputFiles('public/demo/linden-plate.jpg');
      await expect(page.getByRole('heading', { name: /Square up/, includeHidden: true })).toBeAttached();

      await test.step('two known lengths', async () => {
        const [waistAtFold, waistAtSide, , hemAtFold] = lindenCornersInPhoto;
        await begin('draw along a line whose length you know');
        await draw(page, waistAtFold, hemAtFold);
        await write('28');
        await begin('draw a second known length');
        await draw(page, waistAtFold, waistAtSide);
        await press(page.getByRole('radio', { name: 'a share of a measure' }).first());
        await press(notebook.getByRole('button', { name: 'Take it' }));
      });

      await test.step('the measures, one Enter after another', async () => {
        await follow('write down the measures');
        for (const measure of ['28', '34 1/2', '4', '38', '8']) await write(measure);
        await expect(page.getByLabel('Hip', { exact: true })).toHaveValue('38 in');
        await expect(page.getByLabel('Waist to hip', { exact: true })).toHaveValue('8 in');
      });

      await test.step('the panel, traced by its numbers', async () => {
        await begin('trace the lines');
        if (name === 'phone') {
          await expect(page.getByText('Press the first corner.')).toBeVisible();
          await press(page.getByRole('button', { name: 'Open the notebook' }));
        }
        for (const [across, down, kind] of PANEL) {
          await page.getByRole('radio', { name: kind }).check();
          await page.getByLabel('Across', { exact: true }).fill(across);
          await page.getByLabel('Down', { exact: true }).fill(down);
          await press(page.getByRole('button', { name: 'Put it down' }));
        }
        await press(page.getByRole('button', { name: 'Done' }));
        await notebook.getByLabel('Cut', { exact: true }).selectOption({ label: 'on the fold' });
        await notebook.getByLabel('Pieces of cloth').fill('2');
        count.presses += 2;
      });

      await test.step('what the piece is asked', async () => {
        await press((await follow('sewn or cut')).getByRole('radio', { name: 'the stitch line' }));
        await press((await follow('lies on the fold')).getByRole('button').first());
        for (const [edge, role, allowance] of [
          ['edge 1', 'the waist', '1/2'],
          ['edge 2', 'a seam', '3/4'],
          ['edge 3', 'a hem', '2'],
        ] as const) {
          const asks = await follow('what this edge is');
          await expect(notebook.getByRole('heading', { name: `Edge: ${edge}` })).toBeVisible();
          await asks.getByLabel('It is').selectOption({ label: role });
          await asks.getByLabel('Allowance', { exact: true }).focus();
          count.presses += 2;
          await write(allowance);
          // What comes next is looked for once she has stopped for a moment.
          await page.waitForTimeout(400);
        }
        await press((await follow('lay the grain line')).getByRole('button', { name: 'Draw it' }));
        const seen = await page.locator('main canvas').first().boundingBox();
        if (!seen) throw new Error('there is no canvas');
        const middle = { x: seen.x + seen.width * 0.42, y: seen.y + seen.height * 0.4 };
        await drag(page, middle, { x: middle.x, y: middle.y + 100 });
        count.presses++;
      });

      await test.step('seams, fit, cloth', async () => {
        await press((await follow('pair the edges')).getByRole('button', { name: /^Pair/ }).first());
        await press(await follow('which pieces go round'));
        await press(await follow('take the curved waist'));
        await expect(page.getByText(/already the one the body needs/)).toBeVisible();
        await press(await follow('leave the top of a seam open'));
        await follow('cut a mock-up');
        await later();
        await press((await follow('what cloth')).getByRole('button', { name: /^45/ }));
        await press(await follow('lay the pieces'));
      });

      await test.step('the pages', async () => {
        const [pages] = await Promise.all([
          page.waitForEvent('download', { timeout: 60_000 }),
          press(await follow('make the pages')),
        ]);
        expect(pages.suggestedFilename()).toMatch(/pages.*\.pdf$/);
        await follow('measure the printed square');
      });
      test.info().annotations.push({ type: 'presses', description: String(count.presses) });
    });
  });
}

const PANEL = [
  ['6', '6', /Corner/],
  ['13', '6', /Corner/],
  ['14 3/4', '10', /Along a curve/],
  ['16', '14', /Along a curve/],
  ['19', '33', /Corner/],
  ['12 3/4', '33 3/4', /Along a curve/],
  ['6', '34', /Corner/],
] as const;

/** A line on the picture, with the mouse. */
async function draw(page: Page, from: { x: number; y: number }, to: { x: number; y: number }): Promise<void> {
  const { widthPx, heightPx } = lindenPhotoSize;
  const seen = await fittedCanvas(page, { minX: 0, minY: 0, maxX: widthPx, maxY: heightPx });
  await drag(page, wholePixel(seen(from)), wholePixel(seen(to)));
}

test('what comes next can be put off, and shut off for good', async ({ page }) => {
  await page.goto('/');
  await page.getByRole('button', { name: /Try the demo garment/ }).click();
  const strip = page.getByRole('region', { name: 'What comes next' });
  await expect(strip).toContainText('pair the edges');
  await strip.getByRole('button', { name: /^Later/ }).click();
  await expect(strip).toContainText('take the curved waist');
  await page.getByRole('button', { name: 'How to' }).click();
  await page.getByRole('button', { name: 'All pages' }).click();
  await page.getByLabel('Say what comes next').uncheck();
  await expect(strip).toBeHidden();
  await page.reload();
  await expect(page.getByRole('navigation')).toBeVisible();
  await expect(strip).toBeHidden();
});
