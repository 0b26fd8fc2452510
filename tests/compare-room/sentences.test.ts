import { describe, expect, it } from 'vitest';
import type { Comparison } from '../../app/compare/compare-store';
import { comparedAs, edgeAt } from '../../app/compare/figures';
import { heldBy, howOf, nudged } from '../../app/compare/laying';
import { inWords } from '../../app/compare/sentences';
import { movePiece } from '../../core/garment/move-piece';
import { rectanglePiece } from '../../core/garment/new-piece';
import type { Piece } from '../../core/garment/piece';
import { idsInOrder, linden } from '../garment/linden';

const newId = idsInOrder();
const cloth = (across: number, down: number) => {
  const piece = rectanglePiece({ x: 20, y: 30 }, { across, down }, { newId, name: 'cloth' }) as Piece;
  const names = ['top', 'right', 'bottom', 'left'];
  return { ...piece, edges: piece.edges.map((edge, i) => ({ ...edge, name: names[i] ?? '' })) };
};
const [narrow, wide] = [cloth(170, 410), cloth(189, 403)];
const garment = { ...linden(), shownIn: 'cm' } as const;

const comparison: Comparison = {
  pieceId: undefined,
  source: { kind: 'piece' },
  otherId: undefined,
  how: undefined,
  corner: undefined,
  otherCorner: undefined,
  edge: undefined,
  otherEdge: undefined,
  way: 'same',
  mirrored: 'never',
  turned: false,
};

describe('what is said of two pieces', () => {
  it('is the widest gap with its place and side, the other side, and every edge that differs', () => {
    const compared = comparedAs({ under: narrow, over: wide }, garment, garment, 'mine');
    const said = inWords({ under: narrow, over: wide }, compared, { under: 'one', over: 'two' }, 'cm').map((line) =>
      line.replaceAll('\u00a0', ' '),
    );
    expect(said).toEqual([
      'On top: two. Beneath: one.',
      'The largest gap is 1.9 cm, where right meets top; there the upper piece lies outside the lower.',
      // The whole lower edge lies as far inside: any place of it is right.
      expect.stringMatching(/^On the other side it lies 0\.7 cm inside at most, .*bottom/),
      'Edges that differ: top +1.9 cm; right −0.7 cm; bottom +1.9 cm; left −0.7 cm.',
    ]);
  });

  it('of a piece and itself is that they lie on one another', () => {
    const compared = comparedAs({ under: narrow, over: narrow }, garment, garment, 'mine');
    const said = inWords({ under: narrow, over: narrow }, compared, { under: 'one', over: 'two' }, 'cm');
    expect(said[1]).toMatch(/^They lie on one another/);
    expect(said[2]).toBe('All edges are of one length.');
  });
});

describe('edgeAt', () => {
  it('names the edge a place is nearest to, and how far along', () => {
    expect(edgeAt(narrow, { x: 190.4, y: 30 + 113 })).toMatchObject({
      index: 1,
      along: expect.closeTo(113, 6),
    });
    expect(edgeAt(narrow, { x: 20 + 170 - 37, y: 441 })).toMatchObject({
      index: 2,
      along: expect.closeTo(37, 6),
    });
  });
});

describe('how a piece is laid', () => {
  it('is where both lie when it is the same piece elsewhere, else by best fit, until she says', () => {
    expect(howOf(comparison, narrow, { ...wide, id: narrow.id })).toBe('as-they-lie');
    expect(howOf(comparison, narrow, wide)).toBe('best');
    expect(howOf({ ...comparison, how: 'edge' }, narrow, wide)).toBe('edge');
  });

  it('holds the chosen corners and edges while they are there, else the ones that stand for one another', () => {
    const gone = { ...comparison, corner: 'gone', edge: narrow.edges[2]?.id };
    const same = { ...narrow, id: 'copy' };
    expect(heldBy(gone, narrow, same)).toEqual({
      cornerId: narrow.corners[0]?.id,
      otherCornerId: narrow.corners[0]?.id,
      edgeId: narrow.edges[2]?.id,
      otherEdgeId: narrow.edges[2]?.id,
    });
  });

  it('is moved by hand without changing the piece, and turned about its middle', () => {
    expect(nudged(narrow, { dx: 0, dy: 0, angle: 0 })).toBe(narrow);
    expect(nudged(narrow, { dx: 7, dy: -11, angle: 0 })).toEqual(movePiece(narrow, { dx: 7, dy: -11 }));
    const half = nudged(narrow, { dx: 0, dy: 0, angle: Math.PI });
    expect(half.corners[0]?.at.x).toBeCloseTo(narrow.corners[2]?.at.x ?? 0, 9);
    expect(half.corners[0]?.at.y).toBeCloseTo(narrow.corners[2]?.at.y ?? 0, 9);
  });
});
