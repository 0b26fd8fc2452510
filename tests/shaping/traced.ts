import { pieceFromTrace } from '../../core/garment/new-piece';
import type { EdgeRole, Piece } from '../../core/garment/piece';
import type { Point } from '../../core/geometry/point';

/** A corner as [x, y], with the points the edge after it passes and what that edge is. */
export type TracedEdge = readonly [
  corner: readonly [number, number],
  role: EdgeRole,
  through?: readonly (readonly [number, number])[],
];

/** A piece as someone traced it, with ids p-1, p-2, … by the piece's name. */
export function traced(name: string, edges: readonly TracedEdge[]): Piece {
  let count = 0;
  const at = ([x, y]: readonly [number, number]): Point => ({ x, y });
  const piece = pieceFromTrace(
    edges.map(([corner, , through]) => ({ at: at(corner), through: (through ?? []).map(at) })),
    { newId: () => `${name}-${++count}`, name },
  );
  if (!piece) throw new Error('too few corners');
  return { ...piece, edges: piece.edges.map((edge, i) => ({ ...edge, role: edges[i]?.[1] ?? 'seam' })) };
}

/** Half a panel on the fold, its waist straight, its side passing the hip `hip` wide at `depth`. */
export function straightPanel(waist: number, hip: number, depth: number): Piece {
  return traced('panel', [
    [[0, 0], 'waist'],
    [[waist, 0], 'seam', [[hip, depth]]],
    [[hip + 80, 660], 'hem'],
    [[0, 660], 'fold'],
  ]);
}

/** A gore with two equal sides, its waist straight. */
export function straightGore(waist: number, hip: number, depth: number): Piece {
  return traced('gore', [
    [[-waist / 2, 0], 'waist'],
    [[waist / 2, 0], 'seam', [[hip / 2, depth]]],
    [[hip / 2 + 60, 660], 'hem'],
    [[-hip / 2 - 60, 660], 'seam', [[-hip / 2, depth]]],
  ]);
}
