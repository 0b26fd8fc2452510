import { execFileSync } from 'node:child_process';
import { expect, type Page, test } from '@playwright/test';
import { layingOf } from '../core/cloth/garment-laying';
import { layFaults } from '../core/cloth/lay-check';
import { layStanding } from '../core/cloth/lay-standing';
import { inches } from '../core/units/inch';
import { readLength } from '../core/units/read-length';
import { drag, fittedCanvas } from './canvas';
import { layAll, notebook, strip, withCloth, write } from './cloth-room';
import { openDemo } from './demo';
import { openToAll } from './open-to-all';
import { readLay } from './read-lay';
import { goTo, savedGarment } from './room';
import { listenForTrouble } from './trouble';

const button = (page: Page, name: string | RegExp) => page.getByRole('button', { name });

test('the demo garment is laid straight and on the bias, compared, pinned, laid round the pin and printed', async ({
  page,
}) => {
  const trouble = listenForTrouble(page);
  await withCloth(page, '39');
  await layAll(page);
  // Two halves on one fold, each 30 1/2 in long with its allowances.
  await expect(strip(page)).toContainText(/Takes\s61\sin/);
  await expect(strip(page)).toContainText(/Fits in the 2\s1\/2\syd you have: yes, with 29\sin over/);
  await expect(strip(page)).toContainText('No overlaps');

  await test.step('straight, cross and bias side by side', async () => {
    await notebook(page).getByRole('button', { name: 'Lay each and compare' }).first().click();
    const row = (name: string) =>
      notebook(page)
        .getByRole('row')
        .filter({ has: page.getByRole('rowheader', { name, exact: true }) });
    await expect(row('bias, opened out')).toContainText('yd', { timeout: 40_000 });
    await expect(row('straight')).toContainText(/61\sin/);
    await expect(notebook(page).getByText(/^The bias takes \d\.\d\d times the straight\.$/)).toBeVisible();
    await notebook(page).getByRole('button', { name: 'Take bias, opened out' }).click({ timeout: 20_000 });
    await expect(notebook(page).getByRole('radio', { name: 'bias', exact: true })).toBeChecked();
    await expect(strip(page)).toContainText('No overlaps');
    await page.getByRole('banner').getByRole('button', { name: /^Undo/ }).click();
    await expect(strip(page)).toContainText(/Takes\s61\sin/);
  });

  await test.step('a piece moved over another is said and shown; a pin holds it while the rest is laid', async () => {
    const onScreen = await fittedCanvas(page, { minX: -70, minY: -70, maxX: inches(90) + 70, maxY: inches(19) + 112 });
    await drag(page, onScreen({ x: inches(10), y: inches(4) }), onScreen({ x: inches(25), y: inches(4) }));
    await expect(strip(page)).toContainText('1 fault in the lay');
    await expect(notebook(page).getByText('Panel lies over Panel.')).toBeVisible();
    await strip(page).getByRole('button', { name: 'Pin it here' }).click();
    await strip(page).getByRole('button', { name: 'Lay the rest round the pins' }).click();
    await expect(strip(page)).toContainText('No overlaps', { timeout: 30_000 });
    await expect(strip(page).getByRole('button', { name: 'Lay the rest round the pins' })).toBeVisible({
      timeout: 30_000,
    });
  });

  await test.step('the plan on one page, and the sheet to scale, measured', async () => {
    const printed = async (name: string | RegExp) => {
      const [file] = await Promise.all([
        page.waitForEvent('download'),
        notebook(page).getByRole('button', { name }).click(),
      ]);
      const path = await file.path();
      expect(execFileSync('pdffonts', [path]).toString()).toMatch(/DejaVuSans\S*\s+CID TrueType\s+Identity-H\s+yes/);
      const read = readLay(path);
      expect(read.text).toContain('Linden petticoat: lay on Sprigged lawn');
      expect(read.text.match(/Panel/g)?.length).toBeGreaterThanOrEqual(2);
      return read;
    };
    const length = Number(/Takes\s(\d+)/.exec((await strip(page).textContent()) ?? '')?.[1]);
    const far = 4 * Math.floor(length / 4);
    const plan = await printed('Make the plan (PDF)');
    expect(plan.pages).toBe(1);
    expect(plan.text).toMatch(/Panel, 1 of 2.* from the cut end/);
    // The selvedge is as long as the lay, on the plan's own rule.
    const inch = ((plan.rule.get(far) ?? Number.NaN) - (plan.rule.get(0) ?? Number.NaN)) / far;
    expect(plan.levels.some((line) => Math.abs(line / inch - length) < 1)).toBe(true);
    const scaled = await printed(/^Make the sheet to scale, 1 : 8/);
    const on = (scaled.rule.get(40) ?? Number.NaN) - (scaled.rule.get(0) ?? Number.NaN);
    expect(Math.abs(on - 40 / 8)).toBeLessThan(0.01);
    expect(
      scaled.levels.some((line) => Math.abs(line - 4) < 0.02),
      'the line to be measured',
    ).toBe(true);
  });

  const { garment } = await savedGarment(page);
  const [cloth] = garment.cloths ?? [];
  const standing = cloth && layStanding(garment, cloth);
  expect(standing?.faults).toEqual([]);
  expect(standing?.lay.placed.filter(({ pinned }) => pinned)).toHaveLength(1);
  expect(trouble).toEqual([]);
});

