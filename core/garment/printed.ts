import type { TablePoint } from '../geometry/point';
import type { SheetChoice } from './sheet-choice';

/** A turn about the table's own zero, clockwise to the eye, and then a move (mm). */
export interface Motion {
  readonly angle: number;
  readonly dx: number;
  readonly dy: number;
}

/** One page that was printed: what it is called, which piece is on it and the mark of what is drawn on it. */
export interface PrintedPage {
  readonly name: string;
  readonly pieceIds: readonly string[];
  readonly mark: string;
}

/** A place where two pages are joined, as both show it. */
export interface PrintedJoin {
  readonly over: string;
  readonly under: string;
  readonly marks: readonly { readonly at: TablePoint; readonly mark: string }[];
}

/** How a piece was laid on sheets, so that some of them can be made again and still join the others. */
export interface LaidOnSheets {
  readonly pieceId: string;
  readonly name: string;
  readonly paper: SheetChoice;
  /** Where the first sheet began, in the plane of the sheets; that is the table's where the piece was not turned. */
  readonly origin: TablePoint;
  /** How the piece was turned and moved from the table to its sheets; not at all unless said. */
  readonly motion?: Motion;
  /** Pieces of a printing with the same name here share their sheets; a piece without one has its own. */
  readonly together?: string;
  /** Where the corners of the piece were then, so that a piece that was only moved is known again. */
  readonly corners: readonly { readonly id: string; readonly at: TablePoint }[];
  readonly joins: readonly PrintedJoin[];
  /** The names of all its pages in order, where only some of them were printed. */
  readonly names?: readonly string[];
  /** The number of its first page in what was printed, and how many pages that had. */
  readonly number: number;
  readonly of: number;
  /** The printing whose pages these take the place of, and which of those are not needed any more. */
  readonly mends?: { readonly printingId: string; readonly gone: readonly string[] };
}

/** A squares sheet that was made of a piece. */
export interface PrintedSquares {
  readonly pieceId: string;
  readonly name: string;
  readonly mark: string;
}

/** A printing that was made: of which pieces, on which paper, page by page. */
export interface Printing {
  readonly id: string;
  /** YYYY-MM-DD */
  readonly date: string;
  /** The version it was made from, where it was made from one, and the mark on its pages. */
  readonly version?: number;
  readonly mark: string;
  readonly pages: readonly PrintedPage[];
  readonly laid?: readonly LaidOnSheets[];
  /** The squares sheets that were made, each with the mark of its piece as it was drawn then. */
  readonly squares?: readonly PrintedSquares[];
  /** YYYY-MM-DD: since when its pages are not used any more. */
  readonly unused?: string;
}
