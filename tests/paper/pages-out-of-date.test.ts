import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { pieceDrawing } from '../../core/drawing/piece-drawing';
import type { Garment } from '../../core/garment/garment';
import { movePiece } from '../../core/garment/move-piece';
import { moveCorner } from '../../core/garment/move-point';
import type { Piece } from '../../core/garment/piece';
import { removePiece } from '../../core/garment/piece-list';
import { versionSaid } from '../../core/garment/version-said';
import { withPiece } from '../../core/garment/with-piece';
import { mendPlan } from '../../core/paper/mend-plan';
import { pageJoins } from '../../core/paper/page-joins';
import { isAsPrinted, pageMark } from '../../core/paper/page-mark';
import { planPages } from '../../core/paper/page-plan';
import { printedFindings } from '../../core/paper/pages-out-of-date';
import { addPrinting, mendingOf, printingOf, setUnused } from '../../core/paper/printing-of';
import { piecesOnPaper } from '../../core/paper/sheets-now';
import { tapedSheets } from '../../core/paper/taped-sheets';
import { curved, garmentOf, LETTER, rectangle } from './pieces';

const made = (garment: Garment, id: string, today = '2026-11-07') => ({
  id,
  today,
  version: versionSaid([], garment),
});
const print = (garment: Garment, id = 'one') =>
  addPrinting(garment, printingOf(garment, tapedSheets(garment.pieces, garment.paper).sheets, made(garment, id)));
function mend(garment: Garment, id: string): Garment {
  const printing = mendingOf(garment, made(garment, id, '2026-11-09'));
  return printing ? addPrinting(garment, printing) : garment;
}
const stale = (garment: Garment) => printedFindings(garment).filter(({ kind }) => kind === 'pages-out-of-date');
const corner = (id: string, dx: number, dy: number) => (piece: Piece) => {
  const at = piece.corners.find((one) => one.id === id)?.at;
  if (!at) throw new Error(`no corner ${id}`);
  return moveCorner(piece, id, { x: at.x + dx, y: at.y + dy });
};

/** Two columns of four sheets of Letter for with straight sides and a label of her own. */
const panel = rectangle(31, 47, 307, 811, {
  id: 'front',
  name: 'Front',
  labels: [{ id: 'l', at: { x: 90, y: 120 }, text: 'dot' }],
});
const back = rectangle(700, 47, 153, 211, { id: 'back', name: 'Back' });
const start = () => print(garmentOf([panel, back], LETTER));

