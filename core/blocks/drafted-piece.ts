import type { Cut, Dart, DrawnAs, Edge, EdgeRole, EdgeShape, Grain, Notch, Piece } from '../garment/piece';
import type { TablePoint } from '../geometry/point';

/** One corner of a draft with the edge that begins there. */
export interface DraftedEdge {
  readonly from: TablePoint;
  readonly role: EdgeRole;
  /** Edges that are sewn together carry the same name; none unless said. */
  readonly name?: string;
  /** Straight unless said. */
  readonly shape?: EdgeShape;
  readonly darts?: readonly Omit<Dart, 'id' | 'edgeId'>[];
  readonly notches?: readonly Omit<Notch, 'id' | 'edgeId'>[];
}

export interface DraftedPiece {
  readonly newId: () => string;
  readonly name: string;
  readonly cut: Cut;
  readonly grain: Grain;
  /** `net` unless the source has its seams in the lines. */
  readonly drawnAs?: DrawnAs;
  /** In order, clockwise to the eye. */
  readonly edges: readonly DraftedEdge[];
}

/** A piece as a draft gives it: the stitch line, without allowances; those are for her to say, save that a fold has none. */
export function draftedPiece({ newId, name, cut, grain, drawnAs = 'net', edges }: DraftedPiece): Piece {
  const made = edges.map((drafted) => ({ drafted, edge: edgeOf(drafted, newId()) }));
  return {
    id: newId(),
    name,
    cut,
    drawnAs,
    corners: edges.map(({ from }) => ({ id: newId(), at: from })),
    edges: made.map(({ edge }) => edge),
    darts: made.flatMap(({ drafted, edge }) =>
      (drafted.darts ?? []).map((dart) => ({ ...dart, id: newId(), edgeId: edge.id })),
    ),
    notches: made.flatMap(({ drafted, edge }) =>
      (drafted.notches ?? []).map((notch) => ({ ...notch, id: newId(), edgeId: edge.id })),
    ),
    labels: [],
    grain,
    remarks: '',
  };
}

function edgeOf({ role, shape, name = '' }: DraftedEdge, id: string): Edge {
  const edge: Edge = { id, name, role, shape: shape ?? { kind: 'straight' } };
  return role === 'fold' ? { ...edge, allowance: 0 } : edge;
}
