import { expect, type Page, test } from '@playwright/test';
import { writeProject } from '../app/storage/project-file';
import { outlineOf } from '../core/garment/outline';
import { pathAtLength } from '../core/geometry/path';
import { movedIn } from '../tests/mockup/moved';
import { edges, skirt } from '../tests/mockup/three-panels';
import { fittedCanvas } from './canvas';
import { openToAll } from './open-to-all';
import { goTo, savedGarment } from './room';
import { listenForTrouble } from './trouble';

const notebookOf = (page: Page) => page.getByRole('complementary', { name: 'Notebook' });
const press = (page: Page, name: string | RegExp) => page.getByRole('button', { name, exact: true }).click();

/** Puts the skirt of three panels on the shelf from its file and goes to its mock-ups. */
async function openSkirt(page: Page): Promise<void> {
  const file = Buffer.from(writeProject({ garment: { ...skirt, name: 'Three panels' }, versions: [], photos: [] }));
  await page.goto('/');
  await page
    .getByLabel('Open a file')
    .setInputFiles({ name: 'skirt.inchsquare.zip', mimeType: 'application/zip', buffer: file });
  await expect(page.getByRole('navigation')).toBeVisible();
  await goTo(page, 'Mock-up');
}

/** Everything on the table lies in this box, with the room the table leaves round it. */
const ALL = { minX: -60, minY: -60, maxX: 1080, maxY: 760 };

/** A place along an edge of one of the panels. */
function placeOn(edge: { readonly pieceId: string; readonly edgeId: string }, along: number) {
  const piece = skirt.pieces.find(({ id }) => id === edge.pieceId);
  const path = piece && outlineOf(piece).edges[piece.edges.findIndex(({ id }) => id === edge.edgeId)];
  if (!path) throw new Error('no such edge');
  return pathAtLength(path, along).point;
}

