/** Pages that several pieces share, and pieces that were turned: which are out of date, and what is made anew. */
import { describe, expect, it } from 'vitest';
import type { Garment, PaperChoice } from '../../core/garment/garment';
import { movePiece } from '../../core/garment/move-piece';
import { moveCorner } from '../../core/garment/move-point';
import type { Piece } from '../../core/garment/piece';
import { readGarment } from '../../core/garment/schema';
import { versionSaid } from '../../core/garment/version-said';
import { withPiece } from '../../core/garment/with-piece';
import { mendPlan } from '../../core/paper/mend-plan';
import { printedFindings } from '../../core/paper/pages-out-of-date';
import { addPrinting, type ChosenPages, mendingOf, printingOf } from '../../core/paper/printing-of';
import { tapedSheets } from '../../core/paper/taped-sheets';
import { A4, garmentOf, rectangle } from './pieces';

const { placed: _, ...FEWEST } = A4;
const paper: PaperChoice = FEWEST;
const made = (garment: Garment, id: string) => ({ id, today: '2026-11-07', version: versionSaid([], garment) });
const sheetsOf = (garment: Garment) => tapedSheets(garment.pieces, garment.paper).sheets;
const print = (garment: Garment, id: string, chosen?: ChosenPages) =>
  addPrinting(garment, printingOf(garment, sheetsOf(garment), made(garment, id), chosen));
const stale = (garment: Garment) =>
  printedFindings(garment).flatMap((finding) => (finding.kind === 'pages-out-of-date' ? [finding] : []));
const wider = (id: string, by: number) => (piece: Piece) => {
  const at = piece.corners.find((one) => one.id === id)?.at ?? { x: 0, y: 0 };
  return moveCorner(piece, id, { x: at.x + by, y: at.y });
};

/** A panel of two pages with room beside it, and a strip that finds it. */
const panel = rectangle(40, 60, 100, 480, { id: 'panel', name: 'Panel' });
const strip = rectangle(900, 10, 50, 460, { id: 'strip', name: 'Strip' });
const start = () => print(garmentOf([panel, strip], paper), 'one');

describe('pages that two pieces share', () => {
  it('are two for both, and current when just made and when the pieces are only moved', () => {
    const garment = start();
    expect(sheetsOf(garment)).toHaveLength(1);
    expect(sheetsOf(garment)[0]?.plan.pages).toHaveLength(2);
    expect(printedFindings(garment)).toEqual([]);
    const moved = withPiece(garment, 'strip', (piece) => movePiece(piece, { dx: 33, dy: -71 }));
    expect(printedFindings(moved)).toEqual([]);
  });

  it('are out of date when either of them changes, and made anew with both, under their names and numbers', () => {
    const changed = withPiece(start(), 'strip', wider('c1', 3));
    expect(stale(changed)).toMatchObject([{ place: { pieceId: 'strip' } }]);
    const [mended, ...others] = mendPlan(changed);
    expect(others).toEqual([]);
    expect(mended?.placed.map(({ piece }) => piece.id)).toEqual(['panel', 'strip']);
    expect(mended?.only.map(({ label }) => label)).toEqual(['A1', 'B1']);
    expect(mended?.only.map((page) => mended.number(page))).toEqual([2, 3]);
    const printing = mendingOf(changed, made(changed, 'two'));
    if (!printing) throw new Error('there is something to mend');
    expect(printedFindings(addPrinting(changed, printing))).toEqual([]);
  });

  it('are read again from a file as they were', () => {
    const garment = start();
    expect(readGarment(JSON.parse(JSON.stringify(garment)))).toMatchObject({ kind: 'garment' });
  });
});

describe('a piece that was turned', () => {
  const bar = rectangle(0, 0, 700, 60, { id: 'bar', name: 'Bar' });
  it('is as printed until it changes, wherever it is moved', () => {
    const garment = print(garmentOf([bar], paper), 'one');
    expect(sheetsOf(garment)[0]?.placed[0]?.motion.angle).not.toBe(0);
    const moved = withPiece(garment, 'bar', (piece) => movePiece(piece, { dx: -211.3, dy: 57.7 }));
    expect(printedFindings(moved)).toEqual([]);
    const changed = withPiece(moved, 'bar', wider('c1', 9));
    const [found] = stale(changed);
    expect(found?.pages.length).toBe(1);
  });
});

describe('chosen pages', () => {
  it('take the place of the same pages on paper; those not made yet are asked for', () => {
    const garment = garmentOf([panel, strip], paper);
    const part = print(garment, 'one', [{ pieceId: 'strip', name: 'A1' }]);
    expect(part.printings?.at(-1)?.pages.map(({ name }) => name)).not.toContain('B1');
    expect(stale(part).flatMap(({ added }) => added)).toContain('B1');
    const missing = mendPlan(part);
    expect(missing[0]?.only.map((page) => [page.label, missing[0]?.number(page)])).toContainEqual(['B1', 3]);
    const again = print(start(), 'two', [{ pieceId: 'panel', name: 'B1' }]);
    expect(again.printings?.at(-1)?.laid?.[0]?.mends?.printingId).toBe('one');
    expect(printedFindings(again)).toEqual([]);
  });

  it('can be made once more as they are on paper, though the paper chosen is another now', () => {
    const garment = { ...start(), paper: { ...paper, size: 'letter' as const } };
    const [again] = mendPlan(garment, { pieceId: 'strip', names: ['B1'] });
    expect(again?.plan.paper.size).toBe('a4');
    expect(again?.only.map(({ label }) => label)).toEqual(['B1']);
    const printing = mendingOf(garment, made(garment, 'two'), { pieceId: 'strip', names: ['B1'] });
    expect(printing?.laid?.every(({ mends }) => mends?.gone.length === 0)).toBe(true);
  });
});

describe('a printing', () => {
  it('is all there is, though its lines lie hardly a millimetre inside the outermost pages', () => {
    // Two columns of 190 mm that share 10, and three rows of 264: all but 1 mm on every side, at places that round.
    for (const at of [3.3, 0.1, 7.7, 1 / 3, 12.34, 1e-3]) {
      const garment = print(garmentOf([rectangle(at, at / 7, 368, 770)], A4), 'one');
      expect(printedFindings(garment)).toEqual([]);
    }
  });
});
