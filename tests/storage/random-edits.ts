import { insertCorner, removeCorner } from '../../core/garment/corner-edits';
import { addThrough, curveEdge, removeThrough, straighten } from '../../core/garment/curve-edits';
import { setAllowance } from '../../core/garment/edge-edits';
import type { Garment } from '../../core/garment/garment';
import { putNotch, removeMark } from '../../core/garment/mark-edits';
import { movePiece } from '../../core/garment/move-piece';
import { moveCorner } from '../../core/garment/move-point';
import { rectanglePiece } from '../../core/garment/new-piece';
import type { Piece } from '../../core/garment/piece';
import { addPiece, copyPiece, removePiece } from '../../core/garment/piece-list';
import { setMeasure } from '../../core/garment/wearer-edits';
import { withPiece } from '../../core/garment/with-piece';

/** Numbers from 0 up to 1, the same for the same seed (Lehmer's generator, modulus 2^31 - 1, multiplier 48271). */
export function seeded(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state * 48271) % 2147483647;
    return state / 2147483647;
  };
}

/** One of the things she may do, with everything in it chosen by chance. */
export function randomEdit(random: () => number): (garment: Garment) => Garment {
  const pick = <Item>(items: readonly Item[]) => items[Math.floor(random() * items.length)] as Item;
  const place = () => ({ x: Math.round(random() * 8000) / 10, y: Math.round(random() * 9000) / 10 });
  const newId = () => `id-${Math.floor(random() * 1e15)}`;
  const onPiece: ((piece: Piece) => Piece)[] = [
    (piece) => moveCorner(piece, pick(piece.corners).id, place()),
    (piece) => insertCorner(piece, pick(piece.edges).id, random() * 600, newId),
    (piece) => removeCorner(piece, pick(piece.corners).id),
    (piece) => curveEdge(piece, pick(piece.edges).id),
    (piece) => straighten(piece, pick(piece.edges).id),
    (piece) => addThrough(piece, pick(piece.edges).id, place())?.piece ?? piece,
    (piece) => removeThrough(piece, pick(piece.edges).id, 0),
    (piece) => setAllowance(piece, pick(piece.edges).id, Math.round(random() * 40)),
    (piece) =>
      putNotch(piece, { id: newId(), edgeId: pick(piece.edges).id, along: Math.round(random() * 90), count: 2 }),
    (piece) => removeMark(piece, piece.notches[0]?.id ?? 'none'),
    (piece) => movePiece(piece, { dx: Math.round(random() * 60), dy: Math.round(random() * 50) }),
  ];
  const onGarment: ((garment: Garment) => Garment)[] = [
    (garment) => {
      const piece = rectanglePiece(place(), { across: 20 + random() * 300, down: 30 }, { newId, name: 'Strip' });
      return piece && garment.pieces.length < 8 ? addPiece(garment, piece) : garment;
    },
    (garment) => (garment.pieces.length > 2 ? removePiece(garment, pick(garment.pieces).id) : garment),
    (garment) => {
      if (garment.pieces.length > 7) return garment;
      return copyPiece(garment, pick(garment.pieces).id, { newId, name: 'Copy', across: 55 });
    },
    (garment) => setMeasure(garment, pick(['waist', 'hip', 'knee']), { length: 500 + Math.round(random() * 600) }),
  ];
  return (garment) =>
    random() < 0.75 ? withPiece(garment, pick(garment.pieces).id, pick(onPiece)) : pick(onGarment)(garment);
}
