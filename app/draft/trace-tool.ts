import { firstHalf } from '../../core/diagram/halves';
import { pieceFromTrace } from '../../core/garment/new-piece';
import { addPiece } from '../../core/garment/piece-list';
import type { TablePoint } from '../../core/geometry/point';
import { inkRead } from '../photo/picture-ink';
import { useGarment } from '../state/garment-store';
import { newId } from '../state/new-id';
import { diagramInHand, useTable } from '../state/table-store';
import type { Drag, PointerAt, Tool } from '../table/tool';
import { writeSquares } from '../table/write-squares';
import { say } from '../ui/say';
import { draftWords as words } from '../words/draft';
import { setPointer, useDraft } from './draft-store';
import { followFrom, lookAlong, snappedToInk } from './follow-ink';
import { type Snapped, snapped } from './snap';
import { pixelAt, pointsOfOthers, SNAP_REACH_PX, snapHere } from './snap-here';
import {
  closesAt,
  followsBackTo,
  ringOf,
  type Trace,
  type TracedPoint,
  withFollowed,
  withoutLast,
  withPoint,
} from './trace';

/** The first corner is met from further off than other points, in CSS pixels, because that press closes the piece. */
const CLOSE_PX = 14;

/** Puts down corners and curve points in turn. A point falls where the pointer is let go, so it can still be aimed. */
export function traceTool(): Tool {
  let others = pointsOfOthers(undefined);
  const place = (at: PointerAt): Snapped => {
    const { trace } = useDraft.getState();
    const first = trace[0];
    const closes = follows(at) ? followsBackTo : closesAt;
    if (first && closes(trace, at.world, Math.max(at.reach, CLOSE_PX * pixelAt(at)))) {
      return { at: first.at, to: 'point' };
    }
    const hold = snapHere(
      at,
      others,
      trace.map((point) => point.at),
    );
    if (!follows(at)) return snapped(at.world, hold);
    const met = snapped(at.world, { points: hold.points ?? [], reach: hold.reach, step: undefined });
    if (met.to === 'point') return met;
    return snappedToInk(at.world, SNAP_REACH_PX * pixelAt(at)) ?? snapped(at.world, hold);
  };
  const show = (at: PointerAt) => {
    const to = place(at);
    setPointer(to, follows(at) ? lookAlong(useDraft.getState().trace, to.at) : undefined);
  };
  const drag: Drag = {
    move: show,
    end(at) {
      const { trace, nextPoint } = useDraft.getState();
      const { at: to } = place(at);
      // Where printed lines meet is only known once they have been read.
      if (follows(at)) follow(() => place(at).at, nextPoint);
      else if (closesAt(trace, to, 0)) closeTrace();
      else putDown(withPoint(trace, to, nextPoint));
      if (at.kind === 'touch') setPointer(undefined);
    },
    cancel: () => setPointer(undefined),
  };
  return {
    cursor: 'crosshair',
    press(at) {
      others = pointsOfOthers(undefined);
      show(at);
      return drag;
    },
    hover: (at) => (at ? show(at) : setPointer(undefined)),
    key({ key }) {
      if (key === 'Backspace' || key === 'Delete') takeBackPoint();
      else if (key === 'Enter') finishTrace();
      else if (key === 'Escape') giveUpTrace();
      else return false;
      return true;
    },
  };
}

/** Held Alt or Shift draws by hand for as long as it is held, as it also keeps from snapping. */
function follows(at: PointerAt): boolean {
  return useDraft.getState().following && !at.free;
}

/** Presses that wait for the line to be followed; each begins where the one before it ended. */
let following = Promise.resolve();

/** Puts a point down, and before it those that keep to the printed line, as soon as the line can be followed. */
function follow(place: () => TablePoint, kind: TracedPoint['kind']): void {
  // One that failed must not hold up those after it.
  following = following
    .catch(() => undefined)
    .then(async () => {
      await inkRead();
      const { trace } = useDraft.getState();
      const to = place();
      const over = await followFrom(trace, to);
      const now = useDraft.getState();
      // Given up, or a point taken back, while the line was looked for.
      if (now.mode !== 'trace' || now.trace !== trace) return;
      const longer = withFollowed(trace, over, to, kind);
      if (!followsBackTo(trace, to, 0)) putDown(longer);
      else if (ringOf(longer.slice(0, -1))) closeTrace(longer.slice(0, -1));
    });
}

function putDown(trace: Trace): boolean {
  if (trace === useDraft.getState().trace) return false;
  useDraft.setState({ trace, way: undefined });
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
  useDraft.setState({ trace: withoutLast(trace), way: undefined });
  say(words.said.takenBack);
}

/** Lets go of the trace, and of tracing itself when nothing was put down. */
export function giveUpTrace(): void {
  if (useDraft.getState().trace.length > 0) say(words.said.tracingOver);
  useDraft.setState({ trace: [], mode: 'adjust', pointer: undefined, way: undefined });
}

/** Closes the trace from its last point to its first, along the printed line where lines are followed. */
export function finishTrace(): void {
  const { trace, following: isFollowing } = useDraft.getState();
  const first = trace[0];
  if (first && isFollowing) follow(() => first.at, 'corner');
  else closeTrace();
}

/** Makes a piece of the trace, one step to undo, and takes it in hand. Nothing while it cannot close. */
function closeTrace(trace = useDraft.getState().trace): void {
  const ring = ringOf(trace);
  const { garment, edit } = useGarment.getState();
  if (!ring || !garment) return;
  const { diagrams } = garment;
  const inHand = diagramInHand(diagrams, useTable.getState().diagramInHand);
  const diagramId = inHand && firstHalf(diagrams, inHand.id)?.id;
  const name = words.newPiece(garment.pieces.length + 1);
  const piece = pieceFromTrace(ring, {
    newId: newId,
    name,
    ...(diagramId === undefined ? {} : { diagramId }),
  });
  if (!piece) return;
  useDraft.setState({ trace: [], mode: 'adjust', pointer: undefined, way: undefined, nextPoint: 'corner' });
  edit(words.steps.trace(name), (now) => addPiece(now, piece));
  useTable.getState().choose({ kind: 'piece', pieceId: piece.id });
  say(words.said.closed(name, piece.corners.length));
}
