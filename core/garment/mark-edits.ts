import type { Fullness } from './fullness';
import type { Dart, Grain, Label, Notch, Piece } from './piece';
import { withOne, withoutOne } from './with-piece';

/** The piece with a dart added, or the one of the same id replaced. */
export function putDart(piece: Piece, dart: Dart): Piece {
  const darts = put(piece.darts, dart);
  return darts === piece.darts ? piece : { ...piece, darts };
}

/** The piece with a notch added, or the one of the same id replaced. */
export function putNotch(piece: Piece, notch: Notch): Piece {
  const notches = put(piece.notches, notch);
  return notches === piece.notches ? piece : { ...piece, notches };
}

/** The piece with a label added, or the one of the same id replaced. */
export function putLabel(piece: Piece, label: Label): Piece {
  const labels = put(piece.labels, label);
  return labels === piece.labels ? piece : { ...piece, labels };
}

/** The piece with gathers or a pleat added, or those of the same id replaced. */
export function putFullness(piece: Piece, one: Fullness): Piece {
  const { fullness = [] } = piece;
  const now = put(fullness, one);
  return now === fullness ? piece : { ...piece, fullness: now };
}

/** The piece without the dart, notch, label, pleat or gathers of that id. */
export function removeMark(piece: Piece, id: string): Piece {
  const darts = withoutOne(piece.darts, id);
  const notches = withoutOne(piece.notches, id);
  const labels = withoutOne(piece.labels, id);
  const { fullness: before, ...bare } = piece;
  const fullness = before && withoutOne(before, id);
  const same = darts === piece.darts && notches === piece.notches && labels === piece.labels && fullness === before;
  return same ? piece : { ...bare, darts, notches, labels, ...(fullness?.length && { fullness }) };
}

/** The piece with its grain line, or `undefined` for none. */
export function setGrain(piece: Piece, grain: Grain | undefined): Piece {
  const { grain: before, ...bare } = piece;
  if (before === grain) return piece;
  return grain === undefined ? bare : { ...bare, grain };
}

function put<Mark extends { readonly id: string }>(marks: readonly Mark[], mark: Mark): readonly Mark[] {
  return marks.some(({ id }) => id === mark.id) ? withOne(marks, mark.id, () => mark) : [...marks, mark];
}
