import { expect, type Page, test } from '@playwright/test';
import { inches } from '../core/units/inch';
import { drag, fittedCanvas, wholePixel } from './canvas';
import { demoFit, openDemo } from './demo';
import { goTo } from './room';

/** The side corner of the waist in the demo's piece, seven inches across. */
const SIDE_WAIST = { x: inches(7), y: 0 };

test('a drag that is broken off leaves nothing behind, and a whole one is one step', async ({ page }) => {
  await openDemo(page);
  const notebook = page.getByRole('complementary', { name: 'Notebook' });
  await notebook.getByRole('button', { name: 'Panel' }).click();
  await notebook.getByRole('heading', { name: /^Points and edges/ }).click();
  const across = notebook.getByLabel('Corner 2, across');
  const nothingToUndo = page.getByRole('button', { name: 'Nothing to undo' });
  const seen = await fittedCanvas(page, demoFit());
  const from = wholePixel(seen(SIDE_WAIST));
  await expect(across).toHaveValue('7 in');

  for (const [how, breakOff] of [
    ['Escape', () => page.keyboard.press('Escape')],
    ['the window left', () => page.evaluate(() => window.dispatchEvent(new Event('blur')))],
    [
      'the capture lost',
      async () => {
        await page.evaluate(() => {
          const surface = document.querySelector('[role=application]');
          for (let id = 0; id < 100; id++) if (surface?.hasPointerCapture(id)) surface.releasePointerCapture(id);
        });
        // A browser tells of it with the next move of the mouse at the latest.
        await page.mouse.move(from.x + 62, from.y + 26);
      },
    ],
  ] as const) {
    await test.step(how, async () => {
      await page.mouse.move(from.x, from.y);
      await page.mouse.down();
      await page.mouse.move(from.x + 60, from.y + 25, { steps: 4 });
      await expect(across).not.toHaveValue('7 in');
      await breakOff();
      await expect(across).toHaveValue('7 in');
      // The mouse is still down and moves on: nobody follows it.
      await page.mouse.move(from.x + 90, from.y + 40, { steps: 3 });
      await page.mouse.up();
      await expect(across).toHaveValue('7 in');
      await expect(nothingToUndo).toBeDisabled();
    });
  }

  await test.step('a whole drag, with many moves, is taken back at once', async () => {
    await drag(page, from, { x: from.x + 60, y: from.y + 25 });
    await expect(across).not.toHaveValue('7 in');
    await page.getByRole('button', { name: 'Undo: move a point' }).click();
    await expect(across).toHaveValue('7 in');
    await expect(nothingToUndo).toBeDisabled();
  });
});

test('the table shows the piece, its width and everything, and goes back to where it was', async ({ page }) => {
  await openDemo(page);
  await goTo(page, 'Fit');
  const shown = () =>
    page.evaluate(() => [...document.querySelectorAll('canvas')].map((canvas) => canvas.toDataURL()).join());
  const settled = async () => {
    await page.waitForTimeout(250);
    return shown();
  };
  await page.getByRole('button', { name: 'Show everything' }).click();
  const all = await settled();
  const box = await page.getByRole('application').boundingBox();
  if (!box) throw new Error('there is no table');
  await page.mouse.move(box.x + 300, box.y + 200);
  await page.mouse.wheel(0, -400);
  const near = await settled();
  expect(near).not.toBe(all);

  await page.getByRole('button', { name: 'Fill the width' }).click();
  const wide = await settled();
  await page.getByRole('button', { name: 'Show the piece' }).click();
  const piece = await settled();
  expect(new Set([all, near, wide, piece]).size).toBe(4);
  await page.getByRole('button', { name: 'Back to where I was' }).click();
  expect(await settled()).toBe(wide);
  await page.getByRole('button', { name: 'Back to where I was' }).click();
  expect(await settled()).toBe(piece);

  await page.getByRole('application').focus();
  for (const [key, view] of [
    ['8', wide],
    ['0', all],
    ['9', piece],
    ['7', all],
  ] as const) {
    await page.keyboard.press(key);
    expect(await settled()).toBe(view);
  }
});