describe('printedFindings', () => {
  it('says nothing of pages just made, nor of a garment that was never printed', () => {
    expect(printedFindings(garmentOf([panel]))).toEqual([]);
    expect(printedFindings(start())).toEqual([]);
  });

  it('names just the pages on which a corner went elsewhere, and none when that is undone', () => {
    const before = start();
    const sheets = before.printings?.[0]?.pages.filter(({ pieceIds }) => pieceIds[0] === 'front');
    expect(sheets?.map(({ name }) => name)).toEqual(['A1', 'A2', 'B1', 'B2', 'C1', 'C2', 'D1', 'D2']);
    const after = withPiece(before, 'front', corner('c1', 7, 0));
    // The right side runs from the top right corner to the bottom right one, over the second column; the top side is on
    // both sheets of the first row, and stays level.
    const [found] = stale(after);
    expect(found).toMatchObject({ place: { kind: 'piece', pieceId: 'front' }, date: '2026-11-07', added: [] });
    expect(found && 'pages' in found && found.pages).toEqual(['A2', 'B2', 'C2', 'D2']);
    expect(stale(before)).toEqual([]);
  });

  it('a hem let down touches the last row alone, and asks for a row more where it runs off the sheets', () => {
    const hem = (by: number) => (piece: Piece) => corner('c2', 0, by)(corner('c3', 0, by)(piece));
    expect(stale(withPiece(start(), 'front', hem(3)))).toMatchObject([{ pages: ['D1', 'D2'], added: [] }]);
    expect(stale(withPiece(start(), 'front', hem(203)))).toMatchObject([
      { pages: ['D1', 'D2'], added: ['E1', 'E2'], gone: [] },
    ]);
    const shorter = stale(withPiece(start(), 'front', hem(-230)))[0];
    expect(shorter).toMatchObject({ gone: ['D1', 'D2'], pages: ['C1', 'C2'] });
  });

  it('a piece that is only moved on the table stays as printed, and what then changes on it is found all the same', () => {
    const moved = withPiece(start(), 'front', (piece) => movePiece(piece, { dx: 73.13, dy: -211.7 }));
    expect(printedFindings(moved)).toEqual([]);
    const changed = withPiece(moved, 'front', corner('c2', 11, 0));
    expect(stale(changed)).toMatchObject([{ added: [], gone: [] }]);
    const found = stale(changed)[0];
    expect(found && 'pages' in found && found.pages).toEqual(['A2', 'B2', 'C2', 'D2']);
  });

  it('another name or place on the table makes no page old; how often it is cut makes all', () => {
    expect(stale(withPiece(start(), 'front', (piece) => ({ ...piece, name: 'Fore' })))).toEqual([]);
    const cut = withPiece(start(), 'front', (piece) => ({ ...piece, cut: { how: 'pair', count: 6 } }));
    expect(stale(cut)).toMatchObject([{ pages: ['A1', 'A2', 'B1', 'B2', 'C1', 'C2', 'D1', 'D2'] }]);
  });

  it('her own words belong to the page they stand on', () => {
    const said = withPiece(start(), 'front', (piece) => ({
      ...piece,
      labels: piece.labels.map((label) => ({ ...label, text: 'cross' })),
    }));
    expect(stale(said)).toMatchObject([{ pages: ['A1'] }]);
  });

  it('a piece that grows over the beginning of its sheets wants sheets before the first row and column', () => {
    const higher = withPiece(start(), 'front', (piece) => corner('c0', 0, -300)(corner('c1', 0, -300)(piece)));
    expect(stale(higher)).toMatchObject([{ pages: ['A1', 'A2'], added: ['00A1', '00A2', '0A1', '0A2'] }]);
    const wider = withPiece(higher, 'front', (piece) => corner('c0', -60, 0)(corner('c3', -60, 0)(piece)));
    const mended = mend(wider, 'two');
    expect(mended.printings?.at(-1)?.pages.map(({ name }) => name)).toContain('0A0');
    expect(printedFindings(mended)).toEqual([]);
    // Read again by their names, the new sheets are where they were.
    expect(stale(withPiece(mended, 'front', corner('c2', 7, 0)))).toMatchObject([{ added: [] }]);
  });

  it('tells that a printed piece is gone', () => {
    expect(printedFindings(removePiece(start(), 'back'))).toMatchObject([{ kind: 'printed-piece-gone', name: 'Back' }]);
  });

  it('a printing that is not used any more is not asked after; the one before it is', () => {
    const first = start();
    const second = print(withPiece(first, 'front', corner('c2', 11, 0)), 'two');
    expect(printedFindings(second)).toEqual([]);
    const only = setUnused(second, 'two', '2026-11-10');
    expect(stale(only)).toHaveLength(1);
    expect(printedFindings(setUnused(only, 'one', '2026-11-10'))).toEqual([]);
    expect(printedFindings(setUnused(setUnused(only, 'one', '2026-11-10'), 'two', undefined))).toEqual([]);
  });

  it('finds exactly the pages of which a finer look sees another line', () => {
    fc.assert(
      fc.property(
        fc.constantFrom('c0', 'c1', 'c2', 'c3'),
        fc.integer({ min: -9, max: 9 }),
        fc.integer({ min: 1, max: 9 }),
        (id, dx, dy) => {
          const before = start();
          const after = withPiece(before, 'front', corner(id, dx, dy));
          const found = stale(after)[0];
          const names = found && 'pages' in found ? [...found.pages, ...found.added, ...found.gone] : [];
          const plan = planPages(pieceDrawing(panel), LETTER);
          const piece = after.pieces[0];
          if (!plan || !piece) throw new Error('the panel has pages');
          // Both outlines as points a hundredth of a millimetre apart at most along the straight lines that moved.
          for (const { label, window } of plan.pages) {
            const seen = (corners: Piece['corners']) =>
              corners.flatMap(({ at }, i) => {
                const to = corners[(i + 1) % corners.length]?.at ?? at;
                return Array.from({ length: 4001 }, (_, k) => ({
                  x: at.x + ((to.x - at.x) * k) / 4000,
                  y: at.y + ((to.y - at.y) * k) / 4000,
                })).filter(({ x, y }) => x > window.minX && x < window.maxX && y > window.minY && y < window.maxY);
              });
            const off = (from: { x: number; y: number }[], corners: Piece['corners']) =>
              Math.max(0, ...from.map((point) => distanceToRing(point, corners)));
            const most = Math.max(off(seen(panel.corners), piece.corners), off(seen(piece.corners), panel.corners));
            if (most > 0.2) expect([label, names.includes(label)]).toEqual([label, true]);
            if (most < 0.02) expect([label, names.includes(label)]).toEqual([label, false]);
          }
        },
      ),
      { numRuns: 25 },
    );
  });
});

