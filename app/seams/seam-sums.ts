import { JOIN_TOLERANCE, waistFindings } from '../../core/fit/waist-smoothness';
import { cutPieces } from '../../core/garment/cut-pieces';
import type { Garment } from '../../core/garment/garment';
import { neighbourIndex } from '../../core/garment/outline';
import type { Edge, EdgeRole, Piece } from '../../core/garment/piece';
import { type EdgeRef, isOwnMirror, isSameEdge, type Seam } from '../../core/garment/seam';
import { edgeIndex, pieceOf } from '../../core/garment/with-piece';
import type { SeamStretch } from '../../core/seams/seam-sides';
import { type SeamWalk, walkOfSeam } from '../../core/seams/seam-walk';
import { type SeamEnd, seamCorners } from '../../core/seams/true-corners';

/** A seam with what walking it shows; no walk where one of its edges is no longer there. */
export interface SeamLine {
  readonly seam: Seam;
  readonly walk: SeamWalk | undefined;
  readonly isOwnMirror: boolean;
}

/** All seams of a garment, the one furthest from what is meant first; those equally far in the order they were paired. */
export function seamLines(garment: Garment): readonly SeamLine[] {
  return (garment.seams ?? [])
    .map((seam) => ({ seam, walk: walkOfSeam(garment, seam), isOwnMirror: isOwnMirror(seam) }))
    .toSorted((a, b) => worth(b) - worth(a));
}

/** A sixteenth too much stands before notches that miss, and those before a seam in order. */
function worth({ walk, isOwnMirror }: SeamLine): number {
  if (!walk || isOwnMirror) return 0;
  if (!walk.agrees) return 1 + Math.abs(walk.totals.beyondEase);
  return notchesOff(walk) > 0 ? 0.5 : 0;
}

/** How many notches of a seam do not meet their partner or have none. */
export function notchesOff({ meetings, alone }: SeamWalk): number {
  return meetings.filter(({ agrees }) => !agrees).length + alone[0].length + alone[1].length;
}

/** Every edge that can be sewn, in the order of the pieces: no fold, and none of a guide. */
export function sewableEdges({
  pieces,
}: Garment): readonly (EdgeRef & { readonly piece: Piece; readonly edge: Edge })[] {
  return cutPieces({ pieces }).flatMap((piece) =>
    piece.edges
      .filter(({ role }) => role !== 'fold')
      .map((edge) => ({ pieceId: piece.id, edgeId: edge.id, piece, edge })),
  );
}

/** Edges named as seams that are in none. */
export function looseEdges(garment: Garment): ReturnType<typeof sewableEdges> {
  return sewableEdges(garment).filter((ref) => ref.edge.role === 'seam' && !seamWith(garment, ref));
}

/** The seam an edge is in. */
export function seamWith({ seams = [] }: Garment, ref: EdgeRef): Seam | undefined {
  return seams.find(({ one, other }) => [...one, ...other].some((edge) => isSameEdge(edge, ref)));
}

/** Which side of a seam is a band sewn to a waist: the other one is waist edges, of more pieces if both are. */
export function bandSide(garment: Garment, { one, other }: Pick<Seam, 'one' | 'other'>): 'one' | 'other' | undefined {
  const isWaist = (side: Seam['one']) => side.every((ref) => roleOf(garment, ref) === 'waist');
  const [first, second] = [isWaist(one), isWaist(other)];
  if (first !== second) return first ? 'other' : 'one';
  if (!first || one.length === other.length) return undefined;
  return one.length > other.length ? 'other' : 'one';
}

function roleOf(garment: Garment, { pieceId, edgeId }: EdgeRef): EdgeRole | undefined {
  return pieceOf(garment, pieceId)?.edges.find(({ id }) => id === edgeId)?.role;
}

/** What the first side of a seam runs into at an end of its walk; it tells the ends apart. */
export function roleAtEnd({ one }: Pick<SeamWalk, 'one'>, end: SeamEnd): EdgeRole | undefined {
  const stretch: SeamStretch | undefined = end === 'at-start' ? one.stretches[0] : one.stretches.at(-1);
  if (!stretch) return undefined;
  const { piece, edgeId, backwards } = stretch;
  const step = (end === 'at-start') === backwards ? 1 : -1;
  return piece.edges[neighbourIndex(piece, edgeIndex(piece, edgeId), step)]?.role;
}

/**
 * The seam that mends what is found at an edge: mostly the one it is in; for a waist that peaks the seam beside it whose
 * corners are off there.
 */
export function seamInFront(garment: Garment, ref: EdgeRef): Seam | undefined {
  const own = seamWith(garment, ref);
  if (own && !walkOfSeam(garment, own)?.agrees) return own;
  const peaks = waistFindings(garment).some(({ place }) => place.kind === 'edge' && isSameEdge(place, ref));
  return (peaks ? peakSeam(garment, ref) : undefined) ?? own;
}

function peakSeam(garment: Garment, { pieceId, edgeId }: EdgeRef): Seam | undefined {
  const piece = pieceOf(garment, pieceId);
  const index = piece ? edgeIndex(piece, edgeId) : -1;
  if (!piece || index < 0) return undefined;
  const beside = ([-1, 1] as const).flatMap((step) => {
    const edge = piece.edges[neighbourIndex(piece, index, step)];
    const seam = edge && seamWith(garment, { pieceId, edgeId: edge.id });
    return seam ? [seam] : [];
  });
  const isOff = (seam: Seam) =>
    (['at-start', 'at-end'] as const).some(
      (end) => Math.abs(seamCorners(garment, seam, end)?.off ?? 0) > JOIN_TOLERANCE,
    );
  return beside.find(isOff);
}
