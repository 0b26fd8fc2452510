import { takeInSeam } from '../fit/take-in-seam';
import { isGuide } from '../garment/cut-pieces';
import type { Garment } from '../garment/garment';
import { type EdgeRef, isSameEdge, type Seam } from '../garment/seam';
import { pieceOf, withPiece } from '../garment/with-piece';
import { type SeamSides, type SeamStretch, seamSides } from '../seams/seam-sides';
import { sewnAlong } from '../seams/sewn-along';
import { type NotTakenIn, type Pinned, takeIn } from '../shaping/take-in';
import { drawnEnd, keptTrue, offBy, type SeamEnd } from './keep-true';
import type { EdgePlaces } from './pin-places';

/** Why an edge cannot follow what was pinned on it. */
export interface EdgeNotCarried {
  readonly kind: 'edge-not-carried';
  /** `fades-inside`: it is said to fade to nothing at a place where it is still pinned. */
  readonly why: Exclude<NotTakenIn['why'], 'no-edge'> | 'edge-gone' | 'on-a-fold' | 'fades-inside' | 'no-seam';
  readonly pieceId?: string;
}

export interface EdgeCarried {
  readonly kind: 'edge-carried';
  readonly garment: Garment;
  /** By how much the sides of the seam differ more than they did before (mm), where no corner could give. */
  readonly left: number;
}

/** Where a corner was pinned the sides are made to differ by what they did before; elsewhere so little harms no seam (mm). */
const AT_CORNER = 1e-3;
const HARMLESS = 0.5;

/**
 * The garment with what was pinned along an edge taken in or let out there: the edge's share of it on the edge, the rest on
 * its partner in the seam at the places that meet it. Without a partner the edge gives all of it. The sides of the seam
 * differ afterwards by what they did before.
 */
export function edgeCarried(
  garment: Garment,
  edge: EdgeRef,
  places: EdgePlaces,
  share: number,
): EdgeCarried | EdgeNotCarried {
  const piece = pieceOf(garment, edge.pieceId);
  const role = piece?.edges.find(({ id }) => id === edge.edgeId)?.role;
  if (!piece || isGuide(piece) || role === undefined) return { kind: 'edge-not-carried', why: 'edge-gone' };
  if (role === 'fold') return { kind: 'edge-not-carried', why: 'on-a-fold', pieceId: piece.id };
  const pins = gradedPins(places);
  if (!pins) return { kind: 'edge-not-carried', why: 'fades-inside', pieceId: piece.id };
  const seam = seamFrom(garment, edge);
  if (seam) return seamCarried(garment, edge, seam, pins, share);
  const taken = takeIn(piece, edge.edgeId, pins);
  if ('why' in taken) return { kind: 'edge-not-carried', why: goneOr(taken.why), pieceId: piece.id };
  return { kind: 'edge-carried', garment: withPiece(garment, piece.id, () => taken), left: 0 };
}

/** The seam an edge is sewn in, its own side first. */
export function seamFrom({ seams = [] }: Pick<Garment, 'seams'>, edge: EdgeRef): Seam | undefined {
  const has = (side: Seam['one']) => side.some((each) => isSameEdge(each, edge));
  const seam = seams.find(({ one, other }) => has(one) || has(other));
  if (!seam || has(seam.one)) return seam;
  return { ...seam, one: seam.other, other: seam.one, ease: -seam.ease };
}

/** Pins in order, with a pin of nothing where the change ends; `undefined` when that place is among the pins. */
function gradedPins({ pins, from, to, length }: EdgePlaces): Pinned[] | undefined {
  const ordered = pins.toSorted((a, b) => a.along - b.along);
  const [first, last] = [ordered[0], ordered.at(-1)];
  if (!first || !last) return [];
  if ((from !== undefined && from > first.along) || (to !== undefined && to < last.along)) return undefined;
  const still = (along: number | undefined, pin: Pinned) =>
    along === undefined || along === pin.along || along <= 0 || along >= length ? [] : [{ along, by: 0 }];
  return [...still(from, first), ...ordered, ...still(to, last)];
}

function seamCarried(
  garment: Garment,
  edge: EdgeRef,
  seam: Seam,
  pins: readonly Pinned[],
  share: number,
): EdgeCarried | EdgeNotCarried {
  const sides = seamSides(garment, seam);
  const stretch = sides?.one.stretches.find((each) => isSameEdge(each, edge));
  if (!sides || !stretch) return { kind: 'edge-not-carried', why: 'no-seam', pieceId: edge.pieceId };
  const walked = pinsOnWalk(sides, stretch, pins);
  const taken = takeInSeam(garment, seam, { pins: walked, shareOfOne: share });
  if ('why' in taken) {
    return { kind: 'edge-not-carried', why: goneOr(taken.why), pieceId: taken.pieceId ?? edge.pieceId };
  }
  const pinnedEnds = (['start', 'end'] as const).filter((end) => isEndPinned(sides, walked, end));
  const ends = pinnedEnds.length > 0 ? pinnedEnds : [hemEnd(sides)];
  const harmless = pinnedEnds.length > 0 ? AT_CORNER : HARMLESS;
  const trued = ends.reduce((so, end) => keptTrue(garment, so, seam, { end, harmless }), taken);
  const after = seamSides(trued, seam);
  const left = after ? offBy(after) - offBy(sides) : 0;
  return { kind: 'edge-carried', garment: trued, left: Math.abs(left) <= HARMLESS ? 0 : left };
}

/** Pins by the walk of the seam, held to the edge they are on where other edges of the side follow it. */
function pinsOnWalk({ one }: SeamSides, stretch: SeamStretch, pins: readonly Pinned[]): Pinned[] {
  const { piece, edgeId, from, length, backwards } = stretch;
  const walked = pins.map(({ along, by }) => {
    const sewn = sewnAlong(piece, edgeId, along) ?? 0;
    return { along: from + (backwards ? length - sewn : sewn), by };
  });
  const isInside = (place: number) => place > 1e-6 && place < one.length - 1e-6;
  const bounds = [from, from + length]
    .filter((place) => isInside(place) && walked.every((pin) => Math.abs(pin.along - place) > 1e-6))
    .map((along) => ({ along, by: 0 }));
  return [...walked, ...bounds].sort((a, b) => a.along - b.along);
}

function isEndPinned({ one }: SeamSides, walked: readonly Pinned[], end: SeamEnd): boolean {
  const at = end === 'start' ? 0 : one.length;
  return walked.some(({ along, by }) => by !== 0 && Math.abs(along - at) < 1e-6);
}

/** The end of a seam that lies at a hem; its last where neither does. */
export function hemEnd({ other }: SeamSides): SeamEnd {
  const first = other.stretches[0];
  if (!first) return 'end';
  const index = first.piece.edges.findIndex(({ id }) => id === first.edgeId);
  const count = first.piece.edges.length;
  const beside = drawnEnd(first, 'start') === 'start' ? index + count - 1 : index + 1;
  return first.piece.edges[beside % count]?.role === 'hem' ? 'start' : 'end';
}

function goneOr(why: NotTakenIn['why'] | 'no-seam'): EdgeNotCarried['why'] {
  return why === 'no-edge' ? 'edge-gone' : why;
}