test('a dragged piece settles against the true outline of another, and what overlaps is told while it moves', async ({
  page,
}) => {
  await withCloth(page, '39');
  await layAll(page);
  await notebook(page).getByText('Pieces on the cloth').click();
  const entry = notebook(page).getByRole('button', { name: /^Placket strip.*cut end/ });
  await entry.click();
  const places = [...((await entry.textContent()) ?? '').matchAll(/(\d[\d\s/]*?)\sin from the/g)];
  const [x, y] = places.map(([, said]) => {
    const read = readLength(said ?? '', { bare: 'in' });
    if (read.kind !== 'length') throw new Error(`no place: ${said}`);
    return read.length;
  });
  if (x === undefined || y === undefined) throw new Error('the placket has no place');
  const onScreen = await fittedCanvas(page, { minX: -70, minY: -70, maxX: inches(90) + 70, maxY: inches(19) + 112 });
  const middle = { x: inches(10), y: inches(1.5) };
  const held = onScreen({ x: x + middle.x, y: y + middle.y });
  // Right over the panel, and then, not let go, to the waist end of its side, a little into it.
  await page.mouse.move(held.x, held.y);
  await page.mouse.down();
  const over = onScreen({ x: inches(16), y: inches(8) });
  await page.mouse.move(over.x, over.y, { steps: 6 });
  await expect(strip(page)).toContainText('1 fault in the lay');
  const beside = onScreen({ x: inches(10.2), y: inches(14.4) });
  await page.mouse.move(beside.x, beside.y, { steps: 6 });
  await expect(strip(page)).toContainText('No overlaps');
  await page.mouse.up();
  await expect(strip(page)).toContainText('No overlaps');

  const { garment } = await savedGarment(page);
  const [cloth] = garment.cloths ?? [];
  const [lay] = garment.lays ?? [];
  const made = cloth && layingOf(garment, cloth).made;
  if (!lay || made?.kind !== 'task') throw new Error('the lay is kept');
  expect(layFaults(made.task, lay)).toEqual([]);
  const isPlacket = ({ id }: { readonly id: string }) => id === cloth?.strips[0]?.id;
  const at = lay.placed.find(isPlacket)?.at;
  // The box of the panel reaches down to 14.2 in; the placket lies higher, at the side itself.
  expect(at?.y).toBeLessThan(inches(13.6));
  const nearer = lay.placed.map((place) =>
    isPlacket(place) ? { ...place, at: { x: place.at.x, y: place.at.y - 0.1 } } : place,
  );
  expect(layFaults(made.task, { ...lay, placed: nearer }).map(({ kind }) => kind)).toEqual(['overlap']);
});

test('the first cloth of a garment is chosen by its width', async ({ page }) => {
  await openDemo(page);
  await goTo(page, 'Cloth');
  await button(page, 'Take this cloth away').click();
  await button(page, 'Take it away').click();
  await expect(page.getByRole('heading', { name: 'What is it cut from?' })).toBeVisible();
  await openToAll(page, 'before there is a cloth');
  await button(page, /^45\sin$/).click();
  await expect(notebook(page).getByLabel('Width, selvedges counted')).toHaveValue(/^45\sin$/);
  await layAll(page);
  await expect(strip(page)).toContainText('No overlaps');
});

