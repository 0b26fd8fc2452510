import { expect, test } from '@playwright/test';
import { lindenCornersInPhoto, lindenFrameInPhoto, lindenPhotoSize } from '../app/demo/linden-panel';
import type { Point } from '../core/geometry/point';
import { inches } from '../core/units/inch';
import { byTouch } from './by-hand';
import { fittedCanvas, wholePixel } from './canvas';
import { type Fingers, fingersOn } from './fingers';
import { lindenTrace } from './linden-truth';
import { wholeJob } from './whole-job';

const PHOTO = { minX: 0, minY: 0, maxX: lindenPhotoSize.widthPx, maxY: lindenPhotoSize.heightPx };

test.skip(({ hasTouch }) => !hasTouch, 'for screens that are touched');
test.describe.configure({ timeout: 240_000 });

test('the whole job by fingers alone, from the picture to the pages and the file', async ({ page }) => {
  const hand = byTouch(page);
  const fingers = await fingersOn(page);
  let pixel = 0;
  const off = await wholeJob(page, hand, {
    async squareUp() {
      await hand.press(page.getByRole('button', { name: 'Start again' }));
      const seen = await fittedCanvas(page, PHOTO);
      const { widthPx, heightPx } = lindenPhotoSize;
      for (const [index, corner] of lindenFrameInPhoto.entries()) {
        const from = {
          x: widthPx * (index === 1 || index === 2 ? 0.9 : 0.1),
          y: heightPx * (index < 2 ? 0.1 : 0.9),
        };
        await stroke(fingers, wholePixel(seen(from)), wholePixel(seen(corner)));
      }
    },
    async drawLine(from, to) {
      const seen = await fittedCanvas(page, PHOTO);
      // The panel's fold is 28 in from waist to hem.
      pixel = inches(28) / Math.abs(seen(lindenCornersInPhoto[3]).y - seen(lindenCornersInPhoto[0]).y);
      const ends = [from, to].map((corner) => wholePixel(seen(lindenCornersInPhoto[corner] ?? { x: 0, y: 0 })));
      await stroke(fingers, ends[0] ?? { x: 0, y: 0 }, ends[1] ?? { x: 0, y: 0 });
    },
    async trace() {
      const seen = await fittedCanvas(page, { minX: 0, minY: 0, maxX: inches(24), maxY: inches(36) });
      const put = async (place: Point, kind: RegExp) => {
        await hand.choose(page.getByRole('radio', { name: kind }));
        const at = wholePixel(seen(place));
        await page.touchscreen.tap(at.x, at.y);
      };
      for (const { at, kind } of lindenTrace()) await put(at, kind);
      await hand.press(page.getByRole('button', { name: 'Done' }));
    },
  });
  // What the screen shows of the picture is all a finger can aim at: whole pixels, in four corners, four ends and the trace.
  expect(pixel).toBeLessThan(inches(1 / 12));
  expect(off / pixel, 'how far off, in pixels of the picture on the screen').toBeLessThan(6);
});

/** One finger put down, drawn along and lifted. */
async function stroke(fingers: Fingers, from: Point, to: Point): Promise<void> {
  await fingers.down([from]);
  await fingers.glide([from], [to]);
  await fingers.up();
}
