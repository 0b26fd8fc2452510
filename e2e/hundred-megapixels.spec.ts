import { expect, type Page, test } from '@playwright/test';
import { type DiagramMap, diagramMap, photoToTable } from '../core/diagram/diagram-map';
import { boxAround } from '../core/diagram/squared-picture';
import type { Garment } from '../core/garment/garment';
import { currentSet } from '../core/garment/measure-value';
import { outlineOf } from '../core/garment/outline';
import { unionBox } from '../core/geometry/bounds';
import { pathBounds } from '../core/geometry/path';
import { distance, type Point } from '../core/geometry/point';
import { applyHomography, type Homography, homographyFrom } from '../core/geometry/projective';
import { drag, fittedCanvas, wholePixel } from './canvas';
import { openDemo } from './demo';
import { BLOCK_PX, largeJpeg } from './large-jpeg';
import { goTo, savedGarment } from './room';
import { listenForTrouble } from './trouble';

/** The most that is let in: 10,000 by 10,000 pixels. */
const SIDE_PX = 10_000;

/** A frame of 24 by 24 in with a piece in it, in inches, as it is seen in the picture: aslant. */
const FRAME = [
  { x: 0, y: 0 },
  { x: 24, y: 0 },
  { x: 24, y: 24 },
  { x: 0, y: 24 },
] as const;
const PIECE = [
  { x: 4, y: 5 },
  { x: 18, y: 4 },
  { x: 20, y: 19 },
  { x: 5, y: 18 },
] as const;
const SEEN = [
  { x: 1200, y: 900 },
  { x: 8900, y: 1300 },
  { x: 9300, y: 9200 },
  { x: 700, y: 8800 },
] as const;

const pairs = FRAME.map((from, k) => ({ from, to: SEEN[k] as Point }));
const toPhoto = homographyFrom(pairs) as Homography;
const toPage = homographyFrom(pairs.map(({ from, to }) => ({ from: to, to: from }))) as Homography;
const seenAt = (place: Point) => applyHomography(toPhoto, place) as Point;

/** Half the width of a printed line, in inches: about two blocks are dark across it. */
const HALF_LINE = 0.025;

function isInk(column: number, row: number): boolean {
  const place = applyHomography(toPage, { x: (column + 0.5) * BLOCK_PX, y: (row + 0.5) * BLOCK_PX }) as Point;
  return [FRAME, PIECE].some((ring) =>
    ring.some((from, k) => offLine(place, from, ring[(k + 1) % 4] as Point) < HALF_LINE),
  );
}

function offLine(place: Point, from: Point, to: Point): number {
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  const share = ((place.x - from.x) * dx + (place.y - from.y) * dy) / (dx * dx + dy * dy);
  const t = Math.min(1, Math.max(0, share));
  return distance(place, { x: from.x + t * dx, y: from.y + t * dy });
}

/** Watches how long the page goes without painting, until it is asked. */
async function watchFrames(page: Page): Promise<void> {
  await page.evaluate(() => {
    const seen = { gaps: [] as number[] };
    Object.assign(globalThis, { seenFrames: seen });
    let before = performance.now();
    const next = (now: number) => {
      seen.gaps.push(now - before);
      before = now;
      requestAnimationFrame(next);
    };
    requestAnimationFrame(next);
  });
}

/** The longest the page did not paint since it was last asked, in ms, and the 95th of a hundred. */
async function framesSeen(page: Page): Promise<{ readonly longest: number; readonly p95: number }> {
  return page.evaluate(() => {
    const { gaps } = (globalThis as unknown as { seenFrames: { gaps: number[] } }).seenFrames;
    const sorted = gaps.splice(0).toSorted((a, b) => a - b);
    return { longest: sorted.at(-1) ?? 0, p95: sorted[Math.floor(0.95 * (sorted.length - 1))] ?? 0 };
  });
}

/** A page that does not paint for so long is frozen to whoever waits before it, on a slow and busy machine too. */
const FROZEN_MS = 1500;

