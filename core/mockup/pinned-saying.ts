import type { Garment } from '../garment/garment';
import type { PinnedChange } from '../garment/mockup';
import { neighbourIndex } from '../garment/outline';
import type { EdgeRole, Piece } from '../garment/piece';
import type { EdgeRef, Seam } from '../garment/seam';
import { edgeIndex, pieceOf } from '../garment/with-piece';
import { edgeLength } from '../seams/edge-length';
import { type PinnedOnEdge, placesOn } from './pin-places';
import { seamFrom } from './pinned-edge';
import type { PinnedLength } from './pinned-length';

/** Where on an edge: at one of its ends, by what lies beyond it, or so far (mm) from the end it is counted from. */
export type SaidPlace =
  | { readonly kind: 'end'; readonly beyond: EdgeRole }
  | { readonly kind: 'along'; readonly far: number };

/** A pinned change in the numbers by which a dressmaker says it. */
export type PinnedSaying =
  | {
      readonly kind: 'edge';
      readonly edge: EdgeRef;
      /** The seam it is sewn in, this edge's side first. */
      readonly seam: Seam | undefined;
      /** What places are counted from: the waist wherever one end of the edge lies at it, else what its first corner joins. */
      readonly from: EdgeRole;
      /** In order from there. `by` is what the seam loses (mm); less than 0 let out. */
      readonly pins: readonly { readonly by: number; readonly at: SaidPlace }[];
      /** Where it has faded to nothing, before the first pin and after the last; `undefined` where it ends at full. */
      readonly fades: readonly [SaidPlace | undefined, SaidPlace | undefined];
      /** How much of it, 0 to 1, is this edge's. */
      readonly share: number;
    }
  | { readonly kind: 'edge-gone' }
  | {
      readonly kind: 'length';
      readonly at: PinnedLength['at'];
      readonly by: number;
      readonly pieceIds: readonly string[];
    }
  | {
      readonly kind: 'point';
      readonly pieceId: string;
      /** The number of the corner as it is shown, from 1; `undefined` when it is gone. */
      readonly corner: number | undefined;
      readonly right: number;
      readonly down: number;
    };

/** What a pinned change says of a garment. `garment` is the version it was pinned on, or the draft where that is not at hand. */
export function pinnedSaying(garment: Garment, { what }: Pick<PinnedChange, 'what'>): PinnedSaying {
  switch (what.kind) {
    case 'edge':
      return edgeSaying(garment, what);
    case 'length':
      return { kind: 'length', at: what.at, by: what.by, pieceIds: what.pieceIds };
    case 'point': {
      const at = pieceOf(garment, what.pieceId)?.corners.findIndex(({ id }) => id === what.cornerId) ?? -1;
      const corner = at < 0 ? undefined : at + 1;
      return { kind: 'point', pieceId: what.pieceId, corner, right: what.by.dx, down: what.by.dy };
    }
  }
}

function edgeSaying(garment: Garment, what: PinnedOnEdge): PinnedSaying {
  const piece = pieceOf(garment, what.edge.pieceId);
  const present = piece && edgeLength(piece, what.edge.edgeId);
  if (!piece || present === undefined) return { kind: 'edge-gone' };
  const length = what.edgeLength ?? present;
  const ends = edgeBeyond(piece, what.edge.edgeId);
  const isTurned = ends.end === 'waist' && ends.start !== 'waist';
  const places = placesOn(what, length);
  const place = (along: number): SaidPlace => {
    if (along <= 0) return { kind: 'end', beyond: ends.start };
    if (along >= length) return { kind: 'end', beyond: ends.end };
    return { kind: 'along', far: isTurned ? length - along : along };
  };
  const ordered = places.pins.toSorted((a, b) => (isTurned ? b.along - a.along : a.along - b.along));
  const isAtEnd = (along: number) => places.pins.some((pin) => pin.along === along);
  const before = isAtEnd(0) ? undefined : place(places.from ?? 0);
  const after = isAtEnd(length) ? undefined : place(places.to ?? length);
  return {
    kind: 'edge',
    edge: what.edge,
    seam: seamFrom(garment, what.edge),
    from: isTurned ? ends.end : ends.start,
    pins: ordered.map(({ along, by }) => ({ by, at: place(along) })),
    fades: isTurned ? [after, before] : [before, after],
    share: what.share,
  };
}

/** What the edges are that an edge meets at its ends. */
export function edgeBeyond(piece: Piece, edgeId: string): { readonly start: EdgeRole; readonly end: EdgeRole } {
  const index = edgeIndex(piece, edgeId);
  const role = (step: -1 | 1) => piece.edges[neighbourIndex(piece, index, step)]?.role ?? 'seam';
  return { start: role(-1), end: role(1) };
}
