import { describe, expect, it } from 'vitest';
import { brokenReference } from '../../core/garment/broken-reference';
import type { Garment } from '../../core/garment/garment';
import type { Piece } from '../../core/garment/piece';
import { withPiece } from '../../core/garment/with-piece';
import { linden } from './linden';

const panelWith = (more: Partial<Piece>) => withPiece(linden(), 'panel', (piece) => ({ ...piece, ...more }));

describe('brokenReference', () => {
  it('finds none in a sound garment', () => {
    expect(brokenReference(linden())).toBeUndefined();
  });

  const { pieces, rings, wearer, diagrams } = linden();
  const [panel, ring] = [pieces[0] as Piece, rings[0] as Garment['rings'][0]];
  const [corner] = panel.corners as [Piece['corners'][0]];
  it.each<readonly [string, Garment, string, string]>([
    [
      'a set in use that is not there',
      { ...linden(), wearer: { ...wearer, currentSetId: 'set-winter' } },
      'wearer.currentSetId',
      'loose-end',
    ],
    ['two diagrams of one id', { ...linden(), diagrams: [...diagrams, ...diagrams.slice(1)] }, 'diagrams', 'same-id'],
    ['two pieces of one id', { ...linden(), pieces: [...pieces, panel] }, 'pieces', 'same-id'],
    ['an edge too few', panelWith({ edges: panel.edges.slice(1), darts: [] }), 'pieces.0.edges', 'value'],
    ['two corners of one id', panelWith({ corners: panel.corners.with(2, corner) }), 'pieces.0.corners', 'same-id'],
    [
      'a notch on no edge',
      panelWith({ notches: [{ id: 'n', edgeId: 'e-collar', along: 4, count: 1 }] }),
      'pieces.0.notches',
      'loose-end',
    ],
    ['a piece of no diagram', panelWith({ diagramId: 'plate-99' }), 'pieces.0.diagramId', 'loose-end'],
    [
      'a ring of no piece',
      { ...linden(), rings: [{ ...ring, members: [{ pieceId: 'sleeve' }] }] },
      'rings.0.members',
      'loose-end',
    ],
    [
      'a piece twice in a ring',
      { ...linden(), rings: [{ ...ring, members: [{ pieceId: 'panel' }, { pieceId: 'panel', times: 3 }] }] },
      'rings.0.members',
      'same-id',
    ],
  ])('finds %s', (_, garment, where, why) => {
    expect(brokenReference(garment)).toEqual({ where, why });
  });

  it('refuses two straight edges, which enclose nothing, and more points than a drawing has', () => {
    const straight = panel.edges.slice(0, 2).map((edge) => ({ ...edge, shape: { kind: 'straight' } as const }));
    const flat = { corners: panel.corners.slice(0, 2), edges: straight };
    expect(brokenReference(panelWith(flat))).toEqual({ where: 'pieces.0.corners', why: 'value' });
    const through = Array.from({ length: 1997 }, (_, i) => ({ x: i, y: 2 * i }));
    const crowded = panel.edges.with(1, {
      ...(panel.edges[1] as Piece['edges'][0]),
      shape: { kind: 'curve', through, leaves: 'free', meets: 'free' },
    });
    expect(brokenReference(panelWith({ edges: crowded }))).toEqual({ where: 'pieces.0.corners', why: 'value' });
  });
});
