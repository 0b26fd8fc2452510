import { expect, type Locator, type Page, test } from '@playwright/test';
import { openDemo } from './demo';
import { openToAll } from './open-to-all';
import { goTo } from './room';
import { listenForTrouble } from './trouble';

const SIZES = [
  { width: 1440, height: 900 },
  { width: 1024, height: 768 },
  { width: 390, height: 844 },
] as const;

const button = (name: string | RegExp) => (page: Page) => page.getByRole('button', { name }).first();
const radio = (name: string) => (page: Page) => page.getByRole('radio', { name, exact: true });

interface Room {
  readonly name: string;
  readonly table?: readonly ((page: Page) => Locator)[];
  readonly notebook?: readonly ((page: Page) => Locator)[];
}

/** Every room and what one comes to it for, in sight without any scrolling; on a phone the notebook may be folded away. */
const ROOMS: readonly Room[] = [
  { name: 'Wearer', notebook: [(page) => page.getByLabel('Name or nickname'), radio('inches')] },
  {
    name: 'Diagram',
    table: [
      (page) => page.getByRole('application'),
      radio('As photographed'),
      radio('Squared up'),
      button('Show everything'),
    ],
    notebook: [radio('Four corners')],
  },
  {
    name: 'Draft',
    table: [
      radio('Adjust'),
      radio('Trace a piece'),
      radio('Mark'),
      button('Nearer'),
      button('Farther'),
      button('Show everything'),
    ],
    notebook: [button(/^Panel/)],
  },
  { name: 'Reshape', table: [(page) => page.getByRole('application'), button('Show everything')] },
  {
    name: 'Seams',
    table: [(page) => page.getByRole('application'), button('Show everything')],
    notebook: [(page) => page.getByText('No seam is paired yet.')],
  },
  {
    name: 'Fit',
    table: [button('Show everything')],
    notebook: [(page) => page.getByText(/short of the ease wanted at the waist/)],
  },
  {
    name: 'Mock-up',
    table: [(page) => page.getByRole('application'), button('Show everything')],
    notebook: [button('Cut a mock-up')],
  },
  {
    name: 'Versions',
    table: [button('Show everything')],
    notebook: [(page) => page.getByText('The draft is not kept as a version yet.')],
  },
  {
    name: 'Compare',
    table: [(page) => page.getByRole('application'), button('Let them change places'), button('Show everything')],
    notebook: [(page) => page.getByLabel('With a piece of')],
  },
  {
    name: 'Cloth',
    table: [(page) => page.getByRole('application'), button('Lay the pieces'), button('Show everything')],
    notebook: [(page) => page.getByLabel('Width, selvedges counted')],
  },
  {
    name: 'Paper',
    notebook: [button('Make the pages (PDF)'), (page) => page.getByRole('checkbox', { name: 'Panel' })],
  },
  {
    name: 'Before you cut',
    table: [(page) => page.getByRole('heading', { name: 'Before you cut' }), button('Print this list (PDF)')],
  },
];

for (const [size, colorScheme] of SIZES.flatMap((size) => [[size, 'light'] as const, [size, 'dark'] as const])) {
  test.describe(`at ${size.width} × ${size.height}, ${colorScheme}`, () => {
    test.use({ viewport: size, colorScheme });

    test('every room is whole, quiet and open to all', async ({ page }) => {
      const trouble = listenForTrouble(page);
      await page.goto('/');
      const starts = [/Start from a picture/, /Try the demo garment/].map((name) => page.getByRole('button', { name }));
      await inSight([...starts, page.getByText('Open a file')]);
      await wholeAndOpen(page, 'the empty shelf');
      await openDemo(page);
      for (const { name, table = [], notebook = [] } of ROOMS) {
        await test.step(name, async () => {
          await goTo(page, name);
          await expect(page.getByRole('navigation').getByRole('button', { name })).toBeInViewport();
          await inSight(table.map((control) => control(page)));
          const folded = page.getByRole('button', { name: 'Open the notebook' });
          if (await folded.isVisible()) {
            await wholeAndOpen(page, `${name}, with the notebook folded`);
            await folded.click();
          }
          await inSight(notebook.map((control) => control(page)));
          await wholeAndOpen(page, name);
        });
      }
      await page.getByRole('banner').getByRole('button').first().click();
      await inSight([page.getByRole('button', { name: /^Save .* to a file/ })]);
      await wholeAndOpen(page, 'the shelf with a garment');
      expect.soft(trouble, 'nothing on the console').toEqual([]);
    });
  });
}

