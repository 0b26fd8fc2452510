import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cutPieces } from '../../core/garment/cut-pieces';
import type { PaperChoice } from '../../core/garment/garment';
import type { Piece } from '../../core/garment/piece';
import { boxContains, growBox } from '../../core/geometry/bounds';
import { flattenPath } from '../../core/geometry/flatten';
import { ringArea } from '../../core/geometry/polygon';
import { commonAreas } from '../../core/geometry/polygon-boolean';
import { movedPoint } from '../../core/paper/moved-marks';
import { LONGEST_PAGE, sheetChoiceOf, sheetOf } from '../../core/paper/page-sizes';
import type { PlacedPiece, TapedSheet } from '../../core/paper/placed-piece';
import { tapedSheets } from '../../core/paper/taped-sheets';
import { inches } from '../../core/units/inch';
import { linden } from '../garment/linden';
import { A4, LETTER, rectangle, straightPiece } from './pieces';

const fewest = ({ placed: _, ...paper }: PaperChoice): PaperChoice => paper;
const [A4_FEWEST, LETTER_FEWEST] = [fewest(A4), fewest(LETTER)];
const ROLL: PaperChoice = { ...A4_FEWEST, size: 'roll', rollWidth: 610 };

const ringOf = ({ piece, motion }: PlacedPiece) => piece.corners.map(({ at }) => movedPoint(motion, at));

/** How much of two pieces lies over one another, as Clipper has it. */
function lapping(a: PlacedPiece, b: PlacedPiece): number {
  const common = commonAreas([ringOf(a)], [ringOf(b)]);
  if (common.kind !== 'areas') throw new Error('their areas are sure');
  return common.rings.reduce((sum, ring) => sum + Math.abs(ringArea(ring)), 0);
}

function expectWhole({ placed, plan }: TapedSheet): void {
  const windows = plan.pages.map(({ window }) => growBox(window, -0.25));
  for (const { marks } of placed) {
    for (const mark of marks) {
      if (mark.kind === 'words') continue;
      const missed = flattenPath(mark.path, 0.1).filter((at) => !windows.some((window) => boxContains(window, at)));
      expect(missed).toEqual([]);
    }
  }
}

