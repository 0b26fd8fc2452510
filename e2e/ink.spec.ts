import { expect, type Page, test } from '@playwright/test';
import {
  lindenCorners,
  lindenFrame,
  lindenFrameInPhoto,
  lindenHemThrough,
  lindenPhotoSize,
  lindenSideThrough,
} from '../app/demo/linden-panel';
import type { Garment } from '../core/garment/garment';
import { outlineOf } from '../core/garment/outline';
import { flattenPath } from '../core/geometry/flatten';
import { nearestOnPath } from '../core/geometry/path';
import { distance, type Point } from '../core/geometry/point';
import { inches } from '../core/units/inch';
import { fittedCanvas, wholePixel } from './canvas';
import { openDemo } from './demo';
import { lindenTruth } from './linden-truth';
import { goTo, savedGarment } from './room';

/** The demo's plate is drawn with lines 4 wide where an inch is 50: half of that, on the table. */
const HALF_LINE = inches(2 / 50);

const frame = {
  minX: lindenFrame[0].x,
  minY: lindenFrame[0].y,
  maxX: lindenFrame[2].x,
  maxY: lindenFrame[2].y,
};

/** Tracing by hand takes a press for every corner and curve point, one more to close, and two to say what a point is. */
const CLICKS_BY_HAND = 4 + lindenSideThrough.length + lindenHemThrough.length + 1 + 4;

async function bareTable(page: Page): Promise<void> {
  await openDemo(page);
  await goTo(page, 'Draft');
  await page
    .getByRole('button', { name: /^Panel/ })
    .first()
    .click();
  await page.getByRole('button', { name: 'Remove the piece' }).click();
  await page.getByRole('radio', { name: 'Trace a piece' }).check();
  await page.getByLabel('Follow the printed line').check();
}

function furthestFromTruth(garment: Garment): number {
  const [piece] = garment.pieces;
  if (!piece) throw new Error('a piece was traced');
  const truth = lindenTruth({ dx: 0, dy: 0 });
  const outline = outlineOf(piece).whole;
  const off = (from: typeof truth, to: typeof truth) =>
    Math.max(...flattenPath(from, 0.05).map((point) => nearestOnPath(to, point).distance));
  return Math.max(off(outline, truth), off(truth, outline));
}

test('the demo is traced along its printed lines in three presses, within half the width of the line', async ({
  page,
}) => {
  await bareTable(page);
  const seen = await fittedCanvas(page, frame);
  let clicks = 0;
  const press = async (place: Point, beside: Point) => {
    const at = wholePixel(seen(place));
    await page.mouse.click(at.x + beside.x, at.y + beside.y);
    clicks += 1;
  };
  const [waistAtFold, , hemAtSide] = lindenCorners;
  // Aimed as a hand does, a few pixels off.
  await press(waistAtFold, { x: 4, y: -3 });
  await press(hemAtSide, { x: -3, y: 5 });
  await expect(page.getByRole('listitem').filter({ hasText: 'Corner' })).toHaveCount(3);
  await press(waistAtFold, { x: 3, y: 4 });
  await expect(page.getByText(/is closed, with 4 corners/)).toBeAttached();
  expect(clicks).toBeLessThan(CLICKS_BY_HAND / 2);
  const { garment } = await savedGarment(page);
  const off = furthestFromTruth(garment);
  expect(off).toBeLessThan(HALF_LINE);
});

test('the ends of a known length go to where printed lines meet, and stay where they are put when that is off', async ({
  page,
}) => {
  await openDemo(page);
  await goTo(page, 'Diagram');
  const [from, to] = lindenFrameInPhoto;
  const { widthPx, heightPx } = lindenPhotoSize;
  const seen = await fittedCanvas(page, { minX: 0, minY: 0, maxX: widthPx, maxY: heightPx });
  const draw = async () => {
    await page.getByRole('button', { name: 'Draw a known length' }).click();
    for (const [end, beside] of [
      [from, { x: 2, y: -3 }],
      [to, { x: -3, y: 2 }],
    ] as const) {
      const at = wholePixel(seen(end));
      await page.mouse.click(at.x + beside.x, at.y + beside.y);
    }
    await page.getByLabel('At full size').first().fill('24');
    await page.keyboard.press('Enter');
  };
  const ticks = page.getByLabel('Bring ends to printed ticks');
  await ticks.check();
  await expect(page.getByText('The printed lines are being read')).toHaveCount(0);
  await draw();
  await ticks.uncheck();
  await draw();
  const { garment } = await savedGarment(page);
  const [held, free] = garment.diagrams[0]?.knownLengths.slice(-2) ?? [];
  if (!held || !free) throw new Error('two known lengths were drawn');
  for (const [which, corner] of [
    ['from', from],
    ['to', to],
  ] as const) {
    expect(distance(held[which], corner)).toBeLessThan(1.5);
    expect(distance(free[which], corner)).toBeGreaterThan(4);
  }
});
