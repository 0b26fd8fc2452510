import { readFileSync } from 'node:fs';
import type { Browser, Page } from '@playwright/test';
import { lindenGarment } from '../app/demo/linden-garment';
import { lindenPhotoSize } from '../app/demo/linden-panel';
import { writeProject } from '../app/storage/project-file';
import { fittedView, toScreen } from '../app/table/view';
import { outlineOf } from '../core/garment/outline';
import { unionBox } from '../core/geometry/bounds';
import { pathBounds } from '../core/geometry/path';
import type { Point } from '../core/geometry/point';
import { inches } from '../core/units/inch';
import type { Figure } from './figure';
import { inBrowser } from './in-browser';
import { sampleGarment } from './sample-garment';
import { quantile } from './timing';

const PHOTO = 'public/demo/linden-plate.jpg';
const WINDOW = { width: 1440, height: 900 };
/** How many frames a drag lasts, after some that do not count. */
const FRAMES = 100;
const WARM = 30;
const ROUNDS = 3;

/**
 * A corner dragged in a garment of 12 pieces of 40 points, all in sight over its photo with every overlay on, beside a
 * canvas of the same size on which one square follows the pointer; at the machine's pace and four times slower.
 */
export async function dragScreenFigures(): Promise<Figure[]> {
  return inBrowser(async (browser, url) => {
    const figures: Figure[] = [];
    for (const [slower, name] of [
      [1, ''],
      [4, '_slow4'],
    ] as const) {
      const dragged: number[] = [];
      const empty: number[] = [];
      // In turn, so that whatever else the machine does falls on both.
      for (let round = 0; round < ROUNDS; round++) {
        const drag = await framesOfDrag(browser, url, slower);
        dragged.push(...drag.frames);
        empty.push(...(await framesOfEmpty(browser, slower, drag.size)));
      }
      for (const [part, share] of [
        ['p50', 0.5],
        ['p95', 0.95],
      ] as const) {
        const [value, baseline] = [quantile(dragged, share), quantile(empty, share)];
        figures.push({ name: `frame_ms_${part}${name}`, value, unit: 'ms', baseline, ratio: value / baseline });
      }
    }
    return figures;
  });
}

async function framesOfDrag(browser: Browser, url: string, slower: number) {
  const context = await browser.newContext({ viewport: WINDOW });
  const page = await context.newPage();
  await page.goto(url);
  const { file, corner, fit } = benchProject();
  await page
    .locator('input[type=file]')
    .first()
    .setInputFiles({ name: 'bench.inchsquare.zip', mimeType: 'application/zip', buffer: file });
  await page.getByRole('navigation').waitFor();
  await page
    .getByRole('complementary')
    .getByRole('button', { name: /^Gore 6/ })
    .click();
  await page.getByRole('button', { name: 'Show everything' }).click();
  // The photo is squared up and the findings are looked over before the drag begins.
  await page.waitForTimeout(4000);
  const canvas = await page.locator('main canvas').first().boundingBox();
  if (!canvas) throw new Error('there is no canvas');
  const size = { width: canvas.width, height: canvas.height };
  const at = toScreen(fittedView(fit, size, { min: 0.02, max: 60 }), corner);
  const from = { x: canvas.x + at.x, y: canvas.y + at.y };
  await slowDown(page, slower);
  const frames = await pageFrames(page, from, '[role=application]');
  const undo = await page.getByRole('button', { name: 'Undo: move a point' }).count();
  if (undo !== 1) throw new Error('nothing was dragged');
  await context.close();
  return { frames, size };
}

async function framesOfEmpty(
  browser: Browser,
  slower: number,
  { width, height }: { readonly width: number; readonly height: number },
): Promise<readonly number[]> {
  const context = await browser.newContext({ viewport: WINDOW });
  const page = await context.newPage();
  await page.setContent(`<canvas id="sheet" width="${Math.round(width)}" height="${Math.round(height)}"></canvas>`);
  await page.evaluate(() => {
    const sheet = document.getElementById('sheet') as HTMLCanvasElement;
    const ink = sheet.getContext('2d');
    window.addEventListener('pointermove', (event) => {
      ink?.clearRect(0, 0, sheet.width, sheet.height);
      ink?.fillRect(event.clientX, event.clientY, 10, 10);
    });
  });
  await slowDown(page, slower);
  const frames = await pageFrames(page, { x: width / 2, y: height / 2 }, '#sheet');
  await context.close();
  return frames;
}

async function slowDown(page: Page, times: number): Promise<void> {
  const session = await page.context().newCDPSession(page);
  await session.send('Emulation.setCPUThrottlingRate', { rate: times });
}

/** One move of the pointer a frame round a small circle, from inside the page so that nothing waits for the driver. */
function pageFrames(page: Page, from: Point, surface: string): Promise<readonly number[]> {
  return page.evaluate(
    async ([from, surface, frames, warm]) => {
      const target = document.querySelector(surface);
      const send = (type: string, x: number, y: number) =>
        target?.dispatchEvent(
          new PointerEvent(type, {
            bubbles: true,
            cancelable: true,
            pointerId: 1,
            pointerType: 'mouse',
            clientX: x,
            clientY: y,
            buttons: type === 'pointerup' ? 0 : 1,
          }),
        );
      const times: number[] = [];
      send('pointerdown', from.x, from.y);
      let last = 0;
      for (let step = 0; step < frames + warm; step++) {
        const now = await new Promise<number>((resolve) => requestAnimationFrame(resolve));
        if (step >= warm) times.push(now - last);
        last = now;
        send('pointermove', from.x + 12 * Math.sin(step / 6), from.y + 9 * Math.cos(step / 9));
      }
      send('pointerup', from.x + 7, from.y + 5);
      return times;
    },
    [from, surface, FRAMES, WARM] as const,
  );
}

/** The garment as a file, with the photo of the demo's plate under its middle pieces. */
function benchProject() {
  let last = 0;
  const newId = () => `photo-id${++last}`;
  const { diagrams } = lindenGarment({ newId, today: '2026-01-02', photoId: 'plate' });
  const twelve = sampleGarment(12);
  const placedAt = { x: 1200, y: -60 };
  const garment = { ...twelve, diagrams: diagrams.map((diagram) => ({ ...diagram, placedAt })) };
  const bytes = readFileSync(PHOTO);
  const photo = {
    ...lindenPhotoSize,
    id: 'plate',
    name: 'plate.jpg',
    type: 'image/jpeg',
    bytes: new Uint8Array(bytes).buffer,
  };
  const printed = { minX: 1200, minY: -60, maxX: 1200 + inches(24), maxY: -60 + inches(36) };
  const boxes = garment.pieces.map((piece) => pathBounds(outlineOf(piece).whole));
  const corner = garment.pieces[5]?.corners[2]?.at;
  if (!corner) throw new Error('the sample garment has a sixth gore');
  const file = Buffer.from(writeProject({ garment, versions: [], photos: [photo] }));
  return { file, corner, fit: boxes.reduce(unionBox, printed) };
}
