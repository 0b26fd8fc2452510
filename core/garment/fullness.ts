interface FullnessBase {
  readonly id: string;
  readonly edgeId: string;
}

/** A stretch of an edge, from one length along it to another, drawn up by gathers to the length `into`. */
export interface Gathers extends FullnessBase {
  readonly kind: 'gathers';
  readonly from: number;
  readonly to: number;
  readonly into: number;
}

/**
 * One pleat whose fold and placement lines meet an edge: it takes up `takes` of the edge's length from `from` on (twice
 * the depth of the fold) and is laid towards the start of the edge, its end, or both ways from its middle (a box pleat
 * beneath: an inverted pleat).
 */
export interface Pleat extends FullnessBase {
  readonly kind: 'pleat';
  readonly from: number;
  readonly takes: number;
  readonly laid: 'to-start' | 'to-end' | 'inverted' | 'box';
}

/** Width that is sewn up smaller than it is cut. */
export type Fullness = Gathers | Pleat;

/**
 * Fullness taken to other lengths along its edge: gathers by both their ends, sewn as short as before; a pleat by its
 * middle, as deep as before. The same object when it stays where it is.
 */
export function carriedFullness(one: Fullness, carried: (along: number) => number): Fullness {
  if (one.kind === 'gathers') {
    const [from, to] = [carried(one.from), carried(one.to)];
    return from === one.from && to === one.to ? one : { ...one, from: Math.min(from, to), to: Math.max(from, to) };
  }
  const middle = one.from + one.takes / 2;
  const now = carried(middle);
  return now === middle ? one : { ...one, from: Math.max(0, now - one.takes / 2) };
}