test('laying stops within 200 ms, leaves the page live, and the best lay is there on coming back and after a reload', {
  tag: '@alone',
}, async ({ page }) => {
  await withCloth(page, '39');
  await page.evaluate(() => {
    const seen = { longest: 0 };
    Object.assign(window, { seen });
    new PerformanceObserver((list) => {
      for (const { duration } of list.getEntries()) seen.longest = Math.max(seen.longest, duration);
    }).observe({ entryTypes: ['longtask'] });
  });
  await strip(page).getByRole('button', { name: 'Lay the pieces' }).click();
  await expect(strip(page)).toContainText(/Takes\s61\sin/, { timeout: 20_000 });
  await page.waitForTimeout(3000);
  const stopped = await page.evaluate(async () => {
    const region = document.querySelector('section[aria-label="The lay"]');
    const stop = [...(region?.querySelectorAll('button') ?? [])].find((one) => one.textContent === 'Stop');
    const begun = performance.now();
    stop?.click();
    while (region?.querySelector('progress')) await new Promise((resolve) => requestAnimationFrame(resolve));
    return { took: performance.now() - begun, was: stop !== undefined };
  });
  expect(stopped.was).toBe(true);
  expect(stopped.took).toBeLessThan(200);
  const { longest } = await page.evaluate(() => (window as unknown as { seen: { longest: number } }).seen);
  expect(longest, 'the longest task of the page while laying, in ms').toBeLessThan(250);

  await strip(page).getByRole('button', { name: 'Lay again' }).click();
  await goTo(page, 'Fit');
  await goTo(page, 'Cloth');
  await expect(strip(page)).toContainText(/Takes\s61\sin/);
  await expect(strip(page).getByRole('button', { name: 'Lay again' })).toBeVisible();
  await expect(page.getByText('Kept on this device')).toBeVisible();
  await page.reload();
  await goTo(page, 'Cloth');
  await expect(strip(page)).toContainText(/Takes\s61\sin/);
});

test('with more than forty pieces on the cloth the page stays live while they are laid, and stops within 200 ms', {
  tag: '@alone',
}, async ({ page }) => {
  const trouble = listenForTrouble(page);
  await withCloth(page, '45');
  await notebook(page).getByRole('radio', { name: 'opened out' }).check();
  await notebook(page)
    .getByRole('heading', { name: /^Placket strip/ })
    .click();
  await write(page, 'How many', '23');
  await notebook(page).getByRole('button', { name: 'Facing strip', exact: true }).click();
  await notebook(page)
    .getByRole('heading', { name: /^Facing strip/ })
    .click();
  const many = notebook(page).getByLabel('How many', { exact: true }).last();
  await many.fill('19');
  await many.press('Enter');
  await notebook(page).getByRole('radio', { name: '1 minute' }).check();
  await page.evaluate(() => {
    const seen = { frames: [] as number[], tasks: [0], last: performance.now() };
    Object.assign(window, { seen });
    new PerformanceObserver((list) => {
      for (const { duration } of list.getEntries()) seen.tasks.push(duration);
    }).observe({ entryTypes: ['longtask'] });
    const frame = (now: number) => {
      seen.frames.push(now - seen.last);
      seen.last = now;
      requestAnimationFrame(frame);
    };
    requestAnimationFrame(frame);
  });
  await strip(page).getByRole('button', { name: 'Lay the pieces' }).click();
  await expect(strip(page)).toContainText(/Takes\s\d/, { timeout: 20_000 });
  await page.waitForTimeout(12_000);
  const stopped = await page.evaluate(async () => {
    const region = document.querySelector('section[aria-label="The lay"]');
    const stop = [...(region?.querySelectorAll('button') ?? [])].find((one) => one.textContent === 'Stop');
    const begun = performance.now();
    stop?.click();
    while (region?.querySelector('progress')) await new Promise((resolve) => requestAnimationFrame(resolve));
    return { took: performance.now() - begun, was: stop !== undefined };
  });
  const seen = await page.evaluate(() => {
    const { frames, tasks } = (window as unknown as { seen: { frames: number[]; tasks: number[] } }).seen;
    const inOrder = [...frames].sort((a, b) => a - b);
    return { count: frames.length, middle: inOrder[inOrder.length >> 1], longestTask: Math.max(...tasks) };
  });
  expect(stopped.was).toBe(true);
  expect(stopped.took).toBeLessThan(200);
  expect(seen.count).toBeGreaterThan(120);
  expect(seen.middle, 'a frame, in ms').toBeLessThan(50);
  // Measured 110 to 290 ms on a machine that ten others wanted.
  expect(seen.longestTask, 'the longest task of the page while laying, in ms').toBeLessThan(500);

  await expect(strip(page)).toContainText('No overlaps');
  const { garment } = await savedGarment(page);
  const [cloth] = garment.cloths ?? [];
  const standing = cloth && layStanding(garment, cloth);
  expect(standing?.lay.placed.length).toBeGreaterThan(40);
  expect(standing?.faults).toEqual([]);
  expect(trouble).toEqual([]);
});

