import type { Vector } from '../geometry/point';
import type { EdgeRef } from './seam';

/** How far the cloth was pinned at a place along an edge: more than 0 taken in, less than 0 let out (mm). */
export interface PinOnEdge {
  readonly along: number;
  readonly by: number;
}

/** What was pinned, as the pattern will have to follow it. */
export type PinnedWhat =
  /**
   * Along an edge, fading to nothing at `from` and `to` (the ends of the edge unless said). `by` is what the seam loses
   * in all; `share` of it goes to this edge and the rest to its partner in the seam, where it has one.
   */
  | {
      readonly kind: 'edge';
      readonly edge: EdgeRef;
      readonly pins: readonly PinOnEdge[];
      readonly from?: number;
      readonly to?: number;
      readonly share: number;
      /** How long the edge was where it was pinned (mm), so that places can be counted from its end for ever. */
      readonly edgeLength?: number;
    }
  /** Longer, or for less than 0 shorter: at a depth below the waist, or at the hem. */
  | {
      readonly kind: 'length';
      readonly pieceIds: readonly string[];
      readonly at: { readonly kind: 'hem' } | { readonly kind: 'depth'; readonly depth: number };
      readonly by: number;
    }
  /** A corner of a piece that must go elsewhere. */
  | { readonly kind: 'point'; readonly pieceId: string; readonly cornerId: string; readonly by: Vector };

/** What became of a pinned change. */
export type PinnedState =
  | { readonly kind: 'noted' }
  | { readonly kind: 'carried'; readonly date: string }
  | { readonly kind: 'declined'; readonly date: string; readonly reason: string };

/** One thing pinned at a fitting. */
export interface PinnedChange {
  readonly id: string;
  readonly what: PinnedWhat;
  /** Which side of the body it was pinned on, and whether it is meant for both. */
  readonly side: 'both' | 'left' | 'right';
  readonly note: string;
  readonly photoId?: string;
  readonly state: PinnedState;
}

/** A mock-up: from which version it was cut, and what its fittings showed. */
export interface Mockup {
  readonly id: string;
  readonly name: string;
  /** YYYY-MM-DD */
  readonly made: string;
  /** The version it was cut from, and the mark its pages bore. */
  readonly version: number;
  readonly mark: string;
  readonly note: string;
  readonly pinned: readonly PinnedChange[];
}
