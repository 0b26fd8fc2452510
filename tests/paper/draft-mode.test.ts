/** Pages as a printer in draft mode gives them: half the dots an inch, half the ink, and no colour. */
import { beforeAll, describe, expect, it } from 'vitest';
import { paperSheetWords } from '../../app/words/paper-sheet';
import type { LineKind, Mark } from '../../core/drawing/drawing';
import { lineStyles } from '../../core/drawing/line-styles';
import { boxContains, growBox } from '../../core/geometry/bounds';
import type { Point } from '../../core/geometry/point';
import { pageJoins } from '../../core/paper/page-joins';
import { HEADER, inkPlaces } from '../../core/paper/page-plan';
import { patternPdf } from '../../core/paper/pattern-pdf';
import type { TapedSheet } from '../../core/paper/placed-piece';
import { tapedSheets } from '../../core/paper/taped-sheets';
import { linden } from '../garment/linden';
import { fonts } from './fonts';
import { type GreyPage, greyPages, hasReaders, median } from './print-tools';

/** Draft mode puts down about half the ink of plain printing, at half its 300 dots an inch (common practice). */
const INK = 0.5;
const DPI = 150;

/** A line is still seen where it darkens the paper by so much of black: as pale pencil does (common practice). */
const SEEN = 0.15;

describe.skipIf(!hasReaders)('in draft mode', () => {
  const garment = linden();
  const sheet = tapedSheets(garment.pieces.slice(0, 1), garment.paper).sheets[0] as TapedSheet;
  let pages: readonly GreyPage[];

  beforeAll(async () => {
    const words = paperSheetWords('in', 'sixteenth');
    const made = await patternPdf({ garment, what: 'pages', words, fonts, today: '2026-03-04', sheets: [sheet] });
    if (made.kind !== 'pdf') throw new Error('there are pages');
    pages = greyPages(made.bytes, DPI).slice(1);
  });

  /** The pixels about a place of the table on each page that shows it, each as a share of black. */
  function inkAt({ x, y }: Point): (readonly number[])[] {
    const { margin } = garment.paper;
    return sheet.plan.pages.flatMap(({ window }, index) => {
      const page = pages[index];
      if (!page || !boxContains(growBox(window, -2), { x, y })) return [];
      const px = (mm: number) => Math.floor((mm * DPI) / 25.4);
      const [column, row] = [px(x - window.minX + margin), px(y - window.minY + margin + HEADER)];
      const around = [-1, 0, 1].flatMap((down) =>
        [-1, 0, 1].map((right) => (row + down) * page.width + column + right),
      );
      return [around.map((at) => (INK * (255 - (page.pixels[at] ?? 255))) / 255)];
    });
  }

  /** How dark the darkest is. */
  const darkness = (place: Point) => inkAt(place).map((around) => Math.max(...around));

  const strokes = (kind: LineKind) =>
    (sheet.placed[0]?.marks ?? []).filter((mark: Mark) => mark.kind === 'stroke' && mark.line === kind);

  it.each(['cut', 'stitch', 'fold', 'dart', 'grain', 'notch', 'gathers', 'pleat-fold'] as const)(
    'a %s line is seen on every page, as much of it as its dashes leave',
    (kind) => {
      const { dash } = lineStyles[kind];
      const drawn = dash.reduce((sum, long, index) => sum + (index % 2 === 0 ? long : 0), 0);
      const share = dash.length === 0 ? 1 : drawn / dash.reduce((sum, long) => sum + long, 0);
      const all = inkPlaces(strokes(kind)).flatMap(darkness);
      expect(all.length).toBeGreaterThan(3);
      const seen = all.filter((dark) => dark >= SEEN).length / all.length;
      expect(seen).toBeGreaterThanOrEqual(share * 0.9);
    },
  );

  it('the cut line has more ink than any other line along edges', () => {
    const ink = (kind: LineKind) => {
      const all = inkPlaces(strokes(kind))
        .flatMap(inkAt)
        .filter((around) => Math.max(...around) >= SEEN);
      return median(all.map((around) => around.reduce((sum, one) => sum + one, 0)));
    };
    expect(ink('cut')).toBeGreaterThan(1.3 * ink('stitch'));
    expect(ink('cut')).toBeGreaterThan(1.3 * ink('dart'));
  });

  it('the marks at every join are seen on both pages', () => {
    const marks = pageJoins(sheet.plan).flatMap((join) => join.marks);
    expect(marks.length).toBeGreaterThan(8);
    for (const { at } of marks) {
      // Along an arm of the cross, 2 mm from its middle.
      const arm = { x: at.x + 1.4, y: at.y + 1.4 };
      const seen = darkness(arm);
      expect(seen.length).toBeGreaterThan(0);
      for (const dark of seen) expect(dark).toBeGreaterThanOrEqual(SEEN);
    }
  });
});
