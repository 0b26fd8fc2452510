import { readFile } from 'node:fs/promises';
import { expect, type Page, test } from '@playwright/test';
import { outlineOf } from '../core/garment/outline';
import { pathBounds, pathLength } from '../core/geometry/path';
import { openDemo } from './demo';
import { goTo, savedGarment } from './room';
import { listenForTrouble } from './trouble';

async function saved(page: Page, button: string): Promise<Buffer> {
  const [file] = await Promise.all([page.waitForEvent('download'), page.getByRole('button', { name: button }).click()]);
  return readFile(await file.path());
}

const outlines = (page: Page) => page.getByLabel('Bring in outlines (SVG, DXF)');

test('the pieces go out as drawing files and come back as they were', async ({ page }) => {
  const trouble = listenForTrouble(page);
  await openDemo(page);
  await goTo(page, 'Paper');
  await page.locator('summary').filter({ hasText: 'Drawing files' }).click();
  const svg = await saved(page, 'Save as SVG');
  const dxf = await saved(page, 'Save as DXF');
  const png = await saved(page, 'Save a picture (PNG)');
  expect(png.subarray(1, 4).toString('latin1')).toBe('PNG');
  await goTo(page, 'Draft');
  await outlines(page).setInputFiles({ name: 'panel.svg', mimeType: 'image/svg+xml', buffer: svg });
  await expect(page.getByRole('status')).toContainText('1 piece is in.');
  await outlines(page).setInputFiles({ name: 'panel.dxf', mimeType: 'image/vnd.dxf', buffer: dxf });
  await expect(page.getByRole('status')).toContainText('1 piece is in.');
  const { garment } = await savedGarment(page);
  const [panel, ...back] = garment.pieces.map((piece) => outlineOf(piece).whole);
  expect(back).toHaveLength(2);
  for (const ring of back) {
    expect(Math.abs(pathLength(ring) - pathLength(panel ?? []))).toBeLessThan(0.1);
    const [one, other] = [pathBounds(ring), pathBounds(panel ?? [])];
    expect(Math.abs(one.maxX - one.minX - (other.maxX - other.minX))).toBeLessThan(0.02);
    expect(Math.abs(one.maxY - one.minY - (other.maxY - other.minY))).toBeLessThan(0.02);
  }
  expect(trouble).toEqual([]);
});

test('the unit is asked for where a file does not say it, and hostile files are refused in a sentence', async ({
  page,
}) => {
  const trouble = listenForTrouble(page);
  await openDemo(page);
  await goTo(page, 'Draft');
  const svg = (inside: string) =>
    Buffer.from(`<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 40 50">${inside}</svg>`);
  const bring = (name: string, buffer: Buffer) =>
    outlines(page).setInputFiles({ name, mimeType: 'image/svg+xml', buffer });
  const status = page.getByRole('status');

  await bring('a.svg', svg('<script>fetch("https://example.com")</script>'));
  await expect(status).toContainText('has a program in it');
  await bring('b.svg', svg('<image href="https://example.com/a.png"/>'));
  await expect(status).toContainText('nothing is fetched here');
  await bring(
    'c.svg',
    Buffer.from('<!DOCTYPE svg [<!ENTITY a "aaaa">]><svg xmlns="http://www.w3.org/2000/svg">&a;</svg>'),
  );
  await expect(status).toContainText('document type');
  await bring('d.svg', svg(`${'<g>'.repeat(5000)}${'</g>'.repeat(5000)}`));
  await expect(status).toContainText('deep in one another');
  await bring('e.dxf', Buffer.from('0\nSECTION\n2\nENTITIES\n0\nLINE\n10\nnot a number\n'));
  await expect(status).toContainText(/cannot be read|stops at line/);
  await bring('f.dxf', Buffer.from('shopping: two yards of calico'));
  await expect(status).toContainText(/no SVG and no DXF file/);
  await expect(page.getByRole('button', { name: 'Nothing to undo' })).toBeDisabled();

  await bring('unsaid.svg', svg('<path d="M0 0 H40 V50 H0 Z"/>'));
  await expect(page.getByText('All outlines together are 40 by 50 units.')).toBeVisible();
  await page.getByLabel('One unit is').selectOption({ label: 'a centimetre' });
  await page.getByRole('button', { name: 'Bring it in so' }).click();
  const { garment } = await savedGarment(page);
  const box = pathBounds(outlineOf(garment.pieces.at(-1) ?? (garment.pieces[0] as never)).whole);
  expect(box.maxX - box.minX).toBeCloseTo(400, 6);
  expect(box.maxY - box.minY).toBeCloseTo(500, 6);
  expect(trouble).toEqual([]);
});

test('files made to choke a reader are refused beside the page, which goes on, and nothing is changed', async ({
  page,
}) => {
  const trouble = listenForTrouble(page);
  await openDemo(page);
  const before = JSON.stringify((await savedGarment(page)).garment.pieces);
  await goTo(page, 'Draft');
  const status = page.getByRole('status');
  const laughs = Array.from({ length: 30 }, (_, k) => `<!ENTITY a${k + 1} "${`&a${k};`.repeat(10)}">`).join('');
  const svg = '<svg xmlns="http://www.w3.org/2000/svg" width="40mm" height="50mm" viewBox="0 0 40 50">';
  const bad = [
    ['points.dxf', `0\nSECTION\n2\nENTITIES\n${'0\nPOINT\n'.repeat(1_000_000)}0\nENDSEC\n0\nEOF\n`, /300,000/],
    ['laughs.svg', `<!DOCTYPE svg [<!ENTITY a0 "ha">${laughs}]>${svg}<text>&a30;</text></svg>`, /document type/],
    ['nested.svg', `${svg}${'<g>'.repeat(1_000_000)}${'</g>'.repeat(1_000_000)}</svg>`, /deep in one another/],
    ['broken.dxf', '0\nSECTION\n2\nENTITIES\n0\nLINE\n10\n1e999\n20\n1\n0\nENDSEC\n0\nEOF\n', /line 8/],
    ['link.svg', `${svg}<rect fill="url(//example.com/a)" width="9" height="9"/></svg>`, /nothing is fetched here/],
    ['press.svg', `${svg}<rect width="9" height="9" onload="document.title='run'"/></svg>`, /program in it/],
  ] as const;
  for (const [name, text, sentence] of bad) {
    await test.step(name, async () => {
      await outlines(page).setInputFiles({ name, mimeType: 'image/svg+xml', buffer: Buffer.from(text) });
      await expect(status).toContainText(sentence, { timeout: 20_000 });
      // It was read beside the page, which goes on meanwhile.
      expect(page.workers().some((worker) => worker.url().includes('files.worker'))).toBe(true);
    });
  }
  expect(await page.title()).not.toBe('run');
  await expect(page.getByRole('button', { name: 'Nothing to undo' })).toBeDisabled();
  expect(JSON.stringify((await savedGarment(page)).garment.pieces)).toBe(before);
  expect(trouble).toEqual([]);
});
