import AxeBuilder from '@axe-core/playwright';
import { expect, type Page, test } from '@playwright/test';
import { inches } from '../core/units/inch';
import { openDemo } from './demo';
import { goTo, savedGarment } from './room';
import { listenForTrouble } from './trouble';

const notebookOf = (page: Page) => page.getByRole('complementary', { name: 'Notebook' });
const press = (page: Page, name: string | RegExp) => page.getByRole('button', { name, exact: true }).click();
const levelOf = (page: Page, name: string) => notebookOf(page).getByRole('region', { name, exact: true });

/** Opens what is folded away under these words. */
async function unfold(page: Page, words: string): Promise<void> {
  await page.locator('summary').filter({ hasText: words }).first().click();
}

async function write(page: Page, label: string, text: string): Promise<void> {
  const field = notebookOf(page).getByLabel(label, { exact: true });
  await field.fill(text);
  await field.press('Enter');
}

test('a level of her own, at a depth, with the body taped just there', async ({ page }) => {
  const trouble = listenForTrouble(page);
  await openDemo(page);
  await goTo(page, 'Fit');
  const notebook = notebookOf(page);

  await test.step('without a depth it is not added', async () => {
    await unfold(page, 'Add a level');
    await press(page, 'Add this level');
    await expect(page.getByRole('status')).toContainText('Write how far from the waist the level lies.');
  });

  await test.step('name, depth and the girth it stands for', async () => {
    const fields = notebook.getByRole('group', { name: 'Add a level' });
    await fields.getByLabel('Name of the level').fill('Placket foot');
    await fields.getByLabel('How far from the waist').fill('5');
    await fields.getByLabel('How far from the waist').press('Enter');
    await fields.getByLabel('The girth it stands for').selectOption({ label: 'High hip' });
    await press(page, 'Add this level');
    const level = levelOf(page, 'Placket foot');
    await expect(level.getByRole('heading')).toContainText('5 in down');
    // Without a tape just there it is held against the high hip, with the ease usual for that.
    await expect(level).toContainText('34 1/2 in');
    await expect(level.getByLabel('Ease wanted')).toHaveValue('1 in');
  });

  await test.step('the body at this very level', async () => {
    await unfold(page, 'Placket foot: where and how it is measured');
    await levelOf(page, 'Placket foot').getByLabel('Body at this very level').fill('36');
    await levelOf(page, 'Placket foot').getByLabel('Body at this very level').press('Enter');
    await expect(levelOf(page, 'Placket foot')).toContainText(/Body, taped at this level\s*36\sin/);
  });

  await test.step('it is kept, and each step is undone by itself', async () => {
    const { garment } = await savedGarment(page);
    const level = garment.rings[0]?.levels.find(({ name }) => name === 'Placket foot');
    expect(level).toMatchObject({ girth: 'highHip', body: inches(36), depth: { kind: 'length', length: inches(5) } });
    await page
      .getByRole('button', { name: /Linden/ })
      .first()
      .click();
    await goTo(page, 'Fit');
    await press(page, 'Undo: level');
    await expect(levelOf(page, 'Placket foot')).not.toContainText('taped at this level');
    await press(page, 'Undo: level added');
    await expect(levelOf(page, 'Placket foot')).toHaveCount(0);
  });
  expect.soft(trouble, 'nothing on the console').toEqual([]);
});

test('the usual ease with its source, taken where there is one', async ({ page }) => {
  await openDemo(page);
  await goTo(page, 'Fit');
  const notebook = notebookOf(page);
  await expect(
    notebook.getByText(/Waist and hip: Central Washington University, costume text, chapter 16/),
  ).toBeVisible();
  await expect(notebook.getByText('The ease wanted at every level is the usual one.')).toBeVisible();
  await unfold(page, 'Add a level');
  const fields = notebook.getByRole('group', { name: 'Add a level' });
  await fields.getByLabel('How far from the waist').fill('23');
  await fields.getByLabel('How far from the waist').press('Enter');
  await fields.getByLabel('The girth it stands for').selectOption({ label: 'Knee' });
  await press(page, 'Add this level');
  await notebook.getByLabel('The garment', { exact: true }).selectOption({ label: 'A slip' });
  await expect(notebook.getByText('Common practice.', { exact: true })).toBeVisible();
  await expect(notebook.getByText('nothing usual; yours stays')).toBeVisible();
  await press(page, 'Take these');
  await expect(page.getByRole('status')).toContainText(
    /The usual ease is written at Waist, High hip and Hip\. There is none for Knee: what stands there stays\./,
  );
  await expect(levelOf(page, 'Hip').getByLabel('Ease wanted')).toHaveValue('2 1/2 in');
  await expect(levelOf(page, 'Waist').getByLabel('Ease wanted')).toHaveValue('1 1/2 in');
  await expect(
    notebook.getByText('The usual ease stands at Waist, High hip and Hip; there is none for Knee.'),
  ).toBeVisible();
});