test('a mock-up is cut, pins are noted, printing tells what is outstanding, and carrying over settles it', async ({
  page,
}) => {
  const trouble = listenForTrouble(page);
  await openSkirt(page);
  const notebook = notebookOf(page);

  await test.step('cut it: the draft is kept as version 1', async () => {
    await press(page, 'Cut a mock-up');
    await expect(page.getByRole('status')).toContainText('Mock-up 1 is cut from version 1.');
    await expect(notebook.getByText('Mock-up 1: nothing noted yet')).toBeVisible();
  });

  await test.step('note a pin on the front seam by pressing along its edge', async () => {
    const seen = await fittedCanvas(page, ALL);
    const first = seen(placeOn(edges.front, 300));
    await page.mouse.click(first.x, first.y);
    await expect(notebook.getByRole('heading', { name: 'Pinned along an edge' })).toBeVisible();
    const at = seen(placeOn(edges.front, 25.4 * 6));
    await page.mouse.click(at.x, at.y);
    await expect(notebook.getByLabel('Below the waist', { exact: true })).toHaveValue('6 in');
    await press(page, 'How much, of the seam in all: 1/8 in more');
    await press(page, 'How much, of the seam in all: 1/8 in more');
    await press(page, 'How much, of the seam in all: 1/8 in more');
    await notebook.locator('summary').filter({ hasText: 'Where it fades to nothing' }).click();
    const before = notebook.getByLabel('Before the pins, at', { exact: true });
    await before.fill('1');
    await before.press('Enter');
    const after = notebook.getByLabel('After the pins, at', { exact: true });
    await after.fill('10 1/2');
    await after.press('Enter');
    await notebook.getByLabel('Note', { exact: true }).fill('She stood straight');
    await expect(
      notebook.getByText(
        'front, edge 2 (front seam): taken in by 1/2 in at 6 in below the waist, fading to nothing at 1 in below the waist and at 10 1/2 in below the waist; both sides of the body.',
      ),
    ).toBeVisible();
    await press(page, 'Note it');
    await expect(notebook.getByText('Noted, not yet in the draft')).toBeVisible();
  });

  await test.step('and a second from the list, let out on the gore alone, with a photo', async () => {
    await press(page, 'In or out along an edge');
    await notebook.getByLabel('Which edge').selectOption({ label: 'gore: edge 2' });
    await press(page, 'Another pin');
    const place = notebook.getByLabel('Below the waist', { exact: true });
    await place.fill('15');
    await place.press('Enter');
    await notebook.getByRole('radio', { name: 'let out' }).check();
    await notebook.getByRole('radio', { name: 'gore: edge 2 alone' }).check();
    await notebook
      .getByLabel('Choose a photo')
      .setInputFiles({ name: 'fitting.jpg', mimeType: 'image/jpeg', buffer: await photo(page) });
    await expect(notebook.getByRole('img')).toBeVisible();
    await press(page, 'Note it');
    await expect(notebook.getByText('Mock-up 1: 2 noted')).toBeVisible();
  });

  await test.step('a third is declined with a reason', async () => {
    await press(page, 'Longer or shorter');
    await notebook.getByRole('radio', { name: 'shorter' }).check();
    await press(page, 'Note it');
    await press(page, 'Decline: Change 3');
    await expect(page.getByRole('button', { name: 'Decline it' })).toBeDisabled();
    await notebook.getByLabel('Why it is not carried over').fill('The shoes were too low');
    await notebook.getByLabel('Why it is not carried over').press('Enter');
    await press(page, 'Decline it');
    await expect(notebook.getByText(/Declined on .*: The shoes were too low/)).toBeVisible();
  });

  await test.step('printing tells which are outstanding, and leads to them', async () => {
    await goTo(page, 'Paper');
    await press(page, 'Make the pages (PDF)');
    const told = page.getByRole('region', { name: 'Pinned, but not in these pages' });
    await expect(told.getByText('2 changes pinned on mock-ups are neither carried over nor declined')).toBeVisible();
    await expect(told.getByRole('listitem')).toHaveCount(2);
    await expect(told.getByRole('listitem').first()).toContainText('Mock-up 1. front, edge 2 (front seam): taken in');
    await expect(told.getByRole('listitem').nth(1)).toContainText('let out by 1/8 in at 15 in below the waist');
    await goTo(page, 'Before you cut');
    await expect(page.getByText(/Mock-up 1: 2 pinned changes are neither carried over nor declined/)).toBeVisible();
    await goTo(page, 'Paper');
    await press(page, 'Make the pages (PDF)');
    await press(page, 'To the mock-up');
  });

  await test.step('carried over one by one, each shown first', async () => {
    await press(page, 'One by one');
    await expect(notebook.getByText('Round the hip', { exact: true })).toBeVisible();
    await expect(notebook.getByText('1 more comes after this one, taken or left.')).toBeVisible();
    await press(page, 'Take it');
    await expect(notebook.getByText(/let out by 1\/8\sin/)).toBeVisible();
    await press(page, 'Take it');
    await expect(notebook.getByText(/Carried over on/)).toHaveCount(2);
    await expect(notebook.getByText('Mock-up 1: all settled')).toBeVisible();
  });

  await test.step('a step of undo takes back the change and its mark together', async () => {
    await press(page, 'Undo: carry over a pinned change');
    await expect(notebook.getByText('Mock-up 1: 1 noted')).toBeVisible();
    await press(page, 'Do again: carry over a pinned change');
    await expect(notebook.getByText('Mock-up 1: all settled')).toBeVisible();
  });

  await test.step('now the pages are made without a word', async () => {
    await goTo(page, 'Paper');
    const [file] = await Promise.all([page.waitForEvent('download'), press(page, 'Make the pages (PDF)')]);
    expect(file.suggestedFilename()).toContain('pages');
  });

  await test.step('a piece changed after that makes its pages stale, and she is told which', async () => {
    await expect(
      notebook.getByText(
        'The newest pages of every piece are as the draft is now. Older ones, with another mark, are not to be used.',
      ),
    ).toBeVisible();
    await goTo(page, 'Fit');
    const front = page.getByRole('region', { name: 'front' });
    await front.getByRole('button', { name: 'Take the curved waist' }).click();
    await goTo(page, 'Before you cut');
    await expect(page.getByText(/Pages? .*[A-Z]\d.* of front (is|are) out of date/)).toBeVisible();
    await press(page, 'Undo: curved waist');
    await expect(page.getByText(/of front (is|are) out of date/)).toBeHidden();
    await goTo(page, 'Mock-up');
  });

  await test.step('and the file has each edge moved by its share', async () => {
    const { garment } = await savedGarment(page);
    const there = skirt.pieces.map(({ id }) => id);
    const moved = { ...garment, pieces: garment.pieces.map((piece, i) => ({ ...piece, id: there[i] ?? piece.id })) };
    expect(Math.abs(movedIn(skirt, moved, edges.front, 25.4 * 6) - 25.4 / 4)).toBeLessThan(0.1);
    expect(Math.abs(movedIn(skirt, moved, edges.goreBack, 25.4 * 15) + 25.4 / 8)).toBeLessThan(0.1);
    expect(Math.abs(movedIn(skirt, moved, edges.back, 300))).toBeLessThan(0.1);
    expect(garment.mockups?.[0]).toMatchObject({ version: 1, pinned: [{ note: 'She stood straight' }, {}, {}] });
    expect(garment.mockups?.[0]?.pinned.map(({ state }) => state.kind)).toEqual(['carried', 'carried', 'declined']);
  });
  expect.soft(trouble, 'nothing on the console').toEqual([]);
});