test('cloth a little short: a piece is cut apart along its grain where she is told, and the line is there', async ({
  page,
}) => {
  await withCloth(page, '39');
  await notebook(page).getByRole('radio', { name: 'opened out' }).check();
  await write(page, 'Length at hand', '57 in');
  await layAll(page);
  await expect(strip(page)).toContainText(/Fits in the 57\sin you have: no, .* short/);
  await notebook(page).getByRole('button', { name: 'What would make it fit?' }).click();
  const found = notebook(page).getByText(
    /Panel cut apart along its grain, .* from its outermost edge\. The part joined on/,
  );
  await expect(found).toBeVisible({ timeout: 90_000 });
  await notebook(page).getByRole('button', { name: 'Join it there' }).click();
  await expect(strip(page)).toContainText(/Fits in the 57\sin you have: yes/);
  await expect(strip(page)).toContainText('No overlaps');
  await expect(notebook(page).getByText('Panel is cut in two and joined.')).toBeVisible();
  const { garment } = await savedGarment(page);
  const [cloth] = garment.cloths ?? [];
  expect(cloth && layStanding(garment, cloth)?.faults).toEqual([]);
  expect(cloth?.pieced).toHaveLength(1);
});

test('narrow cloth refuses the bias and says what would do; a remnant, a budget, strips, and the list before cutting', async ({
  page,
}) => {
  await withCloth(page, '36');
  await notebook(page).getByRole('radio', { name: 'bias', exact: true }).check();
  await expect(notebook(page).getByText(/Panel takes .* across, and the cloth has .* as it lies\.$/)).toBeVisible();
  await notebook(page).getByRole('button', { name: 'Lay it on the straight' }).click();
  await layAll(page);
  await expect(strip(page)).toContainText('No overlaps');

  await test.step('coupons of 1941 for this lay', async () => {
    await notebook(page).getByText('Budget', { exact: true }).click();
    await notebook(page)
      .getByRole('button', { name: /^Other cloth: 2 a yard/ })
      .click();
    // 61 in is bought as 1 3/4 yd; at 2 coupons a yard that is 3 1/2.
    await expect(notebook(page).getByText('3.50 coupons').first()).toBeVisible();
  });

  await test.step('it is told before she cuts, and told anew when a piece has changed', async () => {
    await openToAll(page, 'the Cloth room');
    await goTo(page, 'Before you cut');
    await expect(page.getByText(/takes 61\sin of the 90\sin at hand/)).toBeVisible();
  });

  await test.step('a remnant too small is said to be so', async () => {
    await goTo(page, 'Cloth');
    await notebook(page).getByRole('button', { name: 'Remnant' }).first().click();
    await expect(notebook(page).getByLabel('Which cloth')).toHaveValue(/.+/);
    await notebook(page).getByRole('checkbox', { name: 'Panel' }).check();
    await expect(
      notebook(page).getByText(/Panel takes .* across, and the cloth has 18\sin as it lies\.$/),
    ).toBeVisible();
  });
});
