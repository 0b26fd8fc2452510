/** What a drawing is made of: strokes and words in millimetres, the same for screen and paper. */
import type { GirthName } from '../garment/measure';
import type { Cut, EdgeRole } from '../garment/piece';
import type { Point } from '../geometry/point';
import type { Path } from '../geometry/segment';

/** What a line means. How it looks is told by `line-styles.ts` alone. */
export const LINE_KINDS = [
  'cut',
  'stitch',
  'fold',
  'grain',
  'dart',
  'pleat-fold',
  'pleat-placement',
  'gathers',
  'notch',
  'opening',
  'level',
  'centre',
  'drill',
  'upright',
  'corner',
] as const;
export type LineKind = (typeof LINE_KINDS)[number];

/** A line. Closed paths end where they begin. */
export interface Stroke {
  readonly kind: 'stroke';
  readonly line: LineKind;
  readonly path: Path;
}

/** The widths added outside the stitch line, narrowest first; or that nothing is, or nobody has said, or the drawing has them. */
export type AllowanceState = readonly number[] | 'none' | 'not-said' | 'in-drawing';

/** What words say; the sentence itself is made by whoever shows them. Lengths are millimetres. */
export type WordsContent =
  | { readonly kind: 'piece-name'; readonly name: string }
  | { readonly kind: 'cut'; readonly how: Cut['how']; readonly count: number }
  | { readonly kind: 'allowance'; readonly widths: AllowanceState }
  /** What an edge is, and the width allowed on it: `undefined` where nothing is to be said of that. */
  | { readonly kind: 'edge'; readonly name: string; readonly role: EdgeRole; readonly width: number | undefined }
  /** So much of a seam is left open: up to one mark, between two, or as far as it goes. */
  | { readonly kind: 'opening'; readonly length: number; readonly marks: 0 | 1 | 2 }
  /** A level of the body, by her own name for it or by the girth taken there. */
  | { readonly kind: 'level'; readonly girth: GirthName; readonly name: string | undefined }
  /** The number of a stitch corner. */
  | { readonly kind: 'corner'; readonly number: number }
  /** Beside the arrow that points up. */
  | { readonly kind: 'upright' }
  | { readonly kind: 'fold' }
  | { readonly kind: 'grain' }
  | { readonly kind: 'label'; readonly text: string }
  /** So much of an edge is drawn up by gathers into so much. */
  | { readonly kind: 'gathers'; readonly length: number; readonly into: number }
  /** The piece is not its own mirror image and is cut once: it matters which side of the cloth lies up. */
  | { readonly kind: 'right-side-up' };

/** What is said of one edge. */
export type EdgeContent =
  | { readonly kind: 'edge-length'; readonly length: number }
  | { readonly kind: 'edge-allowance'; readonly width: number };

/** Where and how words stand, centred on their place. `size` is their height in mm; `angle` turns clockwise to the eye. */
export interface Placed {
  readonly at: Point;
  readonly size: number;
  readonly angle: number;
}

/** Words on a piece. */
export interface Words extends Placed {
  readonly kind: 'words';
  readonly role: 'name' | 'cut-count' | 'grain' | 'edge' | 'note';
  readonly content: WordsContent;
  readonly weight: 'plain' | 'bold';
}

/** Words along one edge. */
export interface EdgeWords extends Placed {
  readonly edgeId: string;
  readonly content: EdgeContent;
}

export type Mark = Stroke | Words;
