import { readFile } from 'node:fs/promises';
import { expect, type Locator, type Page, test } from '@playwright/test';
import { lindenFrame } from '../app/demo/linden-panel';
import { readProject } from '../app/storage/project-file';
import { outlineOf } from '../core/garment/outline';
import { flattenPath } from '../core/geometry/flatten';
import { nearestOnPath } from '../core/geometry/path';
import type { Hand } from './by-hand';
import { lindenTruth } from './linden-truth';

/** The wearer's measures, by their labels, in inches. */
export const MEASURES = [
  ['Waist', '28'],
  ['High hip', '34 1/2'],
  ['Hip', '38'],
  ['Waist to hip', '8'],
  ['Waist to knee', '23'],
] as const;

/** What is done on the picture and on the table itself, where hands and keys differ most. */
export interface OnTheTable {
  /** Puts the four corners onto the printed frame. */
  squareUp(): Promise<void>;
  /** Draws a line between two corners of the panel, counted from the waist at the fold; how long it is, is not yet said. */
  drawLine(from: number, to: number): Promise<void>;
  /** Sets the ends of the lines to their pixels, where they were not put there by hand. */
  mendLines?(): Promise<void>;
  /** Puts down the points of the panel, and closes it. */
  trace(): Promise<void>;
}

/** The whole job with one kind of hand, from the picture to the pages and the file. Gives how far the trace is off, in mm. */
export async function wholeJob(page: Page, hand: Hand, table: OnTheTable): Promise<number> {
  const notebook = page.getByRole('complementary', { name: 'Notebook' });
  const button = (name: string | RegExp, within: Page | Locator = page) =>
    within.getByRole('button', { name, exact: true });
  const field = (label: string) => notebook.getByLabel(label, { exact: true });
  const goTo = (room: string) => hand.press(page.getByRole('navigation').getByRole('button', { name: room }));
  const saved = (what: Locator) => Promise.all([page.waitForEvent('download', { timeout: 60_000 }), hand.press(what)]);

  await page.goto('/');
  await test.step('bring in the picture', async () => {
    await hand.press(page.getByRole('button', { name: /^Start from a picture/ }));
    const [chooser] = await Promise.all([
      page.waitForEvent('filechooser'),
      hand.press(page.getByRole('button', { name: 'Choose a picture' })),
    ]);
    await chooser.setFiles('public/demo/linden-plate.jpg');
    await expect(page.getByRole('heading', { name: /Square up/ })).toBeVisible();
  });

  await test.step('measure the wearer', async () => {
    await goTo('Wearer');
    for (const [label, value] of MEASURES) await hand.write(page.getByLabel(label, { exact: true }), value);
  });

  await test.step('square the picture up and give a known length', async () => {
    await goTo('Diagram');
    await table.squareUp();
    for (const [from, to, length] of [
      [0, 1, '7'],
      [0, 3, '28'],
    ] as const) {
      await hand.press(button('Draw a known length'));
      await table.drawLine(from, to);
      await hand.write(field('At full size').first(), length);
    }
    await table.mendLines?.();
    await expect(page.getByText('Good enough to trace.')).toBeVisible();
  });

  await test.step('trace the panel', async () => {
    await goTo('Draft');
    await hand.choose(page.getByRole('radio', { name: 'Trace a piece' }));
    await hand.toggle(page.getByLabel('Snap to the squares'));
    await table.trace();
    await hand.write(field('Name'), 'Panel');
    await hand.pick(field('Cut'), 'on the fold');
    await hand.write(field('Pieces of cloth'), '2');
    await hand.choose(notebook.getByRole('radio', { name: 'the stitch line' }));
    await hand.press(notebook.locator('summary').filter({ hasText: 'Points and edges' }));
    for (const [edge, role, allowance] of [
      ['edge 1', 'the waist', '1/2'],
      ['edge 2', 'a seam', '3/4'],
      ['edge 3', 'a hem', '2'],
      ['edge 4', 'a fold of the cloth', ''],
    ] as const) {
      await hand.press(button(edge, notebook));
      await hand.pick(notebook.getByLabel('It is'), role);
      if (allowance) await hand.write(field('Allowance'), allowance);
    }
  });

  await test.step('longer by an inch and a half', async () => {
    await goTo('Reshape');
    await hand.press(notebook.getByRole('button', { name: /^Lengthen or shorten/ }));
    await hand.write(field('By'), '1 1/2');
    await hand.press(button('Take it', notebook));
    await expect(page.getByRole('status')).toContainText('Done: lengthen');
  });

  await test.step('sewn to its neighbour', async () => {
    await goTo('Seams');
    await hand.press(notebook.getByRole('button', { name: /^Pair/ }).first());
    await expect(notebook.getByText('No seam is paired yet.')).toBeHidden();
  });

  await test.step('the curved waist', async () => {
    await goTo('Fit');
    await hand.press(button('Take every piece that has a waist'));
    await hand.press(button('Take the curved waist'));
    await expect(page.getByText(/already the one the body needs/)).toBeVisible();
  });

  await test.step('a mock-up, and what was pinned on it carried over', async () => {
    await goTo('Mock-up');
    await hand.press(button('Cut a mock-up'));
    await hand.press(button('Longer or shorter'));
    await hand.choose(notebook.getByRole('radio', { name: 'shorter' }));
    await hand.press(button('Note it'));
    await hand.press(button('Carry it over'));
    await hand.press(button('Take it'));
    await expect(notebook.getByText('Mock-up 1: all settled')).toBeVisible();
  });

  await test.step('beside what was traced', async () => {
    await goTo('Compare');
    await expect(page.getByText(/Largest gap/).first()).toBeVisible();
    await hand.pick(field('With a piece of'), 'a draft from the wearer’s measures');
    await expect(notebook.getByRole('table')).toBeVisible();
  });

  await test.step('laid on the cloth', async () => {
    await goTo('Cloth');
    await hand.press(page.getByRole('button', { name: /^39\sin$/ }));
    await hand.write(field('Length at hand').first(), '90');
    const strip = page.getByRole('region', { name: 'The lay' });
    await hand.press(strip.getByRole('button', { name: 'Lay the pieces' }));
    await expect(strip.getByRole('button', { name: 'Lay again' })).toBeVisible({ timeout: 40_000 });
    await expect(strip).toContainText('No overlaps');
  });

  await test.step('printed, and looked over', async () => {
    await goTo('Paper');
    await hand.choose(page.getByRole('radio', { name: 'A4', exact: true }));
    const [pages] = await saved(button('Make the pages (PDF)'));
    expect(pages.suggestedFilename()).toMatch(/pages.*\.pdf$/);
    const [squares] = await saved(button('Make the squares sheets (PDF)'));
    expect(squares.suggestedFilename()).toMatch(/squares.*\.pdf$/);
    await goTo('Before you cut');
    await expect(page.getByText('The printed scale is not proved yet.', { exact: false })).toBeVisible();
    const [list] = await saved(button('Print this list (PDF)'));
    expect(list.suggestedFilename()).toMatch(/before-you-cut\.pdf$/);
  });

  return test.step('filed, and as true as it was traced', async () => {
    await hand.press(page.getByRole('banner').getByRole('button').first());
    const [file] = await saved(page.getByRole('button', { name: /^Save .* to a file$/ }).first());
    const reading = readProject(new Uint8Array(await readFile(await file.path())));
    if (reading.kind !== 'project') throw new Error(`the saved file reads as ${reading.kind}`);
    const traced = reading.project.garment.traced?.[0];
    if (!traced) throw new Error('the file has the piece as it was traced');
    const drawn = lindenTruth({ dx: -lindenFrame[0].x, dy: -lindenFrame[0].y });
    const outline = outlineOf(traced).whole;
    const off = (from: typeof drawn, to: typeof drawn) =>
      Math.max(...flattenPath(from, 0.05).map((point) => nearestOnPath(to, point).distance));
    return Math.max(off(outline, drawn), off(drawn, outline));
  });
}
