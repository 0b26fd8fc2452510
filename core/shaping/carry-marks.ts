import type { Dart, Notch, Piece } from '../garment/piece';

/** The piece with the darts and notches of one edge at other lengths along it. Dart points stay where they are. */
export function carryMarks(piece: Piece, edgeId: string, carried: (along: number) => number): Piece {
  const moved = <Mark extends Dart | Notch>(mark: Mark): Mark => {
    if (mark.edgeId !== edgeId) return mark;
    const along = carried(mark.along);
    return along === mark.along ? mark : { ...mark, along };
  };
  const darts = piece.darts.map(moved);
  const notches = piece.notches.map(moved);
  const isSame =
    darts.every((dart, i) => dart === piece.darts[i]) && notches.every((each, i) => each === piece.notches[i]);
  return isSame ? piece : { ...piece, darts, notches };
}

/** The marks of an edge kept in proportion when its length goes from `before` to `after` (mm). */
export function scaleMarks(piece: Piece, edgeId: string, before: number, after: number): Piece {
  return before > 0 ? carryMarks(piece, edgeId, (along) => (along * after) / before) : piece;
}
