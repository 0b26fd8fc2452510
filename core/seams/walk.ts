/** Walking one edge along another, as one walks a paper pattern: stitch line on stitch line, darts folded out. */
import type { Notch, Piece } from '../garment/piece';
import { netEdgeLength } from './edge-length';
import { sewnAlong } from './sewn-along';

/** A difference up to this is none: 1/16 in, the careful tolerance (Threads magazine, 20 August 2020). */
export const SEAM_MATCH = 25.4 / 16;

/** A notch on an edge being walked, at a length from where the walk begins. */
export interface WalkedNotch {
  readonly id: string;
  readonly along: number;
  readonly count: Notch['count'];
}

/** An edge ready to be walked: its sewn length and its notches from the start of the walk. */
export interface WalkedEdge<Mark extends WalkedNotch = WalkedNotch> {
  readonly length: number;
  readonly notches: readonly Mark[];
}

/** Two notches that meet when sewn, and how far the first lies beyond the second. */
export interface NotchMeeting<Mark extends WalkedNotch = WalkedNotch> {
  readonly one: Mark;
  readonly other: Mark;
  readonly apart: number;
  readonly agrees: boolean;
}

/** What walking showed. Differences are first less second. */
export interface Walk<Mark extends WalkedNotch = WalkedNotch> {
  readonly lengths: readonly [number, number];
  readonly difference: number;
  /** What is left of the difference once the intended ease is taken off. */
  readonly beyondEase: number;
  readonly longer: 'first' | 'second' | 'neither';
  /** Whether what is left is within {@link SEAM_MATCH}. */
  readonly agrees: boolean;
  readonly meetings: readonly NotchMeeting<Mark>[];
  /** Notches of either edge that meet none. */
  readonly alone: readonly [readonly Mark[], readonly Mark[]];
}

/** What is intended. */
export interface WalkOptions {
  /** By how much the first edge is meant to be longer than the second (negative: shorter), eased in evenly; 0 unless said. */
  readonly ease?: number;
}

/**
 * An edge of a piece for walking. Partners mostly run opposite ways round their pieces, so one of them is walked
 * `backwards`. `undefined` when the piece has no such edge.
 */
export function walkedEdge(piece: Piece, edgeId: string, way: 'forwards' | 'backwards'): WalkedEdge | undefined {
  const length = netEdgeLength(piece, edgeId);
  if (length === undefined) return undefined;
  const notches = piece.notches
    .filter((notch) => notch.edgeId === edgeId)
    .map(({ id, along, count }) => {
      const net = sewnAlong(piece, edgeId, along) ?? 0;
      return { id, count, along: way === 'forwards' ? net : length - net };
    })
    .sort((a, b) => a.along - b.along);
  return { length, notches };
}

/**
 * Walks the first edge along the second from their starts. Each notch meets the nearest one of equal
 * count not yet met; where it should lie allows for ease spread evenly along the seam.
 */
export function walkSeam<Mark extends WalkedNotch>(
  first: WalkedEdge<Mark>,
  second: WalkedEdge<Mark>,
  { ease = 0 }: WalkOptions = {},
): Walk<Mark> {
  const difference = first.length - second.length;
  const beyondEase = difference - ease;
  const share = easedShare(first.length, ease);
  const meetings: NotchMeeting<Mark>[] = [];
  const left = second.notches.slice();
  const alone: Mark[] = [];
  for (const one of first.notches) {
    const at = nearestLike(one, one.along * share, left);
    const other = left[at];
    if (!other) {
      alone.push(one);
      continue;
    }
    left.splice(at, 1);
    const apart = one.along * share - other.along;
    meetings.push({ one, other, apart, agrees: isWithinMatch(apart) });
  }
  return {
    lengths: [first.length, second.length],
    difference,
    beyondEase,
    longer: isWithinMatch(difference) ? 'neither' : difference > 0 ? 'first' : 'second',
    agrees: isWithinMatch(beyondEase),
    meetings,
    alone: [alone, left],
  };
}

/** How much of the second edge each mm of the first takes when `ease` is spread evenly along it; 1 without ease. */
export function easedShare(length: number, ease: number): number {
  return length > 0 ? Math.max(0, length - ease) / length : 1;
}

function nearestLike(one: WalkedNotch, along: number, among: readonly WalkedNotch[]): number {
  let best = -1;
  let least = Infinity;
  among.forEach((other, i) => {
    const off = Math.abs(other.along - along);
    if (other.count === one.count && off < least) [best, least] = [i, off];
  });
  return best;
}

/** Within {@link SEAM_MATCH}, with room for rounding: exactly a sixteenth still agrees. */
export function isWithinMatch(difference: number): boolean {
  return Math.abs(difference) <= SEAM_MATCH + 1e-6;
}
