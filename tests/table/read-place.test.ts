import { describe, expect, it } from 'vitest';
import type { Chosen } from '../../app/state/table-store';
import { placeOfChosen, readPlace } from '../../app/table/read-place';
import { inches } from '../../core/units/inch';
import { panel } from '../draft/panel';

// 8 in across, 20 in down: lengths that a ruler shows.
const square = {
  ...panel,
  corners: [
    { id: 'c0', at: { x: 0, y: 0 } },
    { id: 'c1', at: { x: inches(8), y: 0 } },
    { id: 'c2', at: { x: inches(8), y: inches(20) } },
    { id: 'c3', at: { x: 0, y: inches(20) } },
  ],
  edges: panel.edges.map((edge) => ({
    ...edge,
    shape: { kind: 'straight' as const },
    ...(edge.id === 'side' && { allowance: inches(0.625) }),
  })),
};
const read = (chosen: Chosen, telling: 'short' | 'full') =>
  readPlace(square, chosen, 'in', telling)?.replace(/[\u00a0\u2009\u202f]/g, ' ');

describe('readPlace', () => {
  it('says where a corner is, and in full how long the edges before and after it are', () => {
    const chosen = { kind: 'corner', pieceId: 'p', cornerId: 'c1' } as const;
    expect(read(chosen, 'short')).toBe('Corner 2, 8 across, 0 down');
    expect(read(chosen, 'full')).toBe('Corner 2, 8 across, 0 down. Before it waist 8 in, after it side 20 in.');
    expect(read({ ...chosen, cornerId: 'c0' }, 'full')).toMatch(/Before it fold 20 in, after it waist 8 in\.$/);
  });

  it('says how long an edge is, between which corners, and its allowance', () => {
    const side = { kind: 'edge', pieceId: 'p', edgeId: 'side' } as const;
    expect(read(side, 'short')).toBe('Edge: side 20 in');
    expect(read(side, 'full')).toBe('Edge: side 20 in, from corner 2 to 3. Allowance 5/8 in.');
    expect(read({ ...side, edgeId: 'fold' }, 'full')).toMatch(/from corner 4 to 1\. No allowance is said yet\.$/);
  });

  it('goes round a piece edge by edge, and leaves marks to the notebook', () => {
    expect(read({ kind: 'piece', pieceId: 'p' }, 'full')).toBe(
      'panel, 4 corners. Round it: waist 8 in, side 20 in, hem 8 in, fold 20 in.',
    );
    expect(read({ kind: 'notch', pieceId: 'p', id: 'n' }, 'full')).toBeUndefined();
  });

  it('knows where the middle of an edge lies', () => {
    const at = placeOfChosen(square, { kind: 'edge', pieceId: 'p', edgeId: 'hem' });
    expect(at?.x).toBeCloseTo(inches(4), 6);
    expect(at?.y).toBeCloseTo(inches(20), 6);
  });
});
