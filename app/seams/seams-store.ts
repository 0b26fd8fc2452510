import { create } from 'zustand';
import type { EdgeRef } from '../../core/garment/seam';
import { useGarment } from '../state/garment-store';
import type { SeamTrial } from './seam-trial';

interface SeamsState {
  /** The seam that is being walked. */
  readonly seamId: string | undefined;
  /** How far along its first side the walk has come, in mm. */
  readonly along: number;
  /** Edges pressed one after another to be sewn together: none, one or two. */
  readonly picked: readonly EdgeRef[];
  /** A change of the seam's edges that is being tried; nothing of it belongs to the garment yet. */
  readonly trying: SeamTrial | undefined;
}

const atFirst: SeamsState = { seamId: undefined, along: 0, picked: [], trying: undefined };

export const useSeams = create<SeamsState>(() => atFirst);

/** Takes a seam in hand from where its walk begins, or puts all of them down. */
export function openSeam(seamId: string | undefined): void {
  useSeams.setState({ ...atFirst, seamId });
}

/** Walks on, or back, to a place along the first side. */
export function rollTo(along: number): void {
  useSeams.setState({ along });
}

/** Picks an edge to be paired; a third begins anew, and the only one pressed again is sewn to its own mirror image. */
export function pickEdge(edge: EdgeRef): void {
  const { picked } = useSeams.getState();
  const [only] = picked;
  const next = only && picked.length === 1 ? [only, edge] : [edge];
  useSeams.setState({ ...atFirst, picked: next });
}

/** Puts these edges in hand to be paired. */
export function pickEdges(picked: readonly EdgeRef[]): void {
  useSeams.setState({ picked });
}

/** Shows a change of the seam, or shows it otherwise; without one the seam stands as it is. */
export function trySeam(trying: SeamTrial | undefined): void {
  useSeams.setState({ trying });
}

/** Puts the change away; the garment stays as it is. */
export function leaveTrial(): void {
  trySeam(undefined);
}

// Another garment is another job.
useGarment.subscribe((now, before) => {
  if (now.garment?.id !== before.garment?.id) useSeams.setState(atFirst);
});
