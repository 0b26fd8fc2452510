/** What is remembered of what was done to the pieces and with them. */

/** One thing done to the pieces, by the name undo gives it. */
export interface NamedStep {
  readonly label: string;
  /** Milliseconds since 1970. */
  readonly time: number;
  /** The pieces it drew, changed or took away. */
  readonly pieceIds: readonly string[];
}

/** A piece whose first drawing was not kept: what stands for it is how it was at that time (milliseconds since 1970). */
export interface TracedLate {
  readonly pieceId: string;
  readonly since: number;
}

/** That something was cut from a version, and how each of its pieces was then. */
export interface Cutting {
  readonly id: string;
  /** YYYY-MM-DD */
  readonly date: string;
  readonly version: number;
  readonly from: 'mock-up' | 'cloth';
  readonly pieces: readonly { readonly pieceId: string; readonly mark: string }[];
}