test('the garment worn over it: the hem is looked at where it hangs', async ({ page }) => {
  await openDemo(page);
  await goTo(page, 'Fit');
  const notebook = notebookOf(page);
  // One panel for front and back: both are read at its fold, the side along its side seam.
  await expect(notebook.getByText('This one is 28 in long there.')).toHaveCount(2);
  await write(page, 'Its length at the front', '29');
  await write(page, 'This one stays shorter by', '1');
  await expect(notebook.getByText('This one is 28 in long there, and may be 28 in.')).toBeVisible();
  await expect(notebook.getByText(/long at the front, under/)).toHaveCount(0);
  await write(page, 'Its length at the front', '28 3/4');
  await expect(notebook.getByText('This one is 28 in long there, and may be 27 3/4 in.')).toBeVisible();
  await expect(notebook.getByText(HEM_SHOWS)).toBeVisible();
  await press(page, 'Nothing is worn over it');
  await expect(notebook.getByText(HEM_SHOWS)).toHaveCount(0);
});

const HEM_SHOWS =
  /28\sin long at the front, under 28\s3\/4\sin: it should stay 1\sin shorter, so take up 1\/4\sin there/;

test('a second ring beside the first, each with its levels, and a piece measured from another edge', async ({
  page,
}) => {
  await openDemo(page);
  await goTo(page, 'Fit');
  const notebook = notebookOf(page);
  await press(page, 'Add more below the waist');
  const which = notebook.getByRole('group', { name: 'Which pieces are looked at' });
  await expect(which.getByRole('radio')).toHaveCount(2);
  await write(page, 'These pieces together are called', 'Under a yoke');
  await expect(which.getByRole('radio', { name: 'Under a yoke' })).toBeChecked();
  await notebook.getByRole('checkbox', { name: 'Panel' }).check();
  await expect(levelOf(page, 'Hip')).toContainText(/The pieces go round\s*40\sin/);

  await test.step('hung 3 in below the waist its hip lies 5 in down the panel', async () => {
    await unfold(page, 'Measured from another edge than the waist');
    await notebook.getByLabel('Its levels are measured from').selectOption({ label: 'waist' });
    await write(page, 'How far from the waist that edge lies', '3');
    // The side passes 8 3/4 in at 4 in down and 10 at 8: 9.09 at 5, four times over.
    await expect(levelOf(page, 'Hip')).toContainText(/The pieces go round\s*36\s3\/8\sin/);
    await expect(levelOf(page, 'Waist')).toContainText('None of these pieces reaches this level.');
  });

  await which.getByRole('radio').first().check();
  await expect(levelOf(page, 'Hip')).toContainText(/The pieces go round\s*40\sin/);
  await expect(levelOf(page, 'Waist')).toContainText(/The pieces go round\s*28\sin/);
});

