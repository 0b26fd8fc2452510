import type { Garment } from './garment';
import { movePiece } from './move-piece';
import type { Piece } from './piece';
import { withoutLooseSeams } from './seam-edits';
import { pieceOf, withoutOne } from './with-piece';

/** The garment with one more piece. */
export function addPiece(garment: Garment, piece: Piece): Garment {
  return { ...garment, pieces: [...garment.pieces, piece] };
}

/** The garment without a piece, which also leaves the rings and the seams it was in. */
export function removePiece(garment: Garment, pieceId: string): Garment {
  const pieces = withoutOne(garment.pieces, pieceId);
  if (pieces === garment.pieces) return garment;
  const rings = garment.rings.map((ring) => {
    const members = ring.members.filter((member) => member.pieceId !== pieceId);
    return members.length === ring.members.length ? ring : { ...ring, members };
  });
  return withoutLooseSeams({ ...garment, pieces, rings });
}

/** The garment with a copy of a piece laid beside it under a new name, all its parts with fresh ids. */
export function copyPiece(
  garment: Garment,
  pieceId: string,
  options: { readonly newId: () => string; readonly name: string; readonly across: number },
): Garment {
  const piece = pieceOf(garment, pieceId);
  if (!piece) return garment;
  return addPiece(garment, movePiece(withFreshIds(piece, options), { dx: options.across, dy: 0 }));
}

/** A copy of a piece under a new name, all its parts with fresh ids, in the order they have in the piece. */
export function withFreshIds(
  piece: Piece,
  { newId, name }: { readonly newId: () => string; readonly name: string },
): Piece {
  const edgeIds = new Map(piece.edges.map((edge) => [edge.id, newId()]));
  const fresh = (edgeId: string) => edgeIds.get(edgeId) ?? edgeId;
  return {
    ...piece,
    id: newId(),
    name,
    corners: piece.corners.map((corner) => ({ ...corner, id: newId() })),
    edges: piece.edges.map((edge) => ({ ...edge, id: fresh(edge.id) })),
    darts: piece.darts.map((dart) => ({ ...dart, id: newId(), edgeId: fresh(dart.edgeId) })),
    notches: piece.notches.map((notch) => ({ ...notch, id: newId(), edgeId: fresh(notch.edgeId) })),
    labels: piece.labels.map((label) => ({ ...label, id: newId() })),
    ...(piece.fullness && {
      fullness: piece.fullness.map((one) => ({ ...one, id: newId(), edgeId: fresh(one.edgeId) })),
    }),
  };
}
