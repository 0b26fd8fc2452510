/** Walking one edge along another, as one walks a paper pattern: stitch line on stitch line, darts folded out. */
import type { Notch, Piece } from '../garment/piece';
import { dartMouths, edgeLength, netAlong } from './edge-length';

/** A difference up to this is none: 1/16 in, the careful tolerance (Threads magazine, 20 August 2020). */
export const SEAM_MATCH = 25.4 / 16;

/** A notch on an edge being walked, at a length from where the walk begins. */
export interface WalkedNotch {
  readonly id: string;
  readonly along: number;
  readonly count: Notch['count'];
}

/** An edge ready to be walked: its sewn length and its notches from the start of the walk. */
export interface WalkedEdge {
  readonly length: number;
  readonly notches: readonly WalkedNotch[];
}

/** Two notches that meet when sewn, and how far the first lies beyond the second. */
export interface NotchMeeting {
  readonly one: WalkedNotch;
  readonly other: WalkedNotch;
  readonly apart: number;
  readonly agrees: boolean;
}

/** What walking showed. Differences are first less second. */
export interface Walk {
  readonly lengths: readonly [number, number];
  readonly difference: number;
  /** What is left of the difference once the intended ease is taken off. */
  readonly beyondEase: number;
  readonly longer: 'first' | 'second' | 'neither';
  /** Whether what is left is within {@link SEAM_MATCH}. */
  readonly agrees: boolean;
  readonly meetings: readonly NotchMeeting[];
  /** Notches of either edge that meet none. */
  readonly alone: readonly [readonly WalkedNotch[], readonly WalkedNotch[]];
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
  const full = edgeLength(piece, edgeId);
  if (full === undefined) return undefined;
  const mouths = dartMouths(piece, edgeId, full);
  const length = netAlong(mouths, full);
  const notches = piece.notches
    .filter((notch) => notch.edgeId === edgeId)
    .map(({ id, along, count }) => {
      const net = netAlong(mouths, Math.min(full, Math.max(0, along)));
      return { id, count, along: way === 'forwards' ? net : length - net };
    })
    .sort((a, b) => a.along - b.along);
  return { length, notches };
}

/**
 * Walks the first edge along the second from their starts. Each notch meets the nearest one of equal
 * count not yet met; where it should lie allows for ease spread evenly along the seam.
 */
export function walkSeam(first: WalkedEdge, second: WalkedEdge, { ease = 0 }: WalkOptions = {}): Walk {
  const difference = first.length - second.length;
  const beyondEase = difference - ease;
  const share = first.length > 0 ? Math.max(0, first.length - ease) / first.length : 1;
  const meetings: NotchMeeting[] = [];
  const left = second.notches.slice();
  const alone: WalkedNotch[] = [];
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

function nearestLike(one: WalkedNotch, along: number, among: readonly WalkedNotch[]): number {
  let best = -1;
  let least = Infinity;
  among.forEach((other, i) => {
    const off = Math.abs(other.along - along);
    if (other.count === one.count && off < least) [best, least] = [i, off];
  });
  return best;
}

/** Within the match, with room for rounding: exactly a sixteenth still agrees. */
function isWithinMatch(difference: number): boolean {
  return Math.abs(difference) <= SEAM_MATCH + 1e-6;
}
