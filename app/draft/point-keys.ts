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
import { readPlace, type Telling } from '../table/read-place';
import type { KeyPress } from '../table/tool';
import { type Stop, walked } from '../table/walk';
import { writeSquares } from '../table/write-squares';
import { say } from '../ui/say';
import { draftWords as words } from '../words/draft';
import { writeLength } from '../words/written';
import { nudged } from './nudge';

const ARROWS: Readonly<Record<string, readonly [across: number, down: number, way: keyof typeof words.ways]>> = {
  ArrowLeft: [-1, 0, 'left'],
  ArrowRight: [1, 0, 'right'],
  ArrowUp: [0, -1, 'up'],
  ArrowDown: [0, 1, 'down'],
};

/** Works the chosen piece by keys alone: from point to point, a step at a time, and taking things away. */
export function pointKey(press: KeyPress): boolean {
  const { garment } = useGarment.getState();
  const { chosen, choose } = useTable.getState();
  if (!garment) return false;
  const next = walked(garment.pieces, chosen, press);
  if (next) {
    choose(next);
    return tell(next, 'short');
  }
  const piece = 'pieceId' in chosen ? pieceOf(garment, chosen.pieceId) : undefined;
  if (!piece) return false;
  const { key, shift } = press;
  if (key === ' ') return tell(chosen, 'full');
  const arrow = ARROWS[key];
  // Without Shift the arrows move the table while only a piece is chosen, so that none is pushed off its place unawares.
  if (arrow && (chosen.kind !== 'piece' || shift)) return nudge(piece, chosen, arrow);
  if (key === 'Delete' || key === 'Backspace') return takeAway(piece, chosen);
  if (key !== 'Escape') return false;
  choose(chosen.kind === 'piece' ? { kind: 'nothing' } : { kind: 'piece', pieceId: piece.id });
  return true;
}

/** Chooses the next point of a piece or the one before it, and tells where it is. */
export function walk(piece: Piece, step: 1 | -1): void {
  const { chosen, choose } = useTable.getState();
  const next = walked([piece], chosen, { key: step === 1 ? 'PageDown' : 'PageUp', shift: false });
  if (!next) return;
  choose(next);
  tell(next, 'short');
}

function tell(chosen: Chosen, telling: Telling): boolean {
  const { garment } = useGarment.getState();
  const piece = garment && 'pieceId' in chosen ? pieceOf(garment, chosen.pieceId) : undefined;
  const told = garment && piece && readPlace(piece, chosen, garment.shownIn, telling);
  if (told) say(told);
  return true;
}

/** One step of the grid, or without snapping a sixteenth of an inch or a millimetre. */
export function nudgeStep(shownIn: ShownIn): number {
  const { snapping, snapStep } = useTable.getState();
  return snapping ? snapStep : shownIn === 'in' ? inches(1 / 16) : 1;
}

/** What moving by the arrow keys is called, where it is not a point that moves. */
const NUDGE_STEPS: Readonly<Partial<Record<Chosen['kind'], string>>> = {
  piece: words.steps.movePiece,
  grain: words.steps.grain,
  dart: words.steps.dart,
  notch: words.steps.notch,
  label: words.steps.label,
};

function nudge(piece: Piece, chosen: Chosen, [across, down, way]: (typeof ARROWS)[string]): boolean {
  const shownIn = useGarment.getState().garment?.shownIn ?? 'in';
  const step = nudgeStep(shownIn);
  const by = { dx: across * step, dy: down * step };
  const after = nudged(piece, chosen, by);
  if (!after) return false;
  // Nudges in quick succession are one step.
  const merge = `nudge ${JSON.stringify(chosen)}`;
  const label = NUDGE_STEPS[chosen.kind] ?? words.steps.movePoint;
  useGarment
    .getState()
    .edit(label, (garment) => withPiece(garment, piece.id, (now) => nudged(now, chosen, by)?.piece ?? now), { merge });
  const { at } = after;
  say(
    at
      ? words.said.moved(words.place(writeSquares(at.x, shownIn), writeSquares(at.y, shownIn)))
      : words.said.movedBy(piece.name, writeLength(step, { shownIn }), words.ways[way]),
  );
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
