import { create } from 'zustand';
import { withFirstDrawn } from '../../core/garment/first-drawn';
import type { Garment } from '../../core/garment/garment';
import { garmentChange } from '../../core/garment/garment-change';
import { withNamedStep } from '../../core/garment/named-step';
import { readGarment } from '../../core/garment/schema';

/** One thing she did, from the garment before it to the garment after it. */
export interface Step {
  readonly before: Garment;
  readonly after: Garment;
  /** What it was, as undo names it. */
  readonly label: string;
  /** Milliseconds since 1970. */
  readonly time: number;
  /** Steps with the same key made in quick succession are one. */
  readonly merge?: string;
}

export interface EditOptions {
  readonly merge?: string;
  /** Steps with the same key are one however long lies between: words that are written in one sitting. */
  readonly merges?: 'in-succession' | 'always';
}

export interface History {
  readonly past: readonly Step[];
  /** Steps taken back, the next to be done again last. */
  readonly future: readonly Step[];
}

export interface GarmentState extends History {
  /** What is on the screen; a drag in progress is in it. */
  readonly garment: Garment | undefined;
  /**
   * Where the garment can be changed: only one window at a time may, and of what a `newer` program made none of this one.
   * Elsewhere every change is refused.
   */
  readonly editing: 'here' | 'elsewhere' | 'newer';
  /** Counts openings and closings, so that a garment taken up anew is never taken for a step. */
  readonly opening: number;
  readonly saving: 'saved' | 'waiting' | 'failed';
  /** Why the last write failed, in words. */
  readonly failure: string | undefined;
  /** The last step that was not taken because the garment could not have been read again; a new object each time. */
  readonly refused: { readonly label: string } | undefined;
  open(garment: Garment, history?: History): void;
  close(): void;
  /**
   * One step that can be undone. None is made when the garment stays as it is, nor when it would become one that could
   * not be read again: a number that is none, a mark on an edge that is not there.
   */
  edit(label: string, change: (garment: Garment) => Garment, options?: EditOptions): void;
  beginDrag(label: string): void;
  /** Shows the garment as it would be; always from the garment as it was when the drag began. */
  drag(change: (asAtBegin: Garment) => Garment): void;
  /** Makes the drag one step, or none when it ended where it began. */
  endDrag(): void;
  cancelDrag(): void;
  undo(): void;
  redo(): void;
  setSaving(saving: GarmentState['saving'], failure?: string): void;
  setEditing(editing: GarmentState['editing']): void;
}

/** How many steps can be taken back. */
export const MOST_STEPS = 500;

/** Nudges of one thing within this time are one step. */
const MERGE_MS = 600;

/** A drag in progress: kept apart from the state, so that beginning one renders nothing. */
let dragging: { readonly begin: Garment; readonly label: string } | undefined;

/** Whether something is being dragged at this moment. */
export function isDragging(): boolean {
  return dragging !== undefined;
}

/** What is being done in one sitting, such as a line that is written. */
let sittingNow: string | undefined;

/** Does something whose steps are one with those of the same sitting that came just before, however long ago. */
export function asOneStep(sitting: string, work: () => void): void {
  sittingNow = sitting;
  try {
    work();
  } finally {
    sittingNow = undefined;
  }
}

/** The garment on the table, with everything that can be undone and done again. */
export const useGarment = create<GarmentState>((set, get) => ({
  garment: undefined,
  editing: 'here',
  opening: 0,
  past: [],
  future: [],
  saving: 'saved',
  failure: undefined,
  refused: undefined,
  open(garment, history = { past: [], future: [] }) {
    dragging = undefined;
    const { past, future } = history;
    set({ garment, past, future, ...atRest(get()) });
  },
  close() {
    dragging = undefined;
    set({ garment: undefined, past: [], future: [], ...atRest(get()) });
  },
  edit(label, change, options) {
    get().endDrag();
    const { garment, editing } = get();
    if (garment && editing === 'here')
      set(stepTaken(get(), garment, change(garment), label, options ?? inSitting(label)));
  },
  beginDrag(label) {
    get().endDrag();
    const { garment, editing } = get();
    if (garment && editing === 'here') dragging = { begin: garment, label };
  },
  drag(change) {
    if (!dragging) return;
    const garment = change(dragging.begin);
    if (garment !== get().garment) set({ garment });
  },
  endDrag() {
    if (!dragging) return;
    const { begin, label } = dragging;
    dragging = undefined;
    const { garment } = get();
    if (garment) set(stepTaken(get(), begin, garment, label));
  },
  cancelDrag() {
    if (!dragging) return;
    set({ garment: dragging.begin });
    dragging = undefined;
  },
  undo() {
    get().cancelDrag();
    const { past, future, editing } = get();
    const step = past.at(-1);
    if (step && editing === 'here') set({ garment: step.before, past: past.slice(0, -1), future: [...future, step] });
  },
  redo() {
    get().cancelDrag();
    const { past, future, editing } = get();
    const step = future.at(-1);
    if (step && editing === 'here') set({ garment: step.after, past: [...past, step], future: future.slice(0, -1) });
  },
  setSaving: (saving, failure) => set({ saving, failure }),
  setEditing(editing) {
    get().cancelDrag();
    set({ editing });
  },
}));

function inSitting(label: string): EditOptions | undefined {
  return sittingNow === undefined ? undefined : { merge: `${label} ${sittingNow}`, merges: 'always' };
}

/** How a garment just taken to the table, or put away, stands. */
function atRest({ opening }: GarmentState) {
  return { opening: opening + 1, editing: 'here', saving: 'saved', failure: undefined } as const;
}

/** Whether a garment that could be kept and read again would become one that cannot. */
function breaks(before: Garment, after: Garment): boolean {
  return readGarment(after).kind !== 'garment' && readGarment(before).kind === 'garment';
}

function stepTaken(
  { past, future }: History,
  before: Garment,
  changed: Garment,
  label: string,
  { merge, merges = 'in-succession' }: EditOptions = {},
): Partial<GarmentState> {
  if (changed === before) return { garment: changed };
  if (garmentChange(before, changed).length === 0) return { garment: before };
  const time = Date.now();
  const last = past.at(-1);
  const isOne = merge !== undefined && last?.merge === merge && (merges === 'always' || time - last.time < MERGE_MS);
  const grows = last !== undefined && isOne && future.length === 0;
  const steps = grows ? past.slice(0, -1) : past;
  const begin = grows ? last.before : before;
  const drawn = withFirstDrawn(begin, changed, { past: steps, time });
  const after = withNamedStep(begin, drawn, { label, time });
  if (breaks(before, after)) return { garment: before, refused: { label } };
  const step = { before: begin, after, label, time, ...(merge === undefined ? {} : { merge }) };
  return { garment: after, past: [...steps, step].slice(-MOST_STEPS), future: [] };
}
