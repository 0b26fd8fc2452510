/** An edge of a piece. */
export interface EdgeRef {
  readonly pieceId: string;
  readonly edgeId: string;
}

/** An edge in a seam. `times` is how often its drawn length comes in that seam; once unless said. */
export interface SeamEdge extends EdgeRef {
  readonly times?: number;
}

/**
 * Two runs of edges that are sewn to one another: mostly one edge to one, or a band to the edges of several panels. The
 * edges of a run are named in the order in which they follow one another, those of one piece in the order they are drawn.
 */
export interface Seam {
  readonly id: string;
  /** What she calls it; may be empty, then the names of its edges say it. */
  readonly name: string;
  readonly one: readonly SeamEdge[];
  readonly other: readonly SeamEdge[];
  /** By how much `one` is meant to be longer than `other` and is eased in; less than 0 where `other` is the longer. */
  readonly ease: number;
  /** Partners mostly run opposite ways round their pieces; `same` when both are walked the way they are drawn. */
  readonly way: 'opposite' | 'same';
}

/** Whether two references name the same edge. */
export function isSameEdge(a: EdgeRef, b: EdgeRef): boolean {
  return a.pieceId === b.pieceId && a.edgeId === b.edgeId;
}

/** Whether a seam sews an edge to itself: to its mirror image on the piece's other half, as at a centre back. */
export function isOwnMirror({ one, other }: Pick<Seam, 'one' | 'other'>): boolean {
  return one.some((a) => other.some((b) => isSameEdge(a, b)));
}
