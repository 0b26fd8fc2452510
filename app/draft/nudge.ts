import { setGrain } from '../../core/garment/mark-edits';
import { movePiece } from '../../core/garment/move-piece';
import type { Piece } from '../../core/garment/piece';
import { move, type TablePoint, type Vector } from '../../core/geometry/point';
import type { Chosen } from '../state/table-store';
import { chosenStop } from '../table/walk';
import { dragged } from './drag-effect';
import { type Hit, placeOnEdge } from './hit-test';

/** A piece with what is chosen of it moved, and where that lies now. */
export interface Nudged {
  readonly piece: Piece;
  readonly at: TablePoint | undefined;
}

/**
 * Moves what is chosen by a small step: a point, a label, the grain line, the point of a dart, a notch along its edge,
 * or the whole piece. `undefined` for what has no place of its own.
 */
export function nudged(piece: Piece, chosen: Chosen, by: Vector): Nudged | undefined {
  if (chosen.kind === 'piece') return { piece: movePiece(piece, by), at: undefined };
  if (chosen.kind === 'grain') {
    const { grain } = piece;
    if (!grain) return undefined;
    const [from, to] = [move(grain.from, by), move(grain.to, by)];
    return { piece: setGrain(piece, { from, to }), at: from };
  }
  const hold = holdOf(piece, chosen);
  if (!hold) return undefined;
  const after = dragged(piece, hold, move(hold.at, by));
  return { piece: after, at: holdOf(after, chosen)?.at };
}

/** What a hand would take hold of to move what is chosen. */
function holdOf(piece: Piece, chosen: Chosen): Hit | undefined {
  const stop = chosenStop(piece, chosen);
  if (stop) return stop;
  switch (chosen.kind) {
    case 'dart': {
      const dart = piece.darts.find(({ id }) => id === chosen.id);
      return dart && { kind: 'dart-point', id: dart.id, at: dart.point };
    }
    case 'notch': {
      const notch = piece.notches.find(({ id }) => id === chosen.id);
      return notch && { kind: 'notch', id: notch.id, at: placeOnEdge(piece, notch.edgeId, notch.along) };
    }
    case 'label': {
      const label = piece.labels.find(({ id }) => id === chosen.id);
      return label && { kind: 'label', id: label.id, at: label.at };
    }
    default:
      return undefined;
  }
}
