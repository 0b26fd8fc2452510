import { carriedFullness } from '../garment/fullness';
import type { Dart, Notch, Piece } from '../garment/piece';

/** The piece with the darts, notches and fullness of one edge at other lengths along it. Dart points stay where they are. */
export function carryMarks(piece: Piece, edgeId: string, carried: (along: number) => number): Piece {
  const moved = <Mark extends Dart | Notch>(mark: Mark): Mark => {
    if (mark.edgeId !== edgeId) return mark;
    const along = carried(mark.along);
    return along === mark.along ? mark : { ...mark, along };
  };
  const darts = piece.darts.map(moved);
  const notches = piece.notches.map(moved);
  const fullness = piece.fullness?.map((one) => (one.edgeId === edgeId ? carriedFullness(one, carried) : one));
  const isSame =
    darts.every((dart, i) => dart === piece.darts[i]) &&
    notches.every((each, i) => each === piece.notches[i]) &&
    (fullness ?? []).every((one, i) => one === piece.fullness?.[i]);
  return isSame ? piece : { ...piece, darts, notches, ...(fullness && { fullness }) };
}

/** The marks of an edge kept in proportion when its length goes from `before` to `after` (mm). */
export function scaleMarks(piece: Piece, edgeId: string, before: number, after: number): Piece {
  return before > 0 ? carryMarks(piece, edgeId, (along) => (along * after) / before) : piece;
}
