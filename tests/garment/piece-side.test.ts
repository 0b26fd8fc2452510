import { describe, expect, it } from 'vitest';
import { girthsOf } from '../../core/fit/round-body';
import { isCutForBoth, setSide } from '../../core/garment/piece-side';
import { withPiece } from '../../core/garment/with-piece';
import { inches } from '../../core/units/inch';
import { panel } from '../fit/panels';
import { figure, garmentOf } from '../fit/skirts';
import { lindenPanel } from './linden';

describe('setSide', () => {
  it('says whose side a piece is for, and takes it back to the very shape it had', () => {
    const piece = setSide(lindenPanel(), undefined);
    const left = setSide(piece, 'left');
    expect(left.side).toBe('left');
    expect(setSide(left, 'left')).toBe(left);
    expect(setSide(piece, undefined)).toBe(piece);
    expect(setSide(left, undefined)).toEqual(piece);
  });

  it('makes the fit look at the two sides apart, where they were taped so', () => {
    const half = (name: string, waist: number) => ({
      ...panel(name, [waist, 24, 38], ['seam', 'seam']),
      cut: { how: 'single', count: 1 } as const,
    });
    const { garment, ring } = garmentOf([half('one', 14), half('two', 15)], {
      ...figure,
      waist: { length: inches(27), right: inches(30) },
    });
    expect(girthsOf(garment, ring)[0]).toMatchObject({ kind: 'measured', sides: [] });
    const [one, two] = garment.pieces;
    const sided = withPiece(
      withPiece(garment, one?.id ?? '', (piece) => setSide(piece, 'left')),
      two?.id ?? '',
      (piece) => setSide(piece, 'right'),
    );
    const [waist] = girthsOf(sided, ring);
    const sides = waist?.kind === 'measured' ? waist.sides : [];
    expect(sides.map(({ side, total, body }) => [side, total / 25.4, body / 25.4])).toEqual([
      ['left', 14, 13.5],
      ['right', 15, 15],
    ]);
  });
});

it('isCutForBoth', () => {
  const cut = (how: 'single' | 'pair' | 'fold') => ({ how, count: 1 });
  expect(isCutForBoth({ cut: cut('pair') })).toBe(false);
  expect(isCutForBoth({ side: 'left', cut: cut('single') })).toBe(false);
  expect(isCutForBoth({ side: 'left', cut: cut('pair') })).toBe(true);
  expect(isCutForBoth({ side: 'right', cut: cut('fold') })).toBe(true);
});