test('a scan of a hundred megapixels is brought in, squared up and traced on, and the page never freezes', {
  tag: '@alone',
}, async ({ page }) => {
  test.setTimeout(240_000);
  const trouble = listenForTrouble(page);
  await openDemo(page);
  await goTo(page, 'Diagram');
  const buffer = largeJpeg(SIDE_PX / BLOCK_PX, SIDE_PX / BLOCK_PX, isInk);
  await watchFrames(page);
  const step = async (name: string, run: () => Promise<void>) => {
    await test.step(name, run);
    const { longest, p95 } = await framesSeen(page);
    test
      .info()
      .annotations.push({ type: name, description: `longest ${longest.toFixed(0)} ms, p95 ${p95.toFixed(0)} ms` });
    expect(longest, name).toBeLessThan(FROZEN_MS);
  };

  await step('brought in', async () => {
    await page.getByLabel('Add another diagram').setInputFiles({ name: 'scan.jpg', mimeType: 'image/jpeg', buffer });
    await expect(page.getByRole('status')).toContainText('10,000 by 10,000 pixels', { timeout: 60_000 });
  });

  await step('squared up', async () => {
    await expect(page.getByText(/^The corners lie on a printed frame/)).toBeVisible({ timeout: 60_000 });
    const photo = await fittedCanvas(page, { minX: 0, minY: 0, maxX: SIDE_PX, maxY: SIDE_PX });
    for (const [from, to] of [
      [0, 1],
      [1, 2],
    ] as const) {
      await page.getByRole('button', { name: 'Draw a known length', exact: true }).click();
      for (const corner of [from, to]) {
        const { x, y } = wholePixel(photo(SEEN[corner]));
        await page.mouse.click(x, y);
      }
      await page.getByLabel('At full size').first().fill('24');
      await page.keyboard.press('Enter');
    }
    await page.getByRole('radio', { name: 'Squared up' }).check();
    await expect(page.getByText('Squaring up…')).toBeHidden({ timeout: 60_000 });
  });

  await step('looked at closely', async () => {
    const box = await page.locator('main canvas').first().boundingBox();
    if (!box) throw new Error('there is a canvas');
    const middle = { x: box.x + box.width / 2, y: box.y + box.height / 2 };
    await page.mouse.move(middle.x, middle.y);
    for (let k = 0; k < 12; k++) await page.mouse.wheel(0, -120);
    await page.keyboard.down('Space');
    await drag(page, middle, { x: middle.x + 150, y: middle.y - 90 });
    await page.keyboard.up('Space');
  });

  const { garment } = await savedGarment(page);
  const map = mapOf(garment);

  await step('traced by its ink', async () => {
    await goTo(page, 'Draft');
    await page.getByRole('radio', { name: 'Trace a piece' }).check();
    await page.getByLabel('Follow the printed line').check();
    const pieces = garment.pieces.map((piece) => pathBounds(outlineOf(piece).whole));
    const seen = await fittedCanvas(page, [boxAround(map, 0), ...pieces].reduce(unionBox));
    for (const place of [...PIECE, PIECE[0]]) {
      const { x, y } = wholePixel(seen(photoToTable(map, seenAt(place)) as Point));
      await page.mouse.click(x + 2, y - 2);
    }
    await expect(page.getByText(/is closed, with 4 corners/)).toBeAttached({ timeout: 60_000 });
  });

  const corners =
    (await savedGarment(page)).garment.pieces.at(-1)?.corners.map(({ at }) => ({ x: at.x / 25.4, y: at.y / 25.4 })) ??
    [];
  for (const [k, corner] of corners.entries()) {
    for (const [j, other] of corners.entries()) {
      const wanted = distance(PIECE[k] as Point, PIECE[j] as Point);
      expect(Math.abs(distance(corner, other) - wanted)).toBeLessThan(1 / 16);
    }
  }
  expect(corners).toHaveLength(4);
  expect(trouble).toEqual([]);
});

function mapOf({ diagrams, ...garment }: Garment): DiagramMap {
  const diagram = diagrams.at(-1);
  const map = diagram && diagramMap(diagram, currentSet({ ...garment, diagrams }), diagrams);
  if (map?.kind !== 'map') throw new Error('the scan is squared up');
  return map;
}
