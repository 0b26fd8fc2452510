import { removeCorner } from '../../core/garment/corner-edits';
import { removeThrough } from '../../core/garment/curve-edits';
import { removeMark, setGrain } from '../../core/garment/mark-edits';
import { moveCorner, moveThrough } from '../../core/garment/move-point';
import type { Piece } from '../../core/garment/piece';
import { pieceOf, withPiece } from '../../core/garment/with-piece';
import type { TablePoint } from '../../core/geometry/point';
import { inches, type ShownIn } from '../../core/units/inch';
import { useGarment } from '../state/garment-store';
import { type Chosen, useTable } from '../state/table-store';
import type { KeyPress } from '../table/tool';
import { say } from '../ui/say';
import { draftWords as words } from '../words/draft';
import { chosenAt, chosenStop, nextStop, type Stop } from './walk';
import { writeSquares } from './write-squares';

const ARROWS: Readonly<Record<string, readonly [number, number]>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, -1],
  ArrowDown: [0, 1],
};

/** Works the chosen piece by keys alone: from point to point, a step at a time, and taking things away. */
export function pointKey({ key }: KeyPress): boolean {
  const { garment } = useGarment.getState();
  const { chosen } = useTable.getState();
  const piece = garment && 'pieceId' in chosen ? pieceOf(garment, chosen.pieceId) : undefined;
  if (key === 'PageDown' || key === 'PageUp') return walk(piece, key === 'PageDown' ? 1 : -1);
  if (!piece) return false;
  const arrow = ARROWS[key];
  if (arrow) return nudge(piece, chosen, arrow);
  if (key === 'Delete' || key === 'Backspace') return takeAway(piece, chosen);
  if (key !== 'Escape' || chosen.kind === 'nothing') return false;
  useTable.getState().choose(chosen.kind === 'piece' ? { kind: 'nothing' } : { kind: 'piece', pieceId: piece.id });
  return true;
}

/** Chooses the next or the point before; without a piece in hand the first of the first piece. */
export function walk(inHand: Piece | undefined, step: 1 | -1): boolean {
  const piece = inHand ?? useGarment.getState().garment?.pieces[0];
  const stop = piece && nextStop(piece, useTable.getState().chosen, step);
  if (!piece || !stop) return false;
  useTable.getState().choose(chosenAt(piece.id, stop));
  say(sayStop(piece, stop));
  return true;
}

/** One step of the grid, or without snapping a sixteenth of an inch or a millimetre. */
export function nudgeStep(shownIn: ShownIn): number {
  const { snapping, snapStep } = useTable.getState();
  return snapping ? snapStep : shownIn === 'in' ? inches(1 / 16) : 1;
}

function nudge(piece: Piece, chosen: Chosen, [across, down]: readonly [number, number]): boolean {
  const stop = chosenStop(piece, chosen);
  if (!stop) return false;
  const shownIn = useGarment.getState().garment?.shownIn ?? 'in';
  const step = nudgeStep(shownIn);
  const to = { x: stop.at.x + across * step, y: stop.at.y + down * step };
  moveStop(piece, stop, to);
  say(words.said.moved(words.place(writeSquares(to.x, shownIn), writeSquares(to.y, shownIn))));
  return true;
}

/** Puts a point of the outline at a place, as one step; nudges in quick succession are one. */
export function moveStop(piece: Piece, stop: Stop, to: TablePoint): void {
  useGarment
    .getState()
    .edit(
      words.steps.movePoint,
      (garment) =>
        withPiece(garment, piece.id, (now) =>
          stop.kind === 'corner' ? moveCorner(now, stop.cornerId, to) : moveThrough(now, stop.edgeId, stop.index, to),
        ),
      { merge: stop.kind === 'corner' ? stop.cornerId : `${stop.edgeId} ${stop.index}` },
    );
}

/** Takes the chosen point or mark away; a piece and an edge are left to their own buttons. */
export function takeAway(piece: Piece, chosen: Chosen): boolean {
  const without = withoutChosen(chosen);
  if (!without) return false;
  if (chosen.kind === 'corner' && piece.corners.length <= 3) {
    say(words.cannotRemove);
    return true;
  }
  const label =
    chosen.kind === 'corner' || chosen.kind === 'through' ? words.steps.removePoint : words.steps.removeMark;
  useTable.getState().choose({ kind: 'piece', pieceId: piece.id });
  useGarment.getState().edit(label, (garment) => withPiece(garment, piece.id, without));
  return true;
}

function withoutChosen(chosen: Chosen): ((piece: Piece) => Piece) | undefined {
  switch (chosen.kind) {
    case 'corner':
      return (piece) => removeCorner(piece, chosen.cornerId);
    case 'through':
      return (piece) => removeThrough(piece, chosen.edgeId, chosen.index);
    case 'dart':
    case 'notch':
    case 'label':
      return (piece) => removeMark(piece, chosen.id);
    case 'grain':
      return (piece) => setGrain(piece, undefined);
    default:
      return undefined;
  }
}

function sayStop(piece: Piece, stop: Stop): string {
  const shownIn = useGarment.getState().garment?.shownIn ?? 'in';
  const place = words.place(writeSquares(stop.at.x, shownIn), writeSquares(stop.at.y, shownIn));
  if (stop.kind === 'corner') return words.said.chosenCorner(stop.number, place);
  const index = piece.edges.findIndex(({ id }) => id === stop.edgeId);
  return words.said.chosenThrough(words.edgeOr(piece.edges[index]?.name ?? '', index + 1), place);
}
