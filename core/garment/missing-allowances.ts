import type { Edge, Piece } from './piece';

/** The edges of which it is still to be said what is allowed on them; a fold has nothing to say. */
export function edgesWithoutAllowance({ edges }: Piece): Edge[] {
  return edges.filter(({ role, allowance }) => role !== 'fold' && allowance === undefined);
}

/** The piece with this allowance (mm) on every edge that has none; the same piece where all are said. */
export function withAllowanceWhereNone(piece: Piece, allowance: number | ((edge: Edge) => number)): Piece {
  const bare = new Set(edgesWithoutAllowance(piece));
  if (bare.size === 0) return piece;
  const said = (edge: Edge) => (typeof allowance === 'number' ? allowance : allowance(edge));
  return { ...piece, edges: piece.edges.map((edge) => (bare.has(edge) ? { ...edge, allowance: said(edge) } : edge)) };
}
