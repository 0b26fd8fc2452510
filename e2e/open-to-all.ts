import AxeBuilder from '@axe-core/playwright';
import { expect, type Page } from '@playwright/test';

/** That nothing on the page breaks a rule of WCAG 2.2 A or AA that a machine can see; `where` is said when it does. */
export async function openToAll(page: Page, where: string): Promise<void> {
  const { violations } = await new AxeBuilder({ page })
    .withTags(['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'])
    .analyze();
  expect
    .soft(
      violations.flatMap(({ id, nodes }) =>
        nodes.map(({ target, failureSummary }) => `${id} at ${target.join(' ')}: ${failureSummary}`),
      ),
      `axe: ${where}`,
    )
    .toEqual([]);
}
