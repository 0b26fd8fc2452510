import { describe, expect, it } from 'vitest';
import { sampleGarment } from '../../bench/sample-garment';
import { pieceDrawing } from '../../core/drawing/piece-drawing';
import { boxContains } from '../../core/geometry/bounds';
import { joinsOffCorners } from '../../core/paper/joins-off-corners';
import { STAYS_PUT } from '../../core/paper/moved-marks';
import { pageJoins } from '../../core/paper/page-joins';
import { inkPlaces, planPages } from '../../core/paper/page-plan';
import type { TapedSheet } from '../../core/paper/placed-piece';
import { tapedSheets } from '../../core/paper/taped-sheets';
import { linden } from '../garment/linden';
import { A4, LETTER, rectangle, straightPiece } from './pieces';

function sheetOf(piece: ReturnType<typeof rectangle>, paper = A4): TapedSheet {
  const plan = planPages(pieceDrawing(piece), paper);
  if (!plan) throw new Error('there are pages');
  return { placed: [{ piece, motion: STAYS_PUT, marks: pieceDrawing(piece), under: [] }], plan };
}

/** How near a join comes to a corner or a notch (mm). */
function nearest({ placed, plan }: TapedSheet): number {
  const places = placed.flatMap(({ piece, marks }) => [
    ...piece.corners.map(({ at }) => at),
    ...inkPlaces(marks.filter((mark) => mark.kind === 'stroke' && mark.line === 'notch')),
  ]);
  return Math.min(
    ...pageJoins(plan).flatMap(({ runs, from }) =>
      places.map(({ x, y }) => Math.abs(runs === 'down' ? x - from.x : y - from.y)),
    ),
  );
}

/** A panel whose fourth corner lies in the middle of its width, where evenly laid pages are joined. */
const gable = straightPiece([
  [0, 60],
  [165, 0],
  [330, 60],
  [330, 240],
  [0, 240],
]);

describe('joinsOffCorners', () => {
  it('shifts the pages where a join runs through a corner, and takes no more of them', () => {
    const sheet = sheetOf(gable);
    expect(nearest(sheet)).toBeLessThan(6);
    const shifted = joinsOffCorners(sheet);
    expect(nearest(shifted)).toBeGreaterThanOrEqual(6);
    expect(shifted.plan.pages.length).toBeLessThanOrEqual(sheet.plan.pages.length);
    for (const place of shifted.plan.ink) {
      expect(shifted.plan.pages.some(({ window }) => boxContains(window, place))).toBe(true);
    }
  });

  it('leaves pages as they are where no join runs through a corner', () => {
    const sheet = sheetOf(rectangle(0, 0, 300, 200));
    expect(joinsOffCorners(sheet)).toBe(sheet);
  });

  it('keeps off notches too', () => {
    const notches = [{ id: 'n', edgeId: 'e0', along: 165, count: 1 as const }];
    const sheet = sheetOf(rectangle(0, 0, 330, 200, { notches }));
    expect(nearest(sheet)).toBeLessThan(6);
    expect(nearest(joinsOffCorners(sheet))).toBeGreaterThanOrEqual(6);
  });

  it('never takes a page more, on whatever garment and paper', () => {
    for (const garment of [linden(), sampleGarment(3)]) {
      for (const paper of [A4, LETTER, { ...A4, size: 'a3', turned: 'sideways' } as const]) {
        const { sheets, counted } = tapedSheets(garment.pieces, paper);
        const before = garment.pieces.reduce((sum, piece) => sum + sheetOf(piece, paper).plan.pages.length, 0);
        expect(sheets.reduce((sum, { plan }) => sum + plan.pages.length, 0)).toBe(counted.pages);
        expect(counted.pages).toBeLessThanOrEqual(before);
      }
    }
  });
});
