import { describe, expect, it } from 'vitest';
import type { Words } from '../../core/drawing/drawing';
import { pieceDrawing } from '../../core/drawing/piece-drawing';
import { boxContains, growBox } from '../../core/geometry/bounds';
import { inkPlaces } from '../../core/paper/page-plan';
import type { TapedSheet } from '../../core/paper/placed-piece';
import { tapedSheets } from '../../core/paper/taped-sheets';
import { A4, rectangle } from './pieces';

const said = ({ placed }: TapedSheet): Words[] =>
  placed.flatMap(({ marks }) => marks.flatMap((mark) => (mark.kind === 'words' ? [mark] : [])));
const body = (words: readonly Words[]) => words.filter(({ content }) => content.kind !== 'grain');

/** On how many pages all of the words stand. */
function pagesWith({ plan }: TapedSheet, words: readonly Words[]): number {
  return plan.pages.filter(({ window }) => {
    const clear = growBox(window, -plan.paper.overlap);
    return inkPlaces(words).every((at) => boxContains(clear, at));
  }).length;
}

function only(...pieces: Parameters<typeof tapedSheets>[0]): TapedSheet {
  const [sheet] = tapedSheets(pieces, A4).sheets;
  if (!sheet) throw new Error('there are pages');
  return sheet;
}

describe('what is written on a piece', () => {
  it('stands on one page, though the middle of the piece lies on a join', () => {
    for (const [width, height] of [
      [350, 240],
      [340, 500],
      [170, 480],
      [520, 760],
    ] as const) {
      const sheet = only(rectangle(7, -11, width, height));
      expect(sheet.plan.pages.length).toBeGreaterThan(1);
      expect(pagesWith(sheet, body(said(sheet)))).toBe(1);
      for (const at of inkPlaces(body(said(sheet)))) {
        expect(boxContains({ minX: 7, minY: -11, maxX: 7 + width, maxY: -11 + height }, at)).toBe(true);
      }
    }
  });

  it('stays together: every word is moved alike', () => {
    const piece = rectangle(0, 0, 350, 240);
    const [one, other] = [only(piece), only({ ...piece, corners: rectangle(0, 0, 150, 240).corners })];
    const rows = (sheet: TapedSheet) =>
      body(said(sheet)).map(({ at: { x, y } }, _, all) => [x - (all[0]?.at.x ?? 0), y - (all[0]?.at.y ?? 0)]);
    rows(one).forEach(([x = 0, y = 0], index) => {
      expect(x).toBeCloseTo(rows(other)[index]?.[0] ?? Number.NaN, 6);
      expect(y).toBeCloseTo(rows(other)[index]?.[1] ?? Number.NaN, 6);
    });
  });

  it('stays where it is on a strip too narrow for any other place', () => {
    const strip = rectangle(0, 0, 340, 26);
    const sheet = only(strip);
    expect(sheet.plan.pages).toHaveLength(2);
    expect(sheet.placed[0]?.marks).toBe(pieceDrawing(strip));
  });

  it('slides along a fold and along the grain to where no join cuts through it, whichever way the piece lies', () => {
    for (const [width, height, turned] of [
      [170, 500, 'upright'],
      [330, 480, 'upright'],
      [380, 665, 'sideways'],
    ] as const) {
      const piece = rectangle(3, -7, width, height);
      const [left, top] = [3 + width / 3, -7];
      const folded = {
        ...piece,
        edges: piece.edges.map((edge, index) => (index === 3 ? { ...edge, role: 'fold' as const } : edge)),
        grain: { from: { x: left, y: top + 40 }, to: { x: left, y: top + height - 40 } },
      };
      const [sheet] = tapedSheets([folded], { ...A4, turned }).sheets;
      if (!sheet) throw new Error('there are pages');
      const along = said(sheet).filter(({ content }) => content.kind === 'fold' || content.kind === 'grain');
      expect(along).toHaveLength(2);
      for (const words of along) {
        const whole = sheet.plan.pages.filter(({ window }) => {
          const clear = { ...window, minY: window.minY + A4.overlap, maxY: window.maxY - A4.overlap };
          return inkPlaces([words]).every((at) => boxContains(clear, at));
        });
        expect(whole).toHaveLength(1);
        // It stays beside its line.
        const before = pieceDrawing(folded).find(
          (mark) => mark.kind === 'words' && mark.content.kind === words.content.kind,
        );
        expect(words.at.x).toBeCloseTo(before?.kind === 'words' ? before.at.x : Number.NaN, 6);
      }
    }
  });
});
