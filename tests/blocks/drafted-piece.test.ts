import { describe, expect, it } from 'vitest';
import { draftedPiece } from '../../core/blocks/drafted-piece';
import { numberedIds } from './in-inches';

describe('draftedPiece', () => {
  it('is a stitch line without allowances, but for the fold that has none', () => {
    const piece = draftedPiece({
      newId: numberedIds(),
      name: 'Front',
      cut: { how: 'fold', count: 1 },
      grain: { from: { x: 20, y: 50 }, to: { x: 20, y: 400 } },
      edges: [
        { from: { x: 0, y: 0 }, role: 'waist', darts: [{ along: 80, width: 20, point: { x: 80, y: 95 } }] },
        { from: { x: 190, y: 0 }, role: 'seam', notches: [{ along: 160, count: 2 }] },
        { from: { x: 240, y: 610 }, role: 'hem' },
        { from: { x: 0, y: 610 }, role: 'fold' },
      ],
    });
    expect(piece.drawnAs).toBe('net');
    expect(piece.edges.map(({ allowance }) => allowance)).toEqual([undefined, undefined, undefined, 0]);
    expect(piece.darts[0]?.edgeId).toBe(piece.edges[0]?.id);
    expect(piece.notches[0]?.edgeId).toBe(piece.edges[1]?.id);
    const ids = [piece, ...piece.corners, ...piece.edges, ...piece.darts, ...piece.notches].map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
  });
});