test('left and right apart, from the tape to the fit', async ({ page }) => {
  await openDemo(page);
  await goTo(page, 'Wearer');
  const notebook = notebookOf(page);

  await test.step('the first half leaves the rest of the whole to the other', async () => {
    await page.getByText('Left and right apart').first().click();
    await write(page, 'Waist, her left half', '28');
    await expect(notebook.getByText(/No more than 27\s13\/16\sin/)).toBeVisible();
    await write(page, 'Waist, her left half', '13 1/2');
    await expect(notebook.getByLabel('Waist, her right half', { exact: true })).toHaveValue('14 1/2 in');
    await expect(notebook.getByLabel('Waist', { exact: true })).toHaveValue('28 in');
  });

  await test.step('the whole taped again keeps their difference', async () => {
    await write(page, 'Waist', '29');
    await expect(notebook.getByLabel('Waist, her left half', { exact: true })).toHaveValue('14 in');
    await expect(notebook.getByLabel('Waist, her right half', { exact: true })).toHaveValue('15 in');
  });

  await test.step('the fit says so, and looks at the sides together while no piece is for one of them', async () => {
    await goTo(page, 'Fit');
    await expect(levelOf(page, 'Waist')).toContainText(/Her left half is 14\sin, her right half 15\sin\. No piece/);
  });

  await test.step('a piece for one side is held against that half', async () => {
    await goTo(page, 'Draft');
    await notebook
      .getByRole('button', { name: /^Panel/ })
      .first()
      .click();
    await notebook.getByRole('radio', { name: 'her left' }).check();
    await expect(notebook.getByText(/It counts for her left side only/)).toBeVisible();
    await expect(notebook.getByText(/Cut on the fold or in mirrored pairs it comes to both sides/)).toBeVisible();
    await goTo(page, 'Fit');
    await expect(levelOf(page, 'Waist')).toContainText(/Her left half\s*29\sin for 14\sin,/);
    await expect(levelOf(page, 'Waist')).toContainText(/Her right half\s*0\sin for 15\sin,/);
    await press(page, 'Undo: for which side a piece is');
  });

  await test.step('both halves alike again', async () => {
    await goTo(page, 'Wearer');
    await press(page, 'Both halves alike: waist');
    await expect(notebook.getByLabel('Waist', { exact: true })).toHaveValue('29 in');
    await goTo(page, 'Fit');
    await expect(levelOf(page, 'Waist')).not.toContainText('Her left half');
  });
});

test('from Fit to the other ways of curving the very waist looked at', async ({ page }) => {
  await openDemo(page);
  await goTo(page, 'Fit');
  await press(page, 'Other ways to curve it: Panel');
  await page.getByRole('button', { name: /^Curve the waist/ }).click();
  await expect(notebookOf(page).getByLabel('Edge', { exact: true }).locator('option:checked')).toHaveText(
    'Panel: waist',
  );
});

for (const size of [
  { width: 1440, height: 900 },
  { width: 390, height: 844 },
] as const) {
  test(`the Fit and Wearer rooms unfolded are open to all at ${size.width} × ${size.height}`, async ({ page }) => {
    await page.setViewportSize(size);
    await openDemo(page);
    for (const [room, folds] of [
      ['Wearer', ['Left and right apart']],
      ['Fit', ['Add a level', 'Waist: where and how it is measured', 'Measured from another edge']],
    ] as const) {
      await goTo(page, room);
      for (const fold of folds) await unfold(page, fold);
      const { violations } = await new AxeBuilder({ page })
        .withTags(['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'])
        .analyze();
      expect(violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`)).toEqual([]);
    }
  });
}

test('a hip that is short leads to the seam that is let out, with place and amount filled in', async ({ page }) => {
  const trouble = listenForTrouble(page);
  await openDemo(page);
  await goTo(page, 'Wearer');
  await write(page, 'Hip', '39');
  await goTo(page, 'Fit');
  await press(page, 'Take the curved waist');
  const notebook = notebookOf(page);
  await expect(notebook.getByText(/short of the ease wanted at the hip/)).toBeVisible();
  await press(page, 'Let out Panel: side seam, 1/4 in at the hip');

  await test.step('the change is begun, on that seam, outwards, at the hip', async () => {
    await expect(notebook.getByRole('heading', { name: 'Take in or let out' })).toBeVisible();
    await expect(notebook.getByRole('radio', { name: 'let out' })).toBeChecked();
    await expect(notebook.getByLabel('Pin 1: along the edge')).toHaveValue(/^8/);
    await press(page, 'Take it');
    await expect(page.getByRole('status')).toContainText('Done: let out Panel: side seam');
  });

  await test.step('and then it goes round; the change does not begin again by itself', async () => {
    await goTo(page, 'Fit');
    await expect(notebook.getByText(/short of the ease wanted at the hip/)).toHaveCount(0);
    await expect(levelOf(page, 'Hip')).not.toContainText('short');
    await goTo(page, 'Reshape');
    await expect(notebook.getByRole('button', { name: 'Take it' })).toHaveCount(0);
  });
  expect.soft(trouble, 'nothing on the console').toEqual([]);
});
