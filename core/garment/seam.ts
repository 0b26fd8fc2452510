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
 * What of one side of a seam lies beyond the other and is sewn to nothing, as where a band laps over at its opening: mm
 * over the whole seam, at one end of the walk or, where the walk is only half of the seam, at both ends of the whole.
 */
export interface SeamLap {
  readonly side: 'one' | 'other';
  readonly length: number;
  readonly at: 'start' | 'end';
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
  /** A lap is neither ease nor a fault. */
  readonly lap?: SeamLap;
  /** Partners mostly run opposite ways round their pieces; `same` when both are walked the way they are drawn. */
  readonly way: 'opposite' | 'same';
}

/** Whether two references name the same edge. */
export function isSameEdge(a: EdgeRef, b: EdgeRef): boolean {
  return a.pieceId === b.pieceId && a.edgeId === b.edgeId;
}

/**
 * Whether a seam sews an edge to itself: to its mirror image on the piece's other half, as at a centre back, or on the next
 * of several pieces cut from one drawing.
 */
export function isOwnMirror({ one, other }: Pick<Seam, 'one' | 'other'>): boolean {
  return one.some((a) => other.some((b) => isSameEdge(a, b)));
}

/** The same seam with its sides named the other way round. */
export function turnedSeam({ lap, ...seam }: Seam): Seam {
  const turned = { ...seam, one: seam.other, other: seam.one, ease: -seam.ease };
  return lap ? { ...turned, lap: { ...lap, side: lap.side === 'one' ? 'other' : 'one' } } : turned;
}

/** The seam an edge is the one side of, seen from that edge; only where that side is this edge alone. */
export function seamOfEdge(seams: readonly Seam[] | undefined, edge: EdgeRef): Seam | undefined {
  const isIt = (side: Seam['one']) => side.length === 1 && side[0] !== undefined && isSameEdge(side[0], edge);
  const seam = seams?.find(({ one, other }) => isIt(one) || isIt(other));
  if (!seam) return undefined;
  return isIt(seam.one) ? seam : turnedSeam(seam);
}
