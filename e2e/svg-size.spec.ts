import { execFileSync, spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { expect, type Page, test } from '@playwright/test';
import { pathBounds } from '../core/geometry/path';
import { cutLine } from '../core/seams/cut-line';
import { openDemo } from './demo';
import { goTo, savedGarment } from './room';

const hasRenderer = spawnSync('rsvg-convert', ['--version']).status === 0;

const DPI = 300;
const PER_MM = DPI / 25.4;

/** The pixels within which all dark ink of a picture lies: first and last column, first and last row. */
async function inkBox(page: Page, png: Buffer): Promise<[number, number, number, number]> {
  return page.evaluate(async (data) => {
    const bitmap = await createImageBitmap(await (await fetch(`data:image/png;base64,${data}`)).blob());
    const { width, height } = bitmap;
    const box: [number, number, number, number] = [width, -1, height, -1];
    const strip = 512;
    const canvas = new OffscreenCanvas(width, strip);
    const context = canvas.getContext('2d', { willReadFrequently: true });
    if (!context) throw new Error('no canvas');
    for (let top = 0; top < height; top += strip) {
      context.fillStyle = '#fff';
      context.fillRect(0, 0, width, strip);
      context.drawImage(bitmap, 0, -top);
      const rows = Math.min(strip, height - top);
      const { data: pixels } = context.getImageData(0, 0, width, rows);
      for (let y = 0; y < rows; y++) {
        for (let x = 0; x < width; x++) {
          if ((pixels[4 * (y * width + x)] ?? 255) >= 128) continue;
          box[0] = Math.min(box[0], x);
          box[1] = Math.max(box[1], x);
          box[2] = Math.min(box[2], top + y);
          box[3] = Math.max(box[3], top + y);
        }
      }
    }
    return box;
  }, png.toString('base64'));
}

// CSS Values 3, 6.2: 96 px are an inch, so 300 dots an inch are 3.125 device pixels each.
test('an SVG file is drawn by Chromium and by librsvg at the same size and at its true size, within a pixel at 300 dpi', async ({
  page,
  browser,
}) => {
  test.skip(!hasRenderer, 'librsvg2-bin is not installed, so there is no second program to draw the file');
  await openDemo(page);
  await goTo(page, 'Paper');
  await page.locator('summary').filter({ hasText: 'Drawing files' }).click();
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save as SVG' }).click(),
  ]);
  const svg = readFileSync(await download.path(), 'utf8');
  const [width, height] = (/width="([\d.]+)mm" height="([\d.]+)mm"/.exec(svg) ?? []).slice(1).map(Number) as [
    number,
    number,
  ];

  const context = await browser.newContext({
    deviceScaleFactor: DPI / 96,
    viewport: { width: Math.ceil((width * 96) / 25.4), height: Math.ceil((height * 96) / 25.4) },
  });
  const shown = await context.newPage();
  await shown.goto(`data:image/svg+xml;base64,${Buffer.from(svg).toString('base64')}`);
  const measured = await context.newPage();
  const byChromium = await inkBox(measured, await shown.screenshot());
  const byLibrsvg = await inkBox(
    measured,
    execFileSync('rsvg-convert', ['--dpi-x', String(DPI), '--dpi-y', String(DPI), '--background-color', 'white'], {
      input: svg,
      maxBuffer: 1e9,
    }),
  );
  await context.close();
  byChromium.forEach((pixel, side) => {
    expect(Math.abs(pixel - (byLibrsvg[side] as number))).toBeLessThanOrEqual(1);
  });

  const { garment } = await savedGarment(page);
  const boxes = garment.pieces.flatMap((piece) => {
    const cut = cutLine(piece);
    return cut.kind === 'cut-line' ? [pathBounds(cut.whole)] : [];
  });
  expect(boxes).toHaveLength(1);
  const line = Number(/id="piece-1-cut"[\s\S]*?stroke-width="([\d.]+)"/.exec(svg)?.[1]);
  const [box] = boxes;
  if (!box) throw new Error('there is a cut line');
  const across = (box.maxX - box.minX + line) * PER_MM;
  const down = (box.maxY - box.minY + line) * PER_MM;
  for (const [left, right, top, bottom] of [byChromium, byLibrsvg]) {
    expect(Math.abs(right - left + 1 - across)).toBeLessThanOrEqual(1);
    expect(Math.abs(bottom - top + 1 - down)).toBeLessThanOrEqual(1);
  }
});
