import { expect, test } from '@playwright/test';
import { lindenFrameInPhoto, lindenPhotoSize } from '../app/demo/linden-panel';
import type { Point } from '../core/geometry/point';
import { fittedCanvas, wholePixel } from './canvas';
import { openDemo } from './demo';
import { fingersOn } from './fingers';
import { goTo } from './room';

const WHOLE_PHOTO = { minX: 0, minY: 0, maxX: lindenPhotoSize.widthPx, maxY: lindenPhotoSize.heightPx };

test.skip(({ hasTouch }) => !hasTouch, 'for screens that are touched');

test('corners are dragged by a finger, and a second finger takes the drag back', async ({ page }) => {
  await openDemo(page);
  await goTo(page, 'Diagram');
  await expect(page.getByRole('radio', { name: 'As photographed' })).toBeChecked();
  await page.getByText('The corners as numbers').tap();
  const topLeft = async () => ({
    x: Number(await page.getByLabel('Top left, pixels across').inputValue()),
    y: Number(await page.getByLabel('Top left, pixels down').inputValue()),
  });
  const touch = await fingersOn(page);
  const seen = await fittedCanvas(page, WHOLE_PHOTO);
  const scale = seen({ x: 1, y: 0 }).x - seen({ x: 0, y: 0 }).x;
  const [corner] = lindenFrameInPhoto;
  const before = await topLeft();

  await test.step('a tap on a corner moves nothing', async () => {
    const at = seen(corner);
    await touch.down([{ x: at.x + 9, y: at.y - 7 }]);
    await touch.up();
    expect(await topLeft()).toEqual(before);
    await expect(page.getByRole('button', { name: 'Nothing to undo' })).toBeDisabled();
  });

  await test.step('a second finger in the middle of a drag takes it back', async () => {
    const from = wholePixel(seen(corner));
    await touch.down([from]);
    await touch.glide([from], [{ x: from.x + 60, y: from.y + 45 }]);
    const under = { x: from.x + 60, y: from.y + 45 };
    await touch.down([under, { x: under.x + 150, y: under.y + 20 }]);
    await touch.glide(
      [under, { x: under.x + 150, y: under.y + 20 }],
      [
        { x: under.x + 10, y: under.y + 5 },
        { x: under.x + 190, y: under.y + 60 },
      ],
    );
    await touch.up();
    expect(await topLeft()).toEqual(before);
    await expect(page.getByRole('button', { name: 'Nothing to undo' })).toBeDisabled();
  });

  await test.step('one finger drags the corner as far as it goes', async () => {
    const again = await fittedCanvas(page, WHOLE_PHOTO);
    // Fingers are broad: taken a little beside the corner, it keeps its distance and does not jump.
    const grip = { x: again(corner).x + 8, y: again(corner).y - 6 };
    await touch.down([grip]);
    await touch.glide([grip], [{ x: grip.x + 52, y: grip.y + 33 }]);
    await touch.up();
    const { x, y } = await topLeft();
    expect(Math.abs(x - before.x - 52 / scale)).toBeLessThan(1);
    expect(Math.abs(y - before.y - 33 / scale)).toBeLessThan(1);
    const undo = page.getByRole('button', { name: 'Undo: move top left corner' });
    // A browser swallows a tap that comes while it still takes the last touch for a fling.
    await expect(async () => {
      if (await undo.isVisible()) await undo.tap();
      await expect(page.getByRole('button', { name: 'Nothing to undo' })).toBeDisabled({ timeout: 500 });
    }).toPass({ timeout: 8000 });
    expect(await topLeft()).toEqual(before);
  });
});

