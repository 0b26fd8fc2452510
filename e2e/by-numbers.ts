import type { Page } from '@playwright/test';
import { lindenCornersInPhoto, lindenFrameInPhoto } from '../app/demo/linden-panel';
import type { Point } from '../core/geometry/point';
import { inches } from '../core/units/inch';
import type { Hand } from './by-hand';
import { lindenTrace } from './linden-truth';
import type { OnTheTable } from './whole-job';

/** What is done on the picture and on the table, done in the fields beside them. */
export function byNumbers(page: Page, hand: Hand): OnTheTable {
  const notebook = page.getByRole('complementary', { name: 'Notebook' });
  return {
    async squareUp() {
      await hand.press(page.getByText('The corners as numbers'));
      for (const [index, name] of ['Top left', 'Top right', 'Bottom right', 'Bottom left'].entries()) {
        const corner = lindenFrameInPhoto[index];
        if (!corner) throw new Error('a frame has four corners');
        await hand.write(page.getByLabel(`${name}, pixels across`), corner.x.toFixed(0));
        await hand.write(page.getByLabel(`${name}, pixels down`), corner.y.toFixed(0));
      }
    },
    async drawLine() {
      await hand.press(page.getByRole('button', { name: 'Place it by numbers' }));
    },
    async mendLines() {
      for (const [index, ends] of [
        [0, 1],
        [0, 3],
      ].entries()) {
        const entry = page.getByRole('listitem').filter({ hasText: `Known length ${index + 1}` });
        await hand.press(entry.locator('summary'));
        for (const [end, corner] of [
          ['First end', ends[0]],
          ['Other end', ends[1]],
        ] as const) {
          const place = lindenCornersInPhoto[corner ?? 0];
          await hand.write(entry.getByLabel(`${end}, pixels across`), (place?.x ?? 0).toFixed(0));
          await hand.write(entry.getByLabel(`${end}, pixels down`), (place?.y ?? 0).toFixed(0));
        }
      }
    },
    async trace() {
      const put = async (place: Point, kind: RegExp) => {
        await hand.choose(page.getByRole('radio', { name: kind }));
        await hand.write(notebook.getByLabel('Across', { exact: true }), `${place.x / inches(1)}`);
        await hand.write(notebook.getByLabel('Down', { exact: true }), `${place.y / inches(1)}`);
        await hand.press(notebook.getByRole('button', { name: 'Put it down' }));
      };
      for (const { at, kind } of lindenTrace()) await put(at, kind);
      await hand.press(page.getByRole('button', { name: 'Done' }));
    },
  };
}