function distanceToRing({ x, y }: { x: number; y: number }, corners: Piece['corners']): number {
  return Math.min(
    ...corners.map(({ at }, i) => {
      const to = corners[(i + 1) % corners.length]?.at ?? at;
      const [dx, dy] = [to.x - at.x, to.y - at.y];
      const t = Math.min(1, Math.max(0, ((x - at.x) * dx + (y - at.y) * dy) / (dx * dx + dy * dy)));
      return Math.hypot(x - at.x - t * dx, y - at.y - t * dy);
    }),
  );
}

describe('mendPlan', () => {
  it('makes only what is out of date, under the names, numbers and joins of the pages that stay', () => {
    const before = start();
    const joins = pageJoins(planPages(pieceDrawing(panel), LETTER) ?? never());
    const longer = withPiece(before, 'front', (piece) => corner('c2', 0, 203)(corner('c3', 0, 203)(piece)));
    const [mended, ...others] = mendPlan(longer);
    expect(others).toEqual([]);
    expect(mended?.only.map(({ label }) => label)).toEqual(['D1', 'D2', 'E1', 'E2']);
    // The first page, eight of the front and one of the back; the new ones count on.
    expect(mended?.only.map((page) => mended.number(page))).toEqual([8, 9, 11, 12]);
    expect(mended?.of).toBe(12);
    for (const join of joins) {
      const same = mended?.joins.find(
        ({ over, under }) => over.label === join.over.label && under.label === join.under.label,
      );
      expect(same?.marks).toEqual(join.marks);
    }
    const marks = mended?.joins.flatMap((join) => join.marks.map(({ mark }) => mark)) ?? [];
    expect(new Set(marks).size).toBe(marks.length);
    expect(mended?.joins.length).toBe(joins.length + 3);
  });

  it('what was made anew is current, also after a move and a second mending', () => {
    const hem = (by: number) => (piece: Piece) => corner('c2', 0, by)(corner('c3', 0, by)(piece));
    const once = mend(withPiece(start(), 'front', hem(203)), 'two');
    expect(printedFindings(once)).toEqual([]);
    const moved = withPiece(once, 'front', (piece) => movePiece(piece, { dx: -19, dy: 31 }));
    const twice = withPiece(moved, 'front', hem(-203));
    expect(stale(twice)).toMatchObject([{ gone: ['E1', 'E2'], pages: ['D1', 'D2'] }]);
    const settled = mend(twice, 'three');
    expect(printedFindings(settled)).toEqual([]);
    expect(piecesOnPaper(settled)[0]?.sheets.map(({ name }) => name)).not.toContain('E1');
    // Undone to before the first mending, the pages first printed would be wanted again.
    expect(stale(withPiece(settled, 'front', hem(203)))).toHaveLength(1);
  });
});

describe('isAsPrinted', () => {
  const wavy = curved(panel, 1, [
    { x: 349, y: 210 },
    { x: 327, y: 420 },
    { x: 351, y: 640 },
  ]);
  const window = { minX: 200, minY: 300, maxX: 390, maxY: 550 };

  it('lets a line go a tenth of a millimetre and no further', () => {
    const mark = pageMark(pieceDrawing(wavy), window);
    const by = (dx: number) => pieceDrawing(movePiece(wavy, { dx, dy: 0 }));
    expect(isAsPrinted(mark, by(0.05), window)).toBe(true);
    expect(isAsPrinted(mark, by(0.2), window)).toBe(false);
    expect(isAsPrinted(mark, by(-0.2), window)).toBe(false);
  });

  it('takes a mark that cannot be read for another drawing', () => {
    expect(isAsPrinted('7KQ2M', pieceDrawing(wavy), window)).toBe(false);
    expect(isAsPrinted('[1,2', pieceDrawing(wavy), window)).toBe(false);
  });

  it('sees a line that came or went in the middle of the page', () => {
    const notched = { ...wavy, notches: [{ id: 'n', edgeId: 'e1', along: 380, count: 1 as const }] };
    const [plain, more] = [pieceDrawing(wavy), pieceDrawing(notched)];
    expect(isAsPrinted(pageMark(plain, window), more, window)).toBe(false);
    expect(isAsPrinted(pageMark(more, window), plain, window)).toBe(false);
  });
});

function never(): never {
  throw new Error('the panel has pages');
}
