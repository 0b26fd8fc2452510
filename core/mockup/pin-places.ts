import type { Garment } from '../garment/garment';
import type { PinnedChange, PinnedWhat } from '../garment/mockup';
import type { EdgeRef } from '../garment/seam';
import { pieceOf, withPiece } from '../garment/with-piece';
import { edgeLength } from '../seams/edge-length';
import { NEAR } from '../shaping/hold-course';

/** A change of an edge, as it was pinned. */
export type PinnedOnEdge = Extract<PinnedWhat, { readonly kind: 'edge' }>;

/** The places of a pinned change on an edge as it is now (mm from its start). */
export interface EdgePlaces {
  readonly length: number;
  readonly pins: PinnedOnEdge['pins'];
  readonly from: number | undefined;
  readonly to: number | undefined;
}

/** A place this near to an end of the edge is that end (mm): a pin there moves the corner. */
const AT_END = NEAR / 2;

/** The places as they were written down, those almost at an end of the edge brought to it. */
export function placesOn(what: PinnedOnEdge, length: number): EdgePlaces {
  const settled = (along: number) => (along < AT_END ? 0 : along > length - AT_END ? length : along);
  const pins = what.pins.map(({ along, by }) => ({ along: settled(along), by }));
  return { length, pins, from: fadeAt(what.from, settled), to: fadeAt(what.to, settled) };
}

/** The same places on an edge of another length, in proportion. */
export function placesScaled(places: EdgePlaces, length: number): EdgePlaces {
  const share = places.length > 0 ? length / places.length : 1;
  return movedPlaces(places, length, (along) => along * share);
}

/** The same places counted from the other end of the edge. */
export function placesMirrored(places: EdgePlaces): EdgePlaces {
  const { length } = places;
  const { pins, from, to } = movedPlaces(places, length, (along) => length - along);
  return { length, pins: pins.toReversed(), from: to, to: from };
}

function movedPlaces({ pins, from, to }: EdgePlaces, length: number, moved: (along: number) => number): EdgePlaces {
  return {
    length,
    pins: pins.map(({ along, by }) => ({ along: moved(along), by })),
    from: fadeAt(from, moved),
    to: fadeAt(to, moved),
  };
}

function fadeAt(along: number | undefined, moved: (along: number) => number): number | undefined {
  return along === undefined ? undefined : moved(along);
}

/**
 * The garment with a mark at each place of a pinned change. Marks go with the cloth through every change of shape, so that
 * the places of one change can be found again after another.
 */
export function withPlacesMarked(garment: Garment, id: string, edge: EdgeRef, places: EdgePlaces): Garment {
  return withPiece(garment, edge.pieceId, (piece) => ({
    ...piece,
    notches: [
      ...piece.notches,
      ...alongs(places).map((along, i) => ({ id: markId(id, i), edgeId: edge.edgeId, along, count: 1 as const })),
    ],
  }));
}

/** Where the marks of a change have come to; those of an end stay at that end. `undefined` when the edge is gone. */
export function markedPlaces(garment: Garment, id: string, edge: EdgeRef, places: EdgePlaces): EdgePlaces | undefined {
  const piece = pieceOf(garment, edge.pieceId);
  const length = piece && edgeLength(piece, edge.edgeId);
  if (!piece || length === undefined) return undefined;
  const all = alongs(places);
  return movedPlaces(places, length, (along) => {
    if (along <= 0) return 0;
    if (along >= places.length) return length;
    const mark = piece.notches.find((notch) => notch.id === markId(id, all.indexOf(along)));
    return Math.min(length, Math.max(0, mark?.along ?? along));
  });
}

/** The garment without the marks of these changes. */
export function withoutPlaceMarks(garment: Garment, changes: readonly PinnedChange[]): Garment {
  const begins = changes.map(({ id }) => markId(id, ''));
  const isOurs = ({ id }: { readonly id: string }) => begins.some((begin) => id.startsWith(begin));
  const pieces = garment.pieces.map((piece) =>
    piece.notches.some(isOurs) ? { ...piece, notches: piece.notches.filter((notch) => !isOurs(notch)) } : piece,
  );
  return { ...garment, pieces };
}

function alongs({ pins, from, to }: EdgePlaces): number[] {
  return [...pins.map(({ along }) => along), from, to].filter((along) => along !== undefined);
}

function markId(id: string, number: number | ''): string {
  return `pinned ${id} ${number}`;
}