describe('tapedSheets', () => {
  it('turns a piece where that saves a page: a bar of 250 by 40 mm across the 190 mm of A4', () => {
    const bar = [rectangle(0, 0, 250, 40)];
    expect(tapedSheets(bar, A4).counted.pages).toBe(2);
    const { sheets, counted } = tapedSheets(bar, A4_FEWEST);
    expect(counted).toMatchObject({ pages: 1, plain: 2, least: 1 });
    expect(Math.abs(sheets[0]?.placed[0]?.motion.angle ?? 0)).toBeCloseTo(Math.PI / 2, 9);
  });

  it('puts two small pieces on one page, and leaves each on its own where she wants that', () => {
    const pieces = [rectangle(0, 0, 150, 110), rectangle(400, 0, 160, 120, { id: 'q' })];
    expect(tapedSheets(pieces, A4).counted.pages).toBe(2);
    const { sheets, counted } = tapedSheets(pieces, A4_FEWEST);
    expect(counted).toMatchObject({ pages: 1, plain: 2, least: 1 });
    expect(sheets[0]?.placed.map(({ piece }) => piece.id).sort()).toEqual(['p', 'q']);
  });

  it('does not turn or move what saves nothing', () => {
    const { sheets } = tapedSheets([rectangle(0, 0, 150, 200)], A4_FEWEST);
    expect(sheets[0]?.placed[0]?.motion).toEqual({ angle: 0, dx: 0, dy: 0 });
  });

  it('lays five gores of 240 by 760 mm head to foot beside one another on A4: 18 pages for all instead of two by three each', () => {
    const gore = (index: number) =>
      straightPiece(
        [
          [index * 400 + 130, 20],
          [index * 400 + 230, 20],
          [index * 400 + 300, 780],
          [index * 400 + 60, 780],
        ],
        { id: `g${index}` },
      );
    const { counted, sheets } = tapedSheets([0, 1, 2, 3, 4].map(gore), A4_FEWEST);
    expect(counted.plain).toBe(30);
    // Beside one another they are 4 times 170 mm and 240 mm wide, and room for the scissors: six pages, three rows.
    expect(counted.pages).toBeLessThanOrEqual(18);
    expect(sheets[0]?.placed).toHaveLength(5);
    expect(counted.pages).toBeGreaterThanOrEqual(counted.least);
  });

  it('shows every line on some page, lays no piece over another, and is never worse than each as drawn', () => {
    const corner = fc.tuple(fc.double({ min: 0, max: 500, noNaN: true }), fc.double({ min: 0, max: 420, noNaN: true }));
    const triangle = fc.tuple(corner, corner, corner).filter(([a, b, c]) => {
      return Math.abs((b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0])) > 8000;
    });
    const papers = fc.constantFrom(A4_FEWEST, LETTER_FEWEST, { ...A4_FEWEST, joins: 'butted' as const }, ROLL);
    fc.assert(
      fc.property(fc.array(triangle, { minLength: 2, maxLength: 4 }), papers, (triangles, paper) => {
        const pieces: Piece[] = triangles.map((corners, index) => straightPiece(corners, { id: `p${index}` }));
        const { sheets, counted } = tapedSheets(pieces, paper);
        const drawn = tapedSheets(pieces, { ...paper, placed: 'as-drawn' });
        expect(sheets.flatMap(({ placed }) => placed.map(({ piece }) => piece.id)).sort()).toEqual(
          pieces.map(({ id }) => id),
        );
        if (paper.size !== 'roll') expect(counted.pages).toBeLessThanOrEqual(drawn.counted.pages);
        expect(counted.least).toBeLessThanOrEqual(counted.pages);
        for (const sheet of sheets) {
          expectWhole(sheet);
          sheet.placed.forEach((a, i) => {
            for (const b of sheet.placed.slice(i + 1)) expect(lapping(a, b)).toBeLessThan(1e-6);
          });
        }
      }),
      { seed: 11, numRuns: 12, endOnFailure: true },
    );
  }, 120_000);

  it('cuts a roll as long as it needs to be, and no page longer than 200 in', () => {
    const one = tapedSheets([rectangle(0, 0, 500, 1400)], ROLL);
    const [sheet] = one.sheets;
    const height = sheet ? sheetOf(sheet.plan.paper).height : 0;
    expect(one.counted.pages).toBe(1);
    expect(height).toBeGreaterThan(1400 + 2 * 10 + 13);
    expect(height).toBeLessThan(1400 + 2 * 10 + 13 + 12);
    const long = tapedSheets([rectangle(0, 0, 500, 6000)], ROLL);
    expect(long.counted.pages).toBe(2);
    for (const { plan } of long.sheets) {
      expect(sheetOf(plan.paper).height).toBeLessThanOrEqual(LONGEST_PAGE);
      expectWhole(long.sheets[0] as TapedSheet);
    }
  });

  it('lays the same pieces the same way every time', () => {
    const pieces = cutPieces(linden());
    const again = cutPieces(JSON.parse(JSON.stringify(linden())));
    const plain = ({ sheets }: ReturnType<typeof tapedSheets>) =>
      sheets.map(({ plan, placed }) => [plan.pages, placed.map(({ motion }) => motion)]);
    expect(plain(tapedSheets(pieces, LETTER_FEWEST))).toEqual(plain(tapedSheets(again, LETTER_FEWEST)));
  });

  it('names a piece the paper has no room for, and lays the others', () => {
    const astray = straightPiece(
      [
        [0, 0],
        [9000, 0],
        [30, 7000],
      ],
      { id: 'astray' },
    );
    const { sheets, leftOut, counted } = tapedSheets([rectangle(0, 0, 150, 200), astray], A4_FEWEST);
    expect(leftOut.map(({ id }) => id)).toEqual(['astray']);
    expect(sheets.flatMap(({ placed }) => placed.map(({ piece }) => piece.id))).toEqual(['p']);
    expect(counted.pages).toBe(1);
    expect(tapedSheets([rectangle(0, 0, 150, 200)], A4_FEWEST).leftOut).toEqual([]);
  });

  it('has room on the pages for an older version laid under a piece', () => {
    const now = rectangle(0, 0, 150, 200);
    const before = rectangle(0, 0, 150, 300);
    expect(tapedSheets([now], A4).counted.pages).toBe(1);
    const { sheets, counted } = tapedSheets([now], A4, { under: [[before]] });
    expect(counted.pages).toBe(2);
    expect(sheets[0]?.placed[0]?.under[0]?.length).toBeGreaterThan(0);
  });
});

describe('sheetChoiceOf', () => {
  it('leaves on each side what the printer loses there, and on a page sideways the more of two', () => {
    const losesAt = { top: 3, right: 5, bottom: 12, left: 7 };
    expect(sheetChoiceOf({ ...A4, loses: 12, losesAt }).margins).toEqual(losesAt);
    const { margins } = sheetChoiceOf({ ...A4, turned: 'sideways', loses: 12, losesAt });
    expect(margins).toEqual({ top: 7, right: 12, bottom: 7, left: 12 });
    const [sheet] = tapedSheets([rectangle(0, 0, 150, 200)], { ...A4, loses: 12, losesAt }).sheets;
    // A4 less 5 and 7 across, less 3, 12 and the heading of 13 down.
    expect(sheet?.plan.window).toEqual({ width: 198, height: 269 });
  });

  it('keeps all ink 10 mm from the edge until it is known what the printer loses', () => {
    expect(sheetChoiceOf({ ...A4, margin: 3 }).margin).toBe(10);
    expect(sheetChoiceOf({ ...A4, margin: 14 }).margin).toBe(14);
    expect(sheetChoiceOf({ ...A4, margin: 3, loses: inches(1 / 4) }).margin).toBe(inches(1 / 4));
  });
});
