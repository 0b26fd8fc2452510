/** A stored seam walked from end to end: lengths, notches, where its sides part, and one piece rolled along the other. */
import type { Garment } from '../garment/garment';
import type { Seam } from '../garment/seam';
import { type Affine, composeAffine, reflectionIn, rotationAbout, translation } from '../geometry/affine';
import { move, turnBetween, vectorBetween } from '../geometry/point';
import { netEdgeLength } from './edge-length';
import { type PlaceOnSide, placeOnSide, type SeamNotch, type SeamSide, type SeamSides, seamSides } from './seam-sides';
import { easedShare, isWithinMatch, type Walk, walkSeam } from './walk';

/** A stretch of the walk, by its sewn lengths on either side, over which one side is too long for the other. */
export interface Parting {
  readonly one: readonly [from: number, to: number];
  readonly other: readonly [from: number, to: number];
  /** How much longer the first is than the second with the ease taken off; less than 0 where it is shorter (mm). */
  readonly by: number;
}

/** The lengths of a whole seam, every coming of its edges counted and laps left out (mm). Differences are first less second. */
export interface SeamTotals {
  readonly one: number;
  readonly other: number;
  readonly difference: number;
  readonly beyondEase: number;
}

/** What walking a seam showed. The walk itself is one of its `repeats`, the totals are the whole. */
export interface SeamWalk extends Walk<SeamNotch>, SeamSides {
  readonly totals: SeamTotals;
  /** Between one pair of notches that meet and the next, or an end, where the sides differ by more than SEAM_MATCH. */
  readonly partings: readonly Parting[];
}

/** Two places that are sewn to one another. */
export interface SewnPlaces {
  readonly one: PlaceOnSide;
  readonly other: PlaceOnSide;
}

/** Walks a seam of the garment; `undefined` when one of its edges is no longer there. */
export function walkOfSeam(garment: Garment, seam: Seam): SeamWalk | undefined {
  const sides = seamSides(garment, seam);
  if (!sides) return undefined;
  const ease = seam.ease / sides.repeats;
  const walk = walkSeam(sides.one, sides.other, { ease });
  const totals = totalsOf(sides, seam.ease);
  return { ...walk, ...sides, agrees: isWithinMatch(totals.beyondEase), totals, partings: partingsOf(walk, ease) };
}

/** The lengths of the whole seam. */
export function totalsOf({ one, other }: SeamSides, ease: number): SeamTotals {
  const [a, b] = [wholeLength(one), wholeLength(other)];
  return { one: a, other: b, difference: a - b, beyondEase: a - b - ease };
}

/**
 * The two places that meet when sewn, `along` mm of the first side from where the walk begins; the second follows with
 * the ease spread evenly, and stays at its end where it is too short. For drawing both sides rung by rung.
 */
export function sewnPlaces(walk: SeamWalk, along: number): SewnPlaces {
  const ease = (walk.totals.difference - walk.totals.beyondEase) / walk.repeats;
  return {
    one: placeOnSide(walk.one, along),
    other: placeOnSide(walk.other, along * easedShare(walk.one.length, ease)),
  };
}

/**
 * The rigid motion that lays the second piece against the first where they meet `along` mm of the walk: the places
 * coincide, the seam lines touch there and run on together, and the pieces lie on either side of it. It mirrors when both
 * pieces are drawn lying on the same hand.
 */
export function walkPose(walk: SeamWalk, along: number): Affine {
  const { one, other } = sewnPlaces(walk, along);
  const turn = rotationAbout(other.point, turnBetween(other.direction, one.direction));
  const flip = one.hand === other.hand ? reflectionIn(other.point, move(other.point, other.direction)) : undefined;
  const laid = composeAffine(translation(vectorBetween(other.point, one.point)), turn);
  return flip ? composeAffine(laid, flip) : laid;
}

/** What of a side is sewn, over every coming of its edges: its lap is left out. */
function wholeLength({ edges, stretches, lap }: SeamSide): number {
  const drawn = edges.reduce((sum, { ref, times }) => {
    const piece = stretches.find(({ pieceId }) => pieceId === ref.pieceId)?.piece;
    return sum + times * ((piece && netEdgeLength(piece, ref.edgeId)) ?? 0);
  }, 0);
  return drawn - lap;
}

function partingsOf({ meetings, lengths: [one, other] }: Walk<SeamNotch>, ease: number): Parting[] {
  const share = easedShare(one, ease);
  const met = meetings.map((meeting) => [meeting.one.along, meeting.other.along] as const);
  const stops = [...met.toSorted((a, b) => a[0] - b[0]), [one, other] as const];
  let last: readonly [number, number] = [0, 0];
  return stops.flatMap((stop): Parting[] => {
    const [from, to] = [last, stop];
    // Notches met crosswise part the seam nowhere in particular; they are said to be off themselves.
    if (to[1] < from[1]) return [];
    last = stop;
    const by = (to[0] - from[0]) * share - (to[1] - from[1]);
    return isWithinMatch(by) ? [] : [{ one: [from[0], to[0]], other: [from[1], to[1]], by }];
  });
}
