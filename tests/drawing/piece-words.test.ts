import { describe, expect, it } from 'vitest';
import { bodyWords, placedWords } from '../../core/drawing/piece-words';
import type { Piece } from '../../core/garment/piece';
import { cutLine } from '../../core/seams/cut-line';
import { at, pieceOf } from '../seams/pieces';

const corners = [at(0, 0), at(260, 0), at(330, 700), at(0, 640)];
const allowances = (widths: readonly (number | undefined)[], more: Partial<Piece> = {}): Piece => ({
  ...pieceOf(
    corners,
    widths.map((allowance) => ({ allowance })),
  ),
  ...more,
});

const contentsOf = (piece: Piece) =>
  bodyWords(piece, cutLine(piece)).flatMap((mark) => (mark.kind === 'words' ? [mark.content] : []));
const widthsOf = (piece: Piece) =>
  contentsOf(piece).flatMap((content) => (content.kind === 'allowance' ? [content.widths] : []));

describe('bodyWords', () => {
  it('say the name, the cut, what is allowed, and which side lies up where it matters', () => {
    const single = allowances([9, 16, 50, 9], { cut: { how: 'single', count: 3 } });
    expect(contentsOf(single)).toEqual([
      { kind: 'piece-name', name: 'Side gore' },
      { kind: 'cut', how: 'single', count: 3 },
      { kind: 'allowance', widths: [9, 16, 50] },
      { kind: 'right-side-up' },
      { kind: 'upright' },
    ]);
    expect(contentsOf(allowances([9, 16, 50, 9])).map(({ kind }) => kind)).not.toContain('right-side-up');
  });

  it('never pass off an allowance that is not sure', () => {
    expect(widthsOf(allowances([9, undefined, 50, 9]))).toEqual(['not-said']);
    expect(widthsOf(allowances([9, 16, 50, 9], { drawnAs: 'not-known' }))).toEqual(['not-said']);
    expect(widthsOf(allowances([9, 16, 50, 9], { drawnAs: 'included' }))).toEqual(['in-drawing']);
    expect(widthsOf(allowances([0, 0, 0, 0]))).toEqual(['none']);
    const crossed = pieceOf(
      [at(0, 0), at(200, 310), at(210, 0), at(0, 300)],
      corners.map(() => ({ allowance: 9 })),
    );
    expect(widthsOf(crossed)).toEqual(['not-said']);
  });

  it('stand one under the other without touching', () => {
    const words = bodyWords(allowances([9, 16, 50, 9]), cutLine(allowances([9, 16, 50, 9]))).flatMap((mark) =>
      mark.kind === 'words' && mark.content.kind !== 'upright' ? [mark] : [],
    );
    words.slice(1).forEach(({ at: place, size }, i) => {
      const above = words[i] as (typeof words)[0];
      expect(place.y - above.at.y).toBeGreaterThanOrEqual((size + above.size) / 2);
    });
  });
});

describe('placedWords', () => {
  it('are on folds, beside the grain and at labels that say something', () => {
    const labels = [
      { id: 'l1', at: at(50, 300), text: 'pocket' },
      { id: 'l2', at: at(60, 350), text: '  ' },
    ];
    const grain = { from: at(120, 200), to: at(130, 500) };
    const sides = [{ allowance: 9 }, { allowance: 16 }, { allowance: 50 }, { role: 'fold' as const }];
    const words = placedWords({ ...pieceOf(corners, sides), labels, grain });
    expect(words.map(({ content }) => content.kind)).toEqual(['fold', 'grain', 'label']);
    expect(words[2]?.at).toEqual(at(50, 300));
    for (const { angle } of words) expect(Math.abs(angle)).toBeLessThanOrEqual(Math.PI / 2 + 1e-9);
  });
});
