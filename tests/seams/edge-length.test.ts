import { describe, expect, it } from 'vitest';
import type { Piece } from '../../core/garment/piece';
import { dartMouths, edgeLength, netAlong, netEdgeLength } from '../../core/seams/edge-length';
import { at, pieceOf } from './pieces';

const plain = pieceOf([at(0, 0), at(240, 0), at(300, 510), at(0, 510)], []);
const dart = (id: string, along: number, width: number) => ({ id, edgeId: 'e0', along, width, point: at(along, 100) });
const darted: Piece = { ...plain, darts: [dart('a', 80, 25.4), dart('b', 170, 19)] };

describe('edgeLength(piece, edge) and netEdgeLength(piece, edge)', () => {
  it('measure the stitch line: a straight edge by Pythagoras', () => {
    expect(edgeLength(plain, 'e1')).toBeCloseTo(Math.hypot(60, 510), 9);
    expect(edgeLength(plain, 'missing')).toBeUndefined();
  });

  it('leave out what darts take up: an inch of dart is an inch less to sew', () => {
    expect(edgeLength(darted, 'e0')).toBeCloseTo(240, 9);
    expect(netEdgeLength(darted, 'e0')).toBeCloseTo(240 - 25.4 - 19, 9);
    expect(netEdgeLength(darted, 'e1')).toBeCloseTo(Math.hypot(60, 510), 9);
  });

  it('count overlapping mouths once and nothing beyond the ends of the edge', () => {
    const crowded: Piece = { ...plain, darts: [dart('a', 5, 30), dart('b', 25, 30), dart('c', 300, 20)] };
    expect(dartMouths(crowded, 'e0', 240)).toEqual([
      { from: 0, to: 40 },
      { from: 240, to: 240 },
    ]);
    expect(netEdgeLength(crowded, 'e0')).toBeCloseTo(200, 9);
  });
});

describe('netAlong(mouths, along)', () => {
  it('puts a place inside a mouth where the mouth closes', () => {
    const mouths = [{ from: 60, to: 90 }];
    expect(netAlong(mouths, 40)).toBe(40);
    expect(netAlong(mouths, 75)).toBe(60);
    expect(netAlong(mouths, 130)).toBe(100);
  });
});