test('a pinch keeps the place between the fingers, and a tap puts down one point', async ({ page }) => {
  await openDemo(page);
  await page.getByRole('radio', { name: 'Trace a piece' }).check();
  await page.getByLabel('Snap to the squares').uncheck();
  const notebook = page.getByRole('complementary', { name: 'Notebook' });
  const points = notebook.getByRole('listitem').filter({ hasText: 'Corner' });
  const touch = await fingersOn(page);
  const canvas = await page.locator('main canvas').first().boundingBox();
  if (!canvas) throw new Error('there is no canvas to touch');
  const middle = wholePixel({ x: canvas.x + canvas.width * 0.62, y: canvas.y + canvas.height * 0.45 });

  await test.step('a tap puts down one point', async () => {
    await touch.down([middle]);
    await touch.up();
    await expect(notebook.getByText('1 point', { exact: true })).toBeVisible();
    await expect(points).toHaveCount(1);
  });
  const first = await placeOf(points.nth(0).textContent());

  await test.step('a pinch puts down nothing', async () => {
    const apart = (half: number, by: Point = { x: 0, y: 0 }) => [
      { x: middle.x - half + by.x, y: middle.y - half * 0.5 + by.y },
      { x: middle.x + half + by.x, y: middle.y + half * 0.5 + by.y },
    ];
    await touch.down(apart(40).slice(0, 1));
    await touch.down(apart(40));
    await touch.glide(apart(40), apart(120, { x: 30, y: -20 }));
    await touch.glide(apart(120, { x: 30, y: -20 }), apart(120));
    await touch.up();
    await expect(points).toHaveCount(1);
  });

  await test.step('what was between the fingers is there still, three times as large', async () => {
    // Traced points draw others near them, so the second is put down a stretch away.
    const away = { x: middle.x + 90, y: middle.y + 60 };
    await touch.down([away]);
    await touch.up();
    await expect(points).toHaveCount(2);
    const second = await placeOf(points.nth(1).textContent());
    await page.getByRole('button', { name: 'Take back a point' }).tap();
    await page.getByRole('button', { name: 'Show everything' }).tap();
    await touch.down([away]);
    await touch.up();
    await expect(points).toHaveCount(2);
    const asBefore = await placeOf(points.nth(1).textContent());
    // The notebook writes sixteenths of an inch; a pixel is about a twentieth here.
    expect(asBefore.x - first.x).toBeGreaterThan(3);
    expect(Math.abs((asBefore.x - first.x) / 3 - (second.x - first.x))).toBeLessThan(0.1);
    expect(Math.abs((asBefore.y - first.y) / 3 - (second.y - first.y))).toBeLessThan(0.1);
  });

  await test.step('undo means its points until it is given up, and then there is nothing', async () => {
    await expect(page.getByRole('button', { name: 'Undo: add a point' })).toBeEnabled();
    await page.getByRole('button', { name: 'Cancel' }).tap();
    await expect(page.getByRole('button', { name: 'Nothing to undo' })).toBeDisabled();
  });
});

test('a finger that rests is shown what it hides, and presses where it is lifted', async ({ page }) => {
  await openDemo(page);
  const notebook = page.getByRole('complementary', { name: 'Notebook' });
  await expect(notebook.getByRole('heading', { name: 'Pieces' })).toBeVisible();
  const glass = page.locator('[role=application] > canvas');
  const touch = await fingersOn(page);
  const seen = await fittedCanvas(page, { minX: -101.6, minY: -101.6, maxX: 508, maxY: 812.8 });
  const beside = wholePixel(seen({ x: -60, y: 300 }));
  // The middle of the waist: a straight edge seven inches long on the zero line.
  const waist = wholePixel(seen({ x: 63, y: 60 }));

  await touch.down([beside]);
  await expect(glass).toBeVisible();
  const high = (await glass.boundingBox()) ?? { y: 0, height: 0 };
  expect(high.y + high.height).toBeLessThan(beside.y);
  await touch.glide([beside], [waist]);
  await expect(notebook.getByRole('heading', { name: 'Panel' })).toBeHidden();
  await touch.up();
  await expect(glass).toBeHidden();
  await expect(notebook.getByRole('heading', { name: 'Panel' })).toBeVisible();
  await expect(page.getByRole('button', { name: 'Nothing to undo' })).toBeDisabled();

  await test.step('every target on the table is large enough for a finger', async () => {
    for (const button of await page
      .locator('main button:visible, main [type=radio]:visible, main select:visible')
      .all()) {
      const box = await button.boundingBox();
      expect.soft(Math.min(box?.width ?? 0, box?.height ?? 0), await button.innerHTML()).toBeGreaterThanOrEqual(43.5);
    }
  });
});

/** A place as the notebook writes it, in inches: "7 1/8 across, −2 down". */
async function placeOf(written: Promise<string | null>): Promise<Point> {
  const [, across, down] = /([\d −/]+) across, ([\d −/]+) down/.exec((await written)?.replace(/\s/g, ' ') ?? '') ?? [];
  return { x: inInches(across), y: inInches(down) };
}

function inInches(written = ''): number {
  const parts = written.replace('−', '').trim().split(' ');
  const size = parts.reduce((sum, part) => {
    const [over = 0, under = 1] = part.split('/').map(Number);
    return sum + over / under;
  }, 0);
  return written.includes('−') ? -size : size;
}
