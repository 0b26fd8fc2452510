import { describe, expect, it } from 'vitest';
import { insertCorner, removeCorner } from '../../core/garment/corner-edits';
import { carriedFullness, type Fullness } from '../../core/garment/fullness';
import { putFullness, removeMark } from '../../core/garment/mark-edits';
import type { Piece } from '../../core/garment/piece';
import { splitEdge } from '../../core/garment/split-edge';
import { netEdgeLength } from '../../core/seams/edge-length';
import { at, pieceOf } from '../seams/pieces';

const gathers: Fullness = { kind: 'gathers', id: 'g', edgeId: 'e0', from: 40, to: 200, into: 80 };
const pleat: Fullness = { kind: 'pleat', id: 'p', edgeId: 'e0', from: 204, takes: 30, laid: 'box' };
const piece: Piece = {
  ...pieceOf([at(0, 0), at(240, 0), at(300, 510), at(0, 510)], []),
  fullness: [gathers, pleat],
};

describe('carriedFullness(one, carried)', () => {
  it('takes gathers by their ends and a pleat by its middle, as deep as before', () => {
    expect(carriedFullness(gathers, (along) => along * 2)).toEqual({ ...gathers, from: 80, to: 400 });
    expect(carriedFullness(pleat, (along) => along + 7)).toEqual({ ...pleat, from: 211 });
    expect(carriedFullness(pleat, (along) => along)).toBe(pleat);
  });
});

describe('edits of edges with fullness on them', () => {
  it('splitEdge shares gathers in proportion, so that both halves are sewn as long as the whole', () => {
    const split = splitEdge(piece, 'e0', 120, { cornerId: 'c', edgeId: 'x' });
    expect(split.fullness).toEqual([
      { ...gathers, to: 120, into: 40 },
      { ...gathers, id: 'g-x', edgeId: 'x', from: 0, to: 80, into: 40 },
      { ...pleat, edgeId: 'x', from: 84 },
    ]);
    const sewn = (netEdgeLength(split, 'e0') ?? 0) + (netEdgeLength(split, 'x') ?? 0);
    expect(sewn).toBeCloseTo(netEdgeLength(piece, 'e0') ?? 0, 9);
  });

  it('removeCorner lays the fullness of both edges on the one they become', () => {
    let count = 0;
    const split = insertCorner(piece, 'e0', 120, () => `n${++count}`);
    const joined = removeCorner(split, 'n1');
    expect(joined.fullness?.map(({ edgeId }) => edgeId)).toEqual(['e0', 'e0', 'e0']);
    expect(netEdgeLength(joined, 'e0')).toBeCloseTo(240 - 80 - 30, 6);
  });

  it('putFullness adds or replaces, removeMark takes away', () => {
    const wider = putFullness(piece, { ...gathers, into: 100 });
    expect(wider.fullness).toEqual([{ ...gathers, into: 100 }, pleat]);
    expect(removeMark(removeMark(piece, 'g'), 'p')).not.toHaveProperty('fullness');
    expect(removeMark(piece, 'none')).toBe(piece);
  });
});
