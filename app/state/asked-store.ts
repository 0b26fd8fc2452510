import { create } from 'zustand';
import type { LetOut } from '../../core/fit/let-out';
import { useTable } from './table-store';

interface AskedState {
  /** A change that one room has worked out in numbers, for the Reshape room to begin with. */
  readonly letOut: LetOut | undefined;
}

export const useAsked = create<AskedState>(() => ({ letOut: undefined }));

/** To the Reshape room, with the seam in hand there and letting it out begun, so far as it was worked out. */
export function askToLetOut(letOut: LetOut): void {
  useAsked.setState({ letOut });
  useTable.getState().goTo('reshape', { kind: 'edge', ...letOut.edge });
}

/** What was asked for, once. */
export function takeAsked(): LetOut | undefined {
  const { letOut } = useAsked.getState();
  useAsked.setState({ letOut: undefined });
  return letOut;
}
