import { describe, expect, it } from 'vitest';
import { panelsRound } from '../../core/fit/panels-round';
import type { Piece } from '../../core/garment/piece';
import { fourGores, panel } from './panels';
import { figure, garmentOf } from './skirts';

function placed(pieces: readonly Piece[]) {
  const { garment, ring } = garmentOf(pieces, figure);
  const found = panelsRound(garment, ring);
  if ('kind' in found) throw new Error(found.why);
  return found;
}

describe('panelsRound', () => {
  it('places panels from centre front to centre back by their share of the waist, and says which end is the front', () => {
    const { garment, ring } = fourGores();
    const found = panelsRound(garment, ring);
    if ('kind' in found) throw new Error(found.why);
    expect(found.map(({ half, front }) => `${half} ${front}`)).toEqual(['both start', 'both start', 'both start']);
    // 4, 5 and 4 of 13 in, half way round being 0.5.
    const [one, two, three] = found;
    expect(one?.from).toBe(0);
    expect(one?.to).toBeCloseTo((0.5 * 4) / 13, 9);
    expect(two?.to).toBeCloseTo((0.5 * 9) / 13, 9);
    expect(three?.to).toBeCloseTo(0.5, 9);
  });

  it('puts the side where it is said to lie', () => {
    const { garment, ring } = fourGores();
    const found = panelsRound(garment, ring, { sideAt: 9 / 13 });
    if ('kind' in found) throw new Error(found.why);
    expect(found[1]?.to).toBeCloseTo(0.25, 9);
  });

  it('makes a half of the panels for either side', () => {
    const sided = (side: 'left' | 'right', waist: number): Piece => ({
      ...panel(side, [waist, 20, 38], ['seam', 'seam']),
      cut: { how: 'single', count: 1 },
      side,
    });
    const found = placed([sided('left', 13), sided('right', 12)]);
    expect(found.map(({ pieceId, half, from, to }) => [pieceId.split('-')[0], half, from, to])).toEqual([
      ['right', 'right', 0, 0.5],
      ['left', 'left', 1, 0.5],
    ]);
  });

  it('refuses one drawing in several places, and a gore that may lie either way', () => {
    const many: Piece = { ...panel('gore', [5, 9, 38], ['seam', 'seam']), cut: { how: 'single', count: 6 } };
    const { garment, ring } = garmentOf([many], figure);
    expect(panelsRound(garment, ring)).toEqual({ kind: 'no-panels-round', why: 'comes-again', pieceId: many.id });
    const corner = panel('skew', [5, 9, 38], ['seam', 'seam']);
    const skew = {
      ...corner,
      corners: corner.corners.map((c, i) => (i === 2 ? { ...c, at: { x: 210, y: 1100 } } : c)),
    };
    // Told which way it lies, it has its place.
    const two = garmentOf([panel('front', [4, 9, 38], ['fold', 'seam']), skew], figure);
    expect(panelsRound(two.garment, two.ring)).toMatchObject({ why: 'which-way', pieceId: skew.id });
    const told = panelsRound(two.garment, two.ring, { fronts: { [skew.id]: 'end' } });
    expect('kind' in told ? told : told[1]?.front).toBe('end');
  });
});