test('what opens inside the rooms is open to all as well', async ({ page }) => {
  const trouble = listenForTrouble(page);
  await openDemo(page);
  const notebook = page.getByRole('complementary', { name: 'Notebook' });
  await test.step('a piece, its edges, points and marks', async () => {
    await notebook.getByRole('button', { name: 'Panel' }).click();
    await notebook.getByRole('heading', { name: /^Points and edges/ }).click();
    for (const chosen of ['side seam', 'Corner 2', 'curve point 1 of side seam', 'Grain line'] as const) {
      const line = notebook.getByRole('button', { name: chosen, exact: true }).first();
      await line.click();
      await expect(line).toHaveAttribute('aria-pressed', 'true');
      await wholeAndOpen(page, chosen);
    }
    await page.getByRole('radio', { name: 'Mark' }).check();
    await wholeAndOpen(page, 'marking');
    await page.getByRole('radio', { name: 'Trace a piece' }).check();
    await notebook.getByLabel('Across', { exact: true }).fill('no length');
    await notebook.getByLabel('Across', { exact: true }).press('Enter');
    await expect(notebook.getByText(/not a length I can read/)).toBeVisible();
    await wholeAndOpen(page, 'tracing, with a sentence under a field');
  });
  await test.step('the diagram by numbers', async () => {
    await goTo(page, 'Diagram');
    await page.getByText('The corners as numbers').click();
    for (const ends of await page.getByText('Its ends as numbers').all()) await ends.click();
    await page.getByRole('button', { name: 'Draw a known length' }).click();
    await wholeAndOpen(page, 'drawing a known length');
    await page.getByRole('button', { name: 'Place it by numbers' }).click();
    await page.getByRole('radio', { name: 'a share of a measure' }).first().check();
    await wholeAndOpen(page, 'a new known length');
  });
  await test.step('every measure there is', async () => {
    await goTo(page, 'Wearer');
    for (const group of await page.getByRole('heading', { name: /^More, / }).all()) await group.click();
    await page.getByLabel('Waist', { exact: true }).fill('60');
    await page.getByLabel('Waist', { exact: true }).press('Enter');
    await expect(page.getByText(/of 1,986 women measured/).first()).toBeVisible();
    await wholeAndOpen(page, 'all measures');
  });
  await test.step('a question on the shelf', async () => {
    await page.getByRole('banner').getByRole('button').first().click();
    await page.getByRole('button', { name: /^Take .* off the shelf$/ }).click();
    await wholeAndOpen(page, 'taking a garment off the shelf');
  });
  expect.soft(trouble, 'nothing on the console').toEqual([]);
});

/** In the window as it stands, and nothing lies over it. */
async function inSight(controls: readonly Locator[]): Promise<void> {
  for (const control of controls) {
    await expect(control).toBeInViewport({ ratio: 0.5 });
    const covered = await control.evaluate((element) => {
      const label = element instanceof HTMLInputElement ? element.labels?.[0] : undefined;
      const { left, top, width, height } = element.getBoundingClientRect();
      const there = document.elementFromPoint(left + width / 2, top + height / 2);
      return !(there && (element.contains(there) || there.contains(element) || label?.contains(there)));
    });
    expect.soft(covered, `${control} lies under something else`).toBe(false);
  }
}

/** The page fits its window, only its parts scroll, and axe finds nothing. */
async function wholeAndOpen(page: Page, where: string): Promise<void> {
  const overhang = await page.evaluate(() => {
    const { scrollWidth, scrollHeight, clientWidth, clientHeight } = document.documentElement;
    return { across: scrollWidth - clientWidth, down: scrollHeight - clientHeight };
  });
  expect.soft(overhang, `the page does not scroll: ${where}`).toEqual({ across: 0, down: 0 });
  await openToAll(page, where);
}