test('every table is gone over by keys, and tells places and lengths', async ({ page }) => {
  await openDemo(page);
  const said = page.getByRole('status');
  for (const room of ['Reshape', 'Seams', 'Fit', 'Mock-up', 'Versions']) {
    await test.step(room, async () => {
      await goTo(page, room);
      await page.getByRole('application').focus();
      await page.keyboard.press('End');
      await expect(said).toContainText('Panel, 4 corners');
      await page.keyboard.press('Space');
      await expect(said).toContainText('Round it: waist 7 in, side seam 27 13/16 in, hem 13 1/16 in');
      await page.keyboard.press('PageDown');
      await page.keyboard.press('PageDown');
      await expect(said).toContainText('Corner 2, 7 across, 0 down');
      await page.keyboard.press('Space');
      await expect(said).toContainText('Before it waist 7 in, after it side seam 27 13/16 in.');
      await page.keyboard.press('Shift+PageDown');
      await expect(said).toContainText('Edge: side seam 27 13/16 in');
      await expect(page.getByRole('button', { name: 'Nothing to undo' })).toBeDisabled();
    });
  }

  await test.step('Enter presses there: an edge is taken to be paired', async () => {
    await goTo(page, 'Seams');
    await page.getByRole('application').focus();
    await page.keyboard.press('Shift+PageDown');
    await page.keyboard.press('Shift+PageDown');
    await expect(said).toContainText('Edge: side seam');
    await page.keyboard.press('Enter');
    await expect(page.getByLabel('This edge')).toHaveValue(/./);
    await expect(said).toContainText('side seam');
  });
});

test('a piece is mended in its list of points, and marks and pieces are moved by the arrow keys', async ({ page }) => {
  await openDemo(page);
  const notebook = page.getByRole('complementary', { name: 'Notebook' });
  await notebook.getByRole('button', { name: 'Panel' }).click();
  await notebook.getByRole('heading', { name: /^Points and edges/ }).click();
  const down = notebook.getByLabel('Corner 3, down');
  await expect(down).toHaveValue('27 in');
  await down.fill('27 1/2');
  await down.press('Tab');
  await expect(down).toHaveValue('27 1/2 in');
  const curve = notebook.getByLabel('curve point 2 of side seam, across');
  await curve.fill('10 1/8');
  await curve.press('Enter');
  await page.getByRole('button', { name: 'Undo: move a point' }).click();
  await expect(curve).toHaveValue('10 in');
  await page.getByRole('button', { name: 'Undo: move a point' }).click();
  await expect(down).toHaveValue('27 in');

  await notebook.getByRole('button', { name: 'Grain line', exact: true }).click();
  await page.getByRole('application').focus();
  await page.keyboard.press('ArrowRight');
  await expect(page.getByRole('status')).toContainText('Now at 3 1/8 across, 7 down');
  await page.getByRole('button', { name: 'Undo: grain line' }).click();

  await page.getByRole('application').focus();
  await page.keyboard.press('Escape');
  await page.keyboard.press('Shift+ArrowDown');
  await expect(page.getByRole('status')).toContainText('Panel moved 1/8 in down');
  await expect(down).toHaveValue('27 1/8 in');
  await page.getByRole('button', { name: 'Undo: move a piece' }).click();
  await expect(page.getByRole('button', { name: 'Nothing to undo' })).toBeDisabled();
});

test('a pen draws while the palm lies on the screen, whatever it presses with', async ({ page }) => {
  await openDemo(page);
  await page.getByRole('radio', { name: 'Trace a piece' }).check();
  await page.getByLabel('Snap to the squares').uncheck();
  const box = await page.getByRole('application').boundingBox();
  if (!box) throw new Error('there is no table');
  const at = { x: Math.round(box.x + box.width * 0.7), y: Math.round(box.y + box.height * 0.3) };
  await pen(page, 'pointerdown', at);
  for (const type of ['pointerdown', 'pointermove', 'pointermove', 'pointerup']) await palm(page, type, at);
  await pen(page, 'pointermove', { x: at.x + 30, y: at.y + 20 });
  await pen(page, 'pointerup', { x: at.x + 30, y: at.y + 20 });
  await expect(page.getByText('1 point', { exact: true })).toBeVisible();
  // Lifted for a moment: the palm still counts for nothing, and does not move the table either.
  for (const type of ['pointerdown', 'pointermove', 'pointerup']) await palm(page, type, at);
  await expect(page.getByText('1 point', { exact: true })).toBeVisible();
  await expect(page.getByRole('button', { name: 'Pen draws, fingers move the table' })).toBeVisible();
});

interface At {
  readonly x: number;
  readonly y: number;
}

async function pen(page: Page, type: string, { x, y }: At): Promise<void> {
  await point(page, type, { pointerId: 71, pointerType: 'pen', clientX: x, clientY: y, pressure: 0.2, buttons: 1 });
}

let trembling = 0;

async function palm(page: Page, type: string, { x, y }: At): Promise<void> {
  trembling = (trembling + 17) % 50;
  const place = { clientX: x + 40 + trembling, clientY: y + 160 };
  await point(page, type, { pointerId: 72, pointerType: 'touch', ...place, width: 40, height: 44 });
}

/** A pointer as the system would report it: Playwright has neither pens nor palms. */
async function point(page: Page, type: string, how: Readonly<Record<string, string | number>>): Promise<void> {
  await page
    .getByRole('application')
    .evaluate(
      (surface, [type, how]) =>
        surface.dispatchEvent(new PointerEvent(type, { bubbles: true, cancelable: true, isPrimary: true, ...how })),
      [type, how] as const,
    );
}
