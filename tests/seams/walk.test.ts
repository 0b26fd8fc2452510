import { describe, expect, it } from 'vitest';
import type { Piece } from '../../core/garment/piece';
import { SEAM_MATCH, walkedEdge, walkSeam } from '../../core/seams/walk';
import { at, pieceOf } from './pieces';

const INCH = 25.4;
const edge = (length: number, ...notches: readonly (readonly [number, 1 | 2 | 3])[]) => ({
  length,
  notches: notches.map(([along, count], i) => ({ id: `n${i}`, along, count })),
});

describe('walkSeam(first, second)', () => {
  it('agrees up to a sixteenth of an inch, the careful tolerance (Threads magazine, 20 August 2020)', () => {
    expect(SEAM_MATCH).toBeCloseTo(1.5875, 12);
    expect(walkSeam(edge(500 + SEAM_MATCH), edge(500)).agrees).toBe(true);
    expect(walkSeam(edge(500 + SEAM_MATCH + 0.01), edge(500)).agrees).toBe(false);
  });

  it('says which is longer and by how much; a quarter of an inch meant as ease agrees', () => {
    const [back, front] = [edge(20.25 * INCH), edge(20 * INCH)];
    const plain = walkSeam(back, front);
    expect(plain).toMatchObject({ longer: 'first', agrees: false });
    expect(plain.difference).toBeCloseTo(INCH / 4, 9);
    const eased = walkSeam(back, front, { ease: INCH / 4 });
    expect(eased).toMatchObject({ longer: 'first', agrees: true });
    expect(eased.beyondEase).toBeCloseTo(0, 9);
    expect(walkSeam(front, back)).toMatchObject({ longer: 'second' });
  });

  it('pairs notches of equal count, and leaves the rest alone', () => {
    const { meetings, alone } = walkSeam(edge(500, [110, 1], [301, 2]), edge(500, [111, 1], [140, 1], [306, 2]));
    expect(meetings.map(({ one, other, agrees }) => [one.along, other.along, agrees])).toEqual([
      [110, 111, true],
      [301, 306, false],
    ]);
    expect(alone[1].map(({ along }) => along)).toEqual([140]);
  });

  it('spreads ease evenly: half way along it, half of it', () => {
    const { meetings } = walkSeam(edge(408, [204, 1]), edge(400, [200, 1]), { ease: 8 });
    expect(meetings[0]?.apart).toBeCloseTo(0, 9);
  });
});

describe('walkedEdge(piece, edge, way)', () => {
  const piece: Piece = {
    ...pieceOf([at(0, 0), at(260, 0), at(300, 410)], []),
    darts: [{ id: 'd', edgeId: 'e0', along: 90, width: INCH, point: at(90, 120) }],
    notches: [{ id: 'n', edgeId: 'e0', along: 200, count: 1 }],
  };

  it('folds darts out before the notches beyond them', () => {
    expect(walkedEdge(piece, 'e0', 'forwards')).toEqual({
      length: 260 - INCH,
      notches: [{ id: 'n', along: 200 - INCH, count: 1 }],
    });
  });

  it('walked backwards counts from the other end', () => {
    expect(walkedEdge(piece, 'e0', 'backwards')?.notches[0]?.along).toBeCloseTo(60, 9);
    expect(walkedEdge(piece, 'none', 'forwards')).toBeUndefined();
  });
});
