import type { EdgeRole, Piece, StatedOnEdge } from './piece';
import { withEdge } from './with-piece';

/** The piece with an edge renamed. */
export function nameEdge(piece: Piece, edgeId: string, name: string): Piece {
  return withEdge(piece, edgeId, (edge) => (edge.name === name ? edge : { ...edge, name }));
}

/**
 * The piece with an edge given another role. A fold is cut without allowance and lies straight, and a piece that was to be
 * cut as drawn is cut on it.
 */
export function setRole(piece: Piece, edgeId: string, role: EdgeRole): Piece {
  const after = withRole(piece, edgeId, role);
  return after !== piece && role === 'fold' && piece.cut.how === 'single'
    ? { ...after, cut: { ...piece.cut, how: 'fold' } }
    : after;
}

function withRole(piece: Piece, edgeId: string, role: EdgeRole): Piece {
  return withEdge(piece, edgeId, (edge) => {
    if (edge.role === role) return edge;
    return role === 'fold' ? { ...edge, role, allowance: 0, shape: { kind: 'straight' } } : { ...edge, role };
  });
}

/** The piece with the allowance of an edge in mm, or `undefined` for not said. */
export function setAllowance(piece: Piece, edgeId: string, allowance: number | undefined): Piece {
  return withEdge(piece, edgeId, (edge) => {
    if (edge.allowance === allowance) return edge;
    const { allowance: _, ...bare } = edge;
    return allowance === undefined ? bare : { ...bare, allowance };
  });
}

/** The piece with a printed figure on an edge, or `undefined` for none. */
export function setStated(piece: Piece, edgeId: string, stated: StatedOnEdge | undefined): Piece {
  return withEdge(piece, edgeId, (edge) => {
    const { stated: before, ...bare } = edge;
    if (before?.length === stated?.length && before?.rules === stated?.rules) return edge;
    return stated === undefined ? bare : { ...bare, stated };
  });
}
