import { create } from 'zustand';
import type { TablePoint } from '../../core/geometry/point';
import { useGarment } from '../state/garment-store';
import { keepTrace, keptTrace } from './kept-trace';
import type { Snapped } from './snap';
import type { Trace, TracedPoint } from './trace';

export type Mode = 'trace' | 'adjust' | 'mark';
export type MarkKind = 'grain' | 'notch' | 'dart' | 'label';

/** What the draft room is doing. Nothing of it belongs to the garment; a trace waits while another room is looked at. */
interface DraftState {
  readonly mode: Mode;
  readonly marking: MarkKind;
  /** The points of the piece being traced, and what the next press puts down. */
  readonly trace: Trace;
  readonly nextPoint: TracedPoint['kind'];
  /** Whether an edge follows the printed line of the picture from one point put down to the next. */
  readonly following: boolean;
  /** The printed line from the last point to the pointer, where there is one to follow. */
  readonly way: readonly TablePoint[] | undefined;
  /** Where the pointer is, after snapping; `undefined` when it is elsewhere. */
  readonly pointer: Snapped | undefined;
  /** The line being drawn by a mark tool. */
  readonly stroke: { readonly from: TablePoint; readonly to: TablePoint } | undefined;
}

const atFirst: DraftState = {
  mode: 'adjust',
  marking: 'notch',
  trace: [],
  nextPoint: 'corner',
  following: false,
  way: undefined,
  pointer: undefined,
  stroke: undefined,
};

/** The room is fetched after the garment may have been opened already. */
export const useDraft = create<DraftState>(() => {
  const id = useGarment.getState().garment?.id;
  return id === undefined ? atFirst : takenUp(id);
});

// Another garment is another job: nothing half done goes over to it.
useGarment.subscribe((now, before) => {
  const id = now.garment?.id;
  if (id === before.garment?.id) return;
  const { following } = useDraft.getState();
  useDraft.setState({ ...(id === undefined ? atFirst : takenUp(id)), following });
});

useDraft.subscribe((now, before) => {
  const id = useGarment.getState().garment?.id;
  if (id !== undefined && now.trace !== before.trace) keepTrace(id, now.trace);
});

/** A garment as it is taken up: with the piece that was being traced when it was last put away, if there was one. */
function takenUp(garmentId: string): DraftState {
  const trace = keptTrace(garmentId);
  return trace.length === 0 ? atFirst : { ...atFirst, mode: 'trace', trace };
}

/** Sets the pointer's place and the line followed to it, without waking anybody when nothing has moved. */
export function setPointer(pointer: Snapped | undefined, way?: readonly TablePoint[]): void {
  const { pointer: before, way: wayBefore } = useDraft.getState();
  const still =
    before === pointer ||
    (before && pointer && before.to === pointer.to && before.at.x === pointer.at.x && before.at.y === pointer.at.y);
  if (still && !way && !wayBefore) return;
  useDraft.setState({ pointer, way });
}
