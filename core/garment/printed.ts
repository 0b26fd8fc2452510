/** One page that was printed: what it is called, which piece is on it and the mark of what is drawn on it. */
export interface PrintedPage {
  readonly name: string;
  readonly pieceIds: readonly string[];
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
}
