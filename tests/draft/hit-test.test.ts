import { describe, expect, it } from 'vitest';
import { hitPiece } from '../../app/draft/hit-test';
import { hitEdge } from '../../app/table/hit-edge';
import { insidePiece } from '../../app/table/name-place';
import { panel as piece } from './panel';

const plus = { leastStretch: 100 };

describe('hitPiece', () => {
  it('finds corners and curve points within reach and not beyond', () => {
    expect(hitPiece(piece, { x: 203, y: 4 }, 5, plus)).toMatchObject({ kind: 'corner', cornerId: 'c1' });
    expect(hitPiece(piece, { x: 240, y: 158 }, 8, plus)).toMatchObject({ kind: 'through', edgeId: 'side', index: 0 });
    expect(hitPiece(piece, { x: 220, y: 260 }, 5, plus)).toBeUndefined();
  });

  it('gives the nearest of two points that are both within a finger', () => {
    expect(hitPiece(piece, { x: 210, y: 55 }, 110, { leastStretch: 900 })).toMatchObject({
      kind: 'corner',
      cornerId: 'c1',
    });
    expect(hitPiece(piece, { x: 234, y: 100 }, 110, { leastStretch: 900 })).toMatchObject({ kind: 'through' });
  });

  it('prefers a point to the edge it lies on, and finds the edge elsewhere with the length along it', () => {
    expect(hitPiece(piece, { x: 150, y: 3 }, 5, plus)).toMatchObject({ kind: 'edge', edgeId: 'waist', along: 150 });
  });

  it('offers a place for a new point in the middle of long stretches only', () => {
    expect(hitPiece(piece, { x: 100, y: 1 }, 5, plus)).toMatchObject({ kind: 'plus', edgeId: 'waist', index: 0 });
    expect(hitPiece(piece, { x: 100, y: 1 }, 5, { leastStretch: 201 })).toMatchObject({ kind: 'edge' });
  });

  it('finds marks where they lie on their edges', () => {
    expect(hitPiece(piece, { x: 61, y: 2 }, 5, plus)).toMatchObject({ kind: 'dart-mouth', id: 'd' });
    expect(hitPiece(piece, { x: 60, y: 92 }, 5, plus)).toMatchObject({ kind: 'dart-point', id: 'd' });
    expect(hitPiece(piece, { x: 2, y: 401 }, 5, plus)).toMatchObject({ kind: 'notch', id: 'n' });
  });

  it('finds the piece by its name in the middle', () => {
    expect(hitPiece(piece, { x: 131, y: 259 }, 6, plus)).toMatchObject({ kind: 'handle' });
  });
});

describe('hitEdge', () => {
  it('is the nearest of the edges within reach', () => {
    expect(hitEdge(piece, { x: 4, y: 6 }, 10)).toMatchObject({ edgeId: 'fold' });
    expect(hitEdge(piece, { x: 6, y: 4 }, 10)).toMatchObject({ edgeId: 'waist' });
    expect(hitEdge(piece, { x: 100, y: 100 }, 10)).toBeUndefined();
  });
});

describe('insidePiece', () => {
  it('follows the curved edge', () => {
    expect(insidePiece(piece, { x: 237, y: 150 })).toBe(true);
    expect(insidePiece(piece, { x: 243, y: 150 })).toBe(false);
    expect(insidePiece(piece, { x: -1, y: 250 })).toBe(false);
  });
});