test('what is for one side only is not carried into pieces cut for both, and the pages can be made all the same', async ({
  page,
}) => {
  await openSkirt(page);
  const notebook = notebookOf(page);
  await press(page, 'Cut a mock-up');
  await press(page, 'In or out along an edge');
  await notebook.getByLabel('Which edge').selectOption({ label: 'back: edge 4' });
  await press(page, 'Another pin');
  await notebook.getByRole('radio', { name: 'her left' }).check();
  await press(page, 'Note it');
  await press(page, 'Carry it over');
  await expect(notebook.getByText(/meant for one side of the body, but .*back is cut for both/)).toBeVisible();
  await expect(page.getByRole('button', { name: 'Take it' })).toBeDisabled();
  await press(page, 'Leave it as it was');
  await goTo(page, 'Paper');
  await press(page, 'Make the squares sheets (PDF)');
  const [file] = await Promise.all([page.waitForEvent('download'), press(page, 'Make the pages all the same')]);
  expect(file.suggestedFilename()).toContain('squares');
});

for (const size of [
  { width: 1024, height: 768 },
  { width: 390, height: 844 },
] as const) {
  test.describe(`at ${size.width} × ${size.height}`, () => {
    test.use({ viewport: size, hasTouch: true });
    test('a fitting is noted with one thumb, nothing typed, and all of it is open to all', async ({ page }) => {
      await openSkirt(page);
      const notebook = notebookOf(page);
      await page.getByRole('button', { name: 'Cut a mock-up' }).tap();
      await expect(notebook.getByText('Nothing is noted yet', { exact: false })).toBeVisible();
      const seen = await fittedCanvas(page, ALL);
      const edge = seen(placeOn(edges.back, 400));
      await page.touchscreen.tap(edge.x, edge.y);
      await expect(notebook.getByRole('heading', { name: 'Pinned along an edge' })).toBeVisible();
      await page.touchscreen.tap(edge.x, edge.y);
      const more = page.getByRole('button', { name: 'How much, of the seam in all: 1/8 in more' });
      await expect(more).toBeInViewport();
      const box = await more.boundingBox();
      expect(Math.min(box?.width ?? 0, box?.height ?? 0)).toBeGreaterThanOrEqual(44);
      await more.tap();
      await page.getByRole('button', { name: 'Below the waist: 1/2 in less' }).tap();
      await openToAll(page, 'noting');
      await expect(page.getByRole('button', { name: 'Note it' })).toBeInViewport();
      await page.getByRole('button', { name: 'Note it' }).tap();
      await expect(notebook.getByText(/taken in by 1\/4\sin at/)).toBeVisible();
      await openToAll(page, 'what was pinned');
      await page.getByRole('button', { name: 'Carry it over' }).tap();
      await expect(page.getByRole('button', { name: 'Take it' })).toBeEnabled();
      await openToAll(page, 'carrying over');
    });
  });
}

/** A small picture, made by the browser itself. */
async function photo(page: Page): Promise<Buffer> {
  const address = await page.evaluate(() => {
    const canvas = document.createElement('canvas');
    canvas.width = 70;
    canvas.height = 110;
    const pen = canvas.getContext('2d');
    if (pen) pen.fillStyle = '#fbf6ea';
    pen?.fillRect(0, 0, 70, 110);
    if (pen) pen.fillStyle = '#1f5c8c';
    pen?.fillRect(10, 20, 30, 40);
    return canvas.toDataURL('image/jpeg');
  });
  return Buffer.from(address.slice(address.indexOf(',') + 1), 'base64');
}
