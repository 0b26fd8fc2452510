import type { Point } from '../geometry/point';
import type { PieceName } from './draft-names';

/** What a draft cannot know by itself: figures that clash or are missing. Lengths in mm; `answers` are what may be said. */
export type DraftQuestion =
  /** The widths of the gores do not add up to the girth that was asked for. */
  | {
      readonly kind: 'sum-clash';
      readonly of: 'hem';
      readonly asked: number;
      readonly sum: number;
      readonly answers: readonly ('as-asked' | 'as-printed')[];
    }
  /** A printed length is not the distance between the two places it is printed between. */
  | {
      readonly kind: 'length-clash';
      readonly from: string;
      readonly to: string;
      readonly stated: number;
      readonly drawn: number;
    }
  /** One place is given twice, otherwise each time. */
  | { readonly kind: 'place-clash'; readonly one: string; readonly other: string; readonly apart: number }
  /** Two edges that are sewn together come out of the draft with different lengths. */
  | { readonly kind: 'edges-differ'; readonly name: 'shoulder-seam' | 'side-seam'; readonly lengths: readonly number[] }
  /** The source breaks off: how this piece goes on after `last` is for her to say. */
  | { readonly kind: 'source-ends'; readonly piece: PieceName; readonly last: string; readonly at?: Point }
  /** Something the source leaves to a figure or a fraction that was not to be had, with what can be worked out. */
  | {
      readonly kind: 'figure-missing';
      readonly what: 'direction' | 'waist-curve' | 'fractions' | 'one-figure-of-a-range' | 'axes' | 'side-gores';
      readonly asked?: number;
      readonly drawn?: number;
    }
  /** Drafts cut to whole multiples of a small model: the size asked for and the size made. */
  | { readonly kind: 'size-stepped'; readonly asked: number; readonly made: number }
  /** The front, from the neck over the bust to the waist, is too little longer than the back to need a bust dart. */
  | { readonly kind: 'no-bust-dart'; readonly front: number; readonly back: number }
  /** The bust lies too near the underarm or the waist for a side dart at its level: the dart lies `by` mm off it. */
  | { readonly kind: 'bust-dart-off'; readonly by: number };
