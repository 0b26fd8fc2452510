/** Pieces made in few words, for tests. */
import type { CornerFinish, Cut, EdgeRole, Piece } from '../../core/garment/piece';
import { type Affine, transformPoint } from '../../core/geometry/affine';
import type { Point } from '../../core/geometry/point';

export interface Side {
  readonly role?: EdgeRole;
  readonly allowance?: number | undefined;
  /** Points the edge curves through; straight without. */
  readonly through?: readonly Point[];
  readonly name?: string;
}

export function at(x: number, y: number): Point {
  return { x, y };
}

/** A piece with a corner at each point and, from each corner on, the edge of the same index. */
export function pieceOf(
  corners: readonly Point[],
  sides: readonly Side[],
  finishes: readonly (CornerFinish | undefined)[] = [],
  cut: Cut = { how: 'pair', count: 2 },
): Piece {
  return {
    id: 'p',
    name: 'Side gore',
    cut,
    drawnAs: 'net',
    corners: corners.map((point, i) => {
      const finish = finishes[i];
      return finish ? { id: `c${i}`, at: point, finish } : { id: `c${i}`, at: point };
    }),
    edges: corners.map((_, i) => {
      const { role = 'seam', allowance, through, name = '' } = sides[i] ?? {};
      const shape = through
        ? ({ kind: 'curve', through, leaves: 'free', meets: 'free' } as const)
        : ({ kind: 'straight' } as const);
      return { id: `e${i}`, name, role, shape, ...(allowance === undefined ? {} : { allowance }) };
    }),
    darts: [],
    notches: [],
    labels: [],
    remarks: '',
  };
}

/** The same piece moved, turned or mirrored. */
export function movedPiece(piece: Piece, map: Affine): Piece {
  const to = (point: Point) => transformPoint(map, point);
  return {
    ...piece,
    corners: piece.corners.map((corner) => ({ ...corner, at: to(corner.at) })),
    edges: piece.edges.map((edge) =>
      edge.shape.kind === 'straight'
        ? edge
        : { ...edge, shape: { ...edge.shape, through: edge.shape.through.map(to) } },
    ),
    darts: piece.darts.map((dart) => ({ ...dart, point: to(dart.point) })),
    labels: piece.labels.map((label) => ({ ...label, at: to(label.at) })),
    ...(piece.grain ? { grain: { from: to(piece.grain.from), to: to(piece.grain.to) } } : {}),
  };
}

/** The same piece run the other way round: corner 0 stays, every edge keeps its id and is travelled backwards. */
export function runBackwards(piece: Piece): Piece {
  const edges = piece.edges.toReversed();
  return {
    ...piece,
    corners: [piece.corners[0] as Piece['corners'][number], ...piece.corners.slice(1).reverse()],
    edges: edges.map((edge) =>
      edge.shape.kind === 'straight'
        ? edge
        : {
            ...edge,
            shape: {
              ...edge.shape,
              through: edge.shape.through.toReversed(),
              leaves: edge.shape.meets,
              meets: edge.shape.leaves,
            },
          },
    ),
  };
}
