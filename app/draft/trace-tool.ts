import { pieceFromTrace } from '../../core/garment/new-piece';
import { addPiece } from '../../core/garment/piece-list';
import { useGarment } from '../state/garment-store';
import { useTable } from '../state/table-store';
import type { Drag, PointerAt, Tool } from '../table/tool';
import { say } from '../ui/say';
import { draftWords as words } from '../words/draft';
import { setPointer, useDraft } from './draft-store';
import { type Snapped, snapped } from './snap';
import { pixelAt, pointsOfOthers, snapHere } from './snap-here';
import { closesAt, ringOf, type Trace, withoutLast, withPoint } from './trace';
import { writeSquares } from './write-squares';

/** The first corner is met from further off than other points, in CSS pixels, because that press closes the piece. */
const CLOSE_PX = 14;

/** Puts down corners and curve points in turn. A point falls where the pointer is let go, so it can still be aimed. */
export function traceTool(): Tool {
  let others = pointsOfOthers(undefined);
  const place = (at: PointerAt): Snapped => {
    const { trace } = useDraft.getState();
    const first = trace[0];
    if (first && closesAt(trace, at.world, Math.max(at.reach, CLOSE_PX * pixelAt(at)))) {
      return { at: first.at, to: 'point' };
    }
    return snapped(
      at.world,
      snapHere(
        at,
        others,
        trace.map((point) => point.at),
      ),
    );
  };
  const drag: Drag = {
    move: (at) => setPointer(place(at)),
    end(at) {
      const { trace, nextPoint } = useDraft.getState();
      const { at: to } = place(at);
      if (closesAt(trace, to, 0)) finishTrace();
      else putDown(withPoint(trace, to, nextPoint));
      if (at.kind === 'touch') setPointer(undefined);
    },
    cancel: () => setPointer(undefined),
  };
  return {
    cursor: 'crosshair',
    press(at) {
      others = pointsOfOthers(undefined);
      setPointer(place(at));
      return drag;
    },
    hover: (at) => setPointer(at && place(at)),
    key({ key }) {
      if (key === 'Backspace' || key === 'Delete') takeBackPoint();
      else if (key === 'Enter') finishTrace();
      else if (key === 'Escape') giveUpTrace();
      else return false;
      return true;
    },
  };
}

function putDown(trace: Trace): boolean {
  if (trace === useDraft.getState().trace) return false;
  useDraft.setState({ trace });
  return true;
}

/** Puts a point down by typed numbers, as a press would, and says so: there was no line to be seen following. */
export function typePoint(x: number, y: number): void {
  const { trace, nextPoint } = useDraft.getState();
  const longer = withPoint(trace, { x, y }, nextPoint);
  if (!putDown(longer)) return;
  const shownIn = useGarment.getState().garment?.shownIn ?? 'in';
  say(words.said.putDown(longer.length, words.place(writeSquares(x, shownIn), writeSquares(y, shownIn))));
}

/** Takes the last point back. */
export function takeBackPoint(): void {
  const { trace } = useDraft.getState();
  if (trace.length === 0) return;
  useDraft.setState({ trace: withoutLast(trace) });
  say(words.said.takenBack);
}

/** Lets go of the trace, and of tracing itself when nothing was put down. */
export function giveUpTrace(): void {
  if (useDraft.getState().trace.length > 0) say(words.said.tracingOver);
  useDraft.setState({ trace: [], mode: 'adjust', pointer: undefined });
}

/** Makes a piece of the trace, one step to undo, and takes it in hand. Nothing while it cannot close. */
export function finishTrace(): void {
  const ring = ringOf(useDraft.getState().trace);
  const { garment, edit } = useGarment.getState();
  if (!ring || !garment) return;
  const diagramId = garment.diagrams[0]?.id;
  const name = words.newPiece(garment.pieces.length + 1);
  const piece = pieceFromTrace(ring, {
    newId: () => crypto.randomUUID(),
    name,
    ...(diagramId === undefined ? {} : { diagramId }),
  });
  if (!piece) return;
  useDraft.setState({ trace: [], mode: 'adjust', pointer: undefined, nextPoint: 'corner' });
  edit(words.steps.trace(name), (now) => addPiece(now, piece));
  useTable.getState().choose({ kind: 'piece', pieceId: piece.id });
  say(words.said.closed(name, piece.corners.length));
}
