import { expect, type Locator, type Page } from '@playwright/test';

/** One way of working, and only that one: what a person without the others can do. */
export interface Hand {
  /** Presses a button, or opens what is folded. */
  press(target: Locator): Promise<void>;
  /** Writes into a field in place of what stood there, and says so with Enter. */
  write(field: Locator, text: string): Promise<void>;
  /** Takes one of a few that are all in sight. */
  choose(radio: Locator): Promise<void>;
  /** Takes one from a list. */
  pick(list: Locator, words: string): Promise<void>;
  /** Switches off what is on, or on what is off. */
  toggle(box: Locator): Promise<void>;
}

/** Far more than any room has things to stop at. */
const MANY = 300;

/** Keys alone: whatever is used must first be reached by Tab. */
export function byKeys(page: Page): Hand {
  const focused = (target: Locator) => target.evaluate((element) => element === document.activeElement);

  async function reach(target: Locator): Promise<void> {
    await expect(target).toBeVisible();
    const behind = await target.evaluate((element) => {
      const from = document.activeElement;
      return from ? (from.compareDocumentPosition(element) & Node.DOCUMENT_POSITION_PRECEDING) !== 0 : false;
    });
    for (let presses = 0; presses < MANY; presses++) {
      if (await focused(target)) return;
      await page.keyboard.press(behind ? 'Shift+Tab' : 'Tab');
    }
    throw new Error(`Tab never comes to ${target}`);
  }

  return {
    async press(target) {
      await reach(target);
      await page.keyboard.press('Enter');
    },
    async write(field, text) {
      await reach(field);
      await page.keyboard.press('Control+a');
      await page.keyboard.type(text);
      await page.keyboard.press('Enter');
    },
    async choose(radio) {
      // Only one of a set is stopped at: the one that is on, or else the first. Arrows lead to the others.
      await radio.waitFor({ state: 'attached' });
      const set = radio.locator('xpath=ancestor::fieldset[1]').getByRole('radio');
      const on = set.and(page.locator(':checked'));
      const first = (await on.count()) > 0 ? on : set.first();
      await reach(first);
      if (!(await radio.isChecked()) && (await on.count()) === 0) await page.keyboard.press('Space');
      const size = await set.count();
      for (let presses = 0; presses < size && !(await radio.isChecked()); presses++) {
        await page.keyboard.press('ArrowDown');
      }
      await expect(radio).toBeChecked();
    },
    async pick(list, words) {
      await reach(list);
      const chosen = () => list.evaluate((select: HTMLSelectElement) => select.selectedOptions[0]?.label);
      const size = await list.locator('option').count();
      await page.keyboard.press('Home');
      for (let presses = 0; presses < size && (await chosen()) !== words; presses++) {
        await page.keyboard.press('ArrowDown');
      }
      expect(await chosen()).toBe(words);
    },
    async toggle(box) {
      await reach(box);
      await page.keyboard.press('Space');
    },
  };
}

/** Taps alone. What is written comes from the keyboard a screen brings up, and a list is the system's own. */
export function byTouch(page: Page): Hand {
  return {
    press: (target) => target.tap(),
    async write(field, text) {
      await field.tap();
      await field.selectText();
      await page.keyboard.insertText(text);
      await page.keyboard.press('Enter');
    },
    choose: (radio) => radio.locator('xpath=ancestor::label[1]').tap(),
    async pick(list, words) {
      await list.tap();
      await list.selectOption({ label: words });
    },
    toggle: (box) => box.tap(),
  };
}

/** Pressing with the mouse and writing with the keyboard. */
export function byMouse(): Hand {
  return {
    press: (target) => target.click(),
    async write(field, text) {
      await field.fill(text);
      await field.press('Enter');
    },
    choose: (radio) => radio.check(),
    async pick(list, words) {
      await list.selectOption({ label: words });
    },
    toggle: (box) => box.click(),
  };
}
