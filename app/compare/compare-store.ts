import { create } from 'zustand';
import type { Block } from '../../core/blocks/block';
import { useGarment } from '../state/garment-store';

/** Where the piece that is laid over comes from. */
export type Source =
  | { readonly kind: 'piece' }
  | { readonly kind: 'traced' }
  | { readonly kind: 'version'; readonly number: number }
  | { readonly kind: 'shelf'; readonly garmentId: string }
  | { readonly kind: 'draft'; readonly block: Block };

export type How = 'as-they-lie' | 'corner' | 'edge' | 'best';

/** A piece moved by hand from where it was laid: mm on the table, and radians about its middle. */
export interface Nudge {
  readonly dx: number;
  readonly dy: number;
  readonly angle: number;
}

export const NOT_NUDGED: Nudge = { dx: 0, dy: 0, angle: 0 };

/** What is compared with what, and how it is laid. An id that is not there stands for the one that is proposed. */
export interface Comparison {
  readonly pieceId: string | undefined;
  /** `undefined` until she has said: then what is likeliest to be meant of what there is. */
  readonly source: Source | undefined;
  readonly otherId: string | undefined;
  /** `undefined` until she has said: then where both lie if they are one piece, else by best fit. */
  readonly how: How | undefined;
  readonly corner: string | undefined;
  readonly otherCorner: string | undefined;
  readonly edge: string | undefined;
  readonly otherEdge: string | undefined;
  readonly way: 'same' | 'opposite';
  readonly mirrored: 'never' | 'allowed';
  readonly turned: boolean;
}

interface CompareState extends Comparison {
  readonly nudge: Nudge;
  /** Which of the two lies beneath: differences are said of the upper one. */
  readonly beneath: 'mine' | 'other';
  /** While a drag is in progress the figures wait. */
  readonly dragging: boolean;
  /** Counts nudges by key, after each of which the largest gap is said. */
  readonly keyed: number;
}

const begin: CompareState = {
  pieceId: undefined,
  source: undefined,
  otherId: undefined,
  how: undefined,
  corner: undefined,
  otherCorner: undefined,
  edge: undefined,
  otherEdge: undefined,
  way: 'same',
  mirrored: 'never',
  turned: false,
  nudge: NOT_NUDGED,
  beneath: 'mine',
  dragging: false,
  keyed: 0,
};

/** What the room is comparing. Nothing of it belongs to any garment. */
export const useCompare = create<CompareState>(() => begin);

/** Compares something else, or lays it in another way: from there it has not been nudged yet. */
export function compare(change: Partial<Comparison>): void {
  useCompare.setState({ ...change, nudge: NOT_NUDGED });
}

/** Moves the piece that was laid, from where it was laid. */
export function nudgeTo(nudge: Nudge): void {
  useCompare.setState({ nudge });
}

// Another garment is another comparison.
useGarment.subscribe((now, before) => {
  if (now.garment?.id !== before.garment?.id) useCompare.setState(begin);
});
