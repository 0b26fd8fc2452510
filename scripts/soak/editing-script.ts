import type { Page } from '@playwright/test';

/** One thing done on the screen; each is one entry of the journal. */
export interface Done {
  readonly what: string;
  /** When it stood on the screen at the latest, in milliseconds: taken before the key that takes it. */
  readonly at: number;
  /** What the Waist field showed after it, where it was in sight. */
  readonly waist?: string;
}

type Random = () => number;

/** Changes the demo garment by hand and at random until it is stopped by the end of the browser; `done` grows. */
export async function editOnAndOn(page: Page, random: Random, done: Done[]): Promise<never> {
  for (;;) {
    const edit = pick(EDITS, random);
    await edit(page, random, done);
    if (random() < 0.3) await page.waitForTimeout(random() * 400);
  }
}

const EDITS = [measure, measure, measure, takeBack, takeBack, doAgain, corner, corner, rename, photo] as const;

async function measure(page: Page, random: Random, done: Done[]): Promise<void> {
  await room(page, 'Wearer');
  const name = pick(['Waist', 'Hip'], random);
  const field = page.getByLabel(name, { exact: true });
  const before = await field.inputValue();
  const value = `${(name === 'Waist' ? 24 : 36) + Math.floor(random() * 12)} ${pick(['1/8', '3/8', '5/8', '7/8'], random)}`;
  if (`${value} in` === before) return;
  await field.fill(value);
  await takenWith(page, done, name, () => field.press('Enter'));
}

async function takeBack(page: Page, _: Random, done: Done[]): Promise<void> {
  const button = page.getByRole('button', { name: /^Undo: / });
  if (await button.isVisible()) await takenWith(page, done, 'undo', () => button.click());
}

async function doAgain(page: Page, _: Random, done: Done[]): Promise<void> {
  const button = page.getByRole('button', { name: /^Do again: / });
  if (await button.isVisible()) await takenWith(page, done, 'redo', () => button.click());
}

async function corner(page: Page, random: Random, done: Done[]): Promise<void> {
  await room(page, 'Draft');
  const notebook = page.getByRole('complementary', { name: 'Notebook' });
  const field = notebook.getByLabel('Corner 2, across');
  if (!(await field.isVisible())) {
    await notebook
      .getByRole('button', { name: /^Panel/ })
      .first()
      .click();
    await notebook.getByRole('heading', { name: /^Points and edges/ }).click();
  }
  const value = `${6 + Math.floor(random() * 3)} ${pick(['1/8', '3/8', '5/8', '7/8'], random)}`;
  if (`${value} in` === (await field.inputValue())) return;
  await field.fill(value);
  await takenWith(page, done, 'corner', () => field.press('Enter'));
}

/** Words are taken a short rest after the last letter, with nothing pressed. */
async function rename(page: Page, random: Random, done: Done[]): Promise<void> {
  await page.getByRole('banner').getByRole('button').first().click();
  const field = page.getByLabel('Name of the garment on the table');
  const value = `Linden ${Math.floor(random() * 1e9)}`;
  await takenWith(page, done, 'name', () => field.fill(value));
  await page.waitForTimeout(600);
}

async function photo(page: Page, random: Random, done: Done[]): Promise<void> {
  if (random() < 0.7) return;
  await room(page, 'Diagram');
  await page.getByLabel('Add another diagram').setInputFiles('public/demo/linden-plate.jpg');
  await page.getByRole('button', { name: 'Undo: bring in a diagram' }).waitFor();
  done.push({ what: 'photo', at: Date.now() });
}

async function takenWith(page: Page, done: Done[], what: string, press: () => Promise<void>): Promise<void> {
  const at = Date.now();
  await press();
  const field = page.getByLabel('Waist', { exact: true });
  const waist = (await field.isVisible()) ? await field.inputValue() : undefined;
  done.push({ what, at, ...(waist === undefined ? {} : { waist }) });
}

async function room(page: Page, name: string): Promise<void> {
  await page.getByRole('navigation').getByRole('button', { name }).click();
}

function pick<Item>(items: readonly Item[], random: Random): Item {
  return items[Math.floor(random() * items.length)] as Item;
}
