import { expect, test } from '@playwright/test';
import { lindenCornersInPhoto, lindenFrame, lindenFrameInPhoto, lindenPhotoSize } from '../app/demo/linden-panel';
import { outlineOf } from '../core/garment/outline';
import { flattenPath } from '../core/geometry/flatten';
import { nearestOnPath } from '../core/geometry/path';
import { inches } from '../core/units/inch';
import { drag, fittedCanvas, wholePixel } from './canvas';
import { lindenTrace, lindenTruth } from './linden-truth';
import { readPages } from './read-pages';
import { goTo, savedGarment } from './room';
import { MEASURES } from './whole-job';

/** The whole job once, with mouse and keyboard, from the picture to the pages; the shape is known, for it is our drawing. */
test('from the picture to full-size pages, within a sixteenth of an inch of the truth', async ({ page }) => {
  await page.goto('/');
  await page.getByRole('button', { name: /Start from a picture/ }).click();

  await test.step('bring in the picture', async () => {
    await page.getByLabel('Choose a picture', { exact: true }).setInputFiles('public/demo/linden-plate.jpg');
    await expect(page.getByRole('heading', { name: /Square up/ })).toBeVisible();
  });

  await test.step('measure the wearer', async () => {
    await goTo(page, 'Wearer');
    for (const [label, value] of MEASURES) {
      const field = page.getByLabel(label, { exact: true });
      await field.fill(value);
      await field.press('Enter');
    }
    const highHipDepth = page.getByLabel('How far below the waist: high hip');
    await highHipDepth.fill('4 in');
    await highHipDepth.press('Enter');
  });

  await test.step('square the picture up by its printed frame', async () => {
    await goTo(page, 'Diagram');
    const seen = await fittedCanvas(page, {
      minX: 0,
      minY: 0,
      maxX: lindenPhotoSize.widthPx,
      maxY: lindenPhotoSize.heightPx,
    });
    // By hand, not from the proposal.
    await page.getByRole('button', { name: 'Start again' }).click();
    const { widthPx, heightPx } = lindenPhotoSize;
    const inset = [
      { x: widthPx * 0.1, y: heightPx * 0.1 },
      { x: widthPx * 0.9, y: heightPx * 0.1 },
      { x: widthPx * 0.9, y: heightPx * 0.9 },
      { x: widthPx * 0.1, y: heightPx * 0.9 },
    ];
    for (const [index, corner] of lindenFrameInPhoto.entries()) {
      await drag(page, seen(inset[index] ?? corner), wholePixel(seen(corner)));
    }
    // Under the magnifier each is set to the very pixel of the photo.
    await page.getByText('The corners as numbers').click();
    const names = ['Top left', 'Top right', 'Bottom right', 'Bottom left'];
    for (const [index, corner] of lindenFrameInPhoto.entries()) {
      for (const [way, value] of [
        ['across', corner.x],
        ['down', corner.y],
      ] as const) {
        const field = page.getByLabel(`${names[index]}, pixels ${way}`);
        expect(Math.abs(Number(await field.inputValue()) - value)).toBeLessThan(4);
        await field.fill(String(Math.round(value)));
        await field.press('Enter');
      }
    }
  });

  await test.step('give two known lengths', async () => {
    const seen = await fittedCanvas(page, {
      minX: 0,
      minY: 0,
      maxX: lindenPhotoSize.widthPx,
      maxY: lindenPhotoSize.heightPx,
    });
    const [waistAtFold, waistAtSide, , hemAtFold] = lindenCornersInPhoto;
    await page.getByRole('button', { name: 'Draw a known length' }).click();
    await drag(page, wholePixel(seen(waistAtFold)), wholePixel(seen(waistAtSide)));
    await page.getByRole('radio', { name: 'a share of a measure' }).check();
    await page.getByRole('button', { name: 'Take it' }).click();
    await expect(page.getByText('That comes to 7 in.')).toBeVisible();
    await page.getByRole('button', { name: 'Draw a known length' }).click();
    await drag(page, wholePixel(seen(waistAtFold)), wholePixel(seen(hemAtFold)));
    await page.getByLabel('At full size').fill('28');
    await page.getByLabel('At full size').press('Enter');
    for (const [index, ends] of [
      [waistAtFold, waistAtSide],
      [waistAtFold, hemAtFold],
    ].entries()) {
      const entry = page.getByRole('listitem').filter({ hasText: `Known length ${index + 1}` });
      await entry.getByText('Its ends as numbers').click();
      for (const [end, place] of [
        ['First end', ends[0]],
        ['Other end', ends[1]],
      ] as const) {
        for (const [way, value] of [
          ['across', place?.x],
          ['down', place?.y],
        ] as const) {
          const field = entry.getByLabel(`${end}, pixels ${way}`);
          await field.fill(String(Math.round(value ?? 0)));
          await field.press('Enter');
        }
      }
    }
    await expect(page.getByText('Good enough to trace.')).toBeVisible();
  });

  await test.step('trace the panel over the printed lines', async () => {
    await goTo(page, 'Draft');
    const frame = { minX: 0, minY: 0, maxX: inches(24), maxY: inches(36) };
    await page.getByRole('radio', { name: 'Trace a piece' }).check();
    await page.getByLabel('Snap to the squares').uncheck();
    const seen = await fittedCanvas(page, frame);
    for (const { at, kind } of lindenTrace()) {
      await page.getByRole('radio', { name: kind }).check();
      const { x, y } = wholePixel(seen(at));
      await page.mouse.click(x, y);
    }
    await page.getByRole('button', { name: 'Done' }).click();
  });

  await test.step('name its edges, how it is cut and what is allowed', async () => {
    await page.getByLabel('Name', { exact: true }).fill('Panel');
    await page.getByLabel('Name', { exact: true }).press('Enter');
    await page.getByLabel('Cut', { exact: true }).selectOption({ label: 'on the fold' });
    const count = page.getByLabel('Pieces of cloth');
    await count.fill('1');
    await count.press('Enter');
    await page.getByRole('radio', { name: 'the stitch line' }).check();
    await page.getByRole('heading', { name: 'Points and edges' }).click();
    for (const [edge, role, allowance] of [
      ['edge 1', 'the waist', '1/2'],
      ['edge 2', 'a seam', '3/4'],
      ['edge 3', 'a hem', '2'],
      ['edge 4', 'a fold of the cloth', ''],
    ] as const) {
      await page.getByRole('button', { name: edge, exact: true }).click();
      await page.getByLabel('It is').selectOption({ label: role });
      if (edge === 'edge 3')
        await page.getByLabel('At corner 4 it').selectOption({ label: 'is square to its neighbour' });
      if (allowance !== '') {
        await page.getByLabel('Allowance', { exact: true }).fill(allowance);
        await page.getByLabel('Allowance', { exact: true }).press('Enter');
      }
    }
  });

  await test.step('half a garment is found out', async () => {
    await goTo(page, 'Fit');
    await page.getByRole('button', { name: 'Take every piece that has a waist' }).click();
    await expect(page.getByText(/about half\. A panel is probably missing/).first()).toBeVisible();
    await goTo(page, 'Draft');
    await page
      .getByRole('button', { name: /^Panel/ })
      .first()
      .click();
    await page.getByLabel('Pieces of cloth').fill('2');
    await page.getByLabel('Pieces of cloth').press('Enter');
  });

  const traced = (await savedGarment(page)).garment;

  await test.step('what was traced is the drawing, within 1/16 in everywhere', async () => {
    const [piece] = traced.pieces;
    if (!piece) throw new Error('the panel was traced');
    const truth = lindenTruth({ dx: -lindenFrame[0].x, dy: -lindenFrame[0].y });
    const outline = outlineOf(piece).whole;
    const off = (from: typeof truth, to: typeof truth) =>
      Math.max(...flattenPath(from, 0.05).map((point) => nearestOnPath(to, point).distance));
    expect(off(outline, truth)).toBeLessThan(inches(1 / 16));
    expect(off(truth, outline)).toBeLessThan(inches(1 / 16));
  });

  await test.step('the curved waist is taken with one press', async () => {
    await page
      .getByRole('button', { name: /^New garment|^Panel/ })
      .first()
      .click();
    await goTo(page, 'Fit');
    await page.getByRole('button', { name: 'Take the curved waist' }).click();
    await expect(page.getByRole('region', { name: 'Waist', exact: true })).toContainText('just right');
    await expect(page.getByText(/already the one the body needs/)).toBeVisible();
  });

  await test.step('the pages measure true', async () => {
    await goTo(page, 'Paper');
    await page.getByRole('radio', { name: 'A4', exact: true }).check();
    const [file] = await Promise.all([
      page.waitForEvent('download', { timeout: 60_000 }),
      page.getByRole('button', { name: 'Make the pages (PDF)' }).click(),
    ]);
    const pages = readPages(await file.path());
    if (pages === 'no-readers')
      test.info().annotations.push({ type: 'skipped', description: 'no poppler on this machine' });
    else {
      expect(pages.count).toBeGreaterThan(5);
      for (const square of pages.squares) {
        expect(square.across).toBeCloseTo(4, 1.7);
        expect(Math.abs(square.across - 4)).toBeLessThan(0.01);
        expect(Math.abs(square.down - 4)).toBeLessThan(0.01);
      }
    }
    await goTo(page, 'Before you cut');
    await expect(page.getByText('The printed scale is not proved yet.', { exact: false })).toBeVisible();
  });

  await test.step('nothing is lost by a reload, and undo still works', async () => {
    await page.reload();
    await expect(page.getByRole('navigation')).toBeVisible();
    await page.getByRole('button', { name: 'Undo: pages made' }).click();
    await page.getByRole('button', { name: /^Undo: paper/ }).click();
    await page.getByRole('button', { name: 'Undo: curved waist' }).click();
    await goTo(page, 'Fit');
    await expect(page.getByRole('button', { name: 'Take the curved waist' })).toBeVisible();
  });
});
