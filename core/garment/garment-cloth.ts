import type { Point } from '../geometry/point';

/** A straight strip to be cut with the pieces: a band, a placket, a facing, binding. Its allowances are in its size. */
export interface ClothStrip {
  readonly id: string;
  readonly name: string;
  readonly length: number;
  readonly width: number;
  readonly count: number;
  /** Along the selvedge (as strips are torn), from selvedge to selvedge, or on the true bias. */
  readonly cut: 'along' | 'across' | 'bias';
}

/** A join in a piece, as the level `at` of its outline with the grain along x; each part has the allowance beside it. */
export interface PieceJoin {
  readonly id: string;
  readonly at: number;
  readonly allowance: number;
}

/** What a length of cloth is paid for with, as she calls it: money, coupons, points. */
export interface ClothPriced {
  readonly each: number;
  readonly per: 'yard' | 'metre';
  readonly in: string;
}

/**
 * A cloth the garment is cut from, and how the pieces are to be laid on it. Places on it are measured opened out: x from
 * its cut end, y from the inside of one selvedge.
 */
export interface GarmentCloth {
  readonly id: string;
  readonly name: string;
  /** From selvedge to selvedge, both counted. */
  readonly width: number;
  /** Lost on each side to the selvedge. */
  readonly selvedge: number;
  /** How much of it there is, if that is settled. */
  readonly atHand?: number;
  readonly folded: 'open' | 'lengthwise' | 'crosswise';
  readonly nap: 'none' | 'one-way';
  /** Stripes or figures to match; 0 where it does not repeat. */
  readonly repeat?: { readonly along: number; readonly across: number };
  /** Places to keep clear of. */
  readonly flaws: readonly (readonly Point[])[];
  /** A remnant's odd shape in place of a straight length. */
  readonly shape?: readonly Point[];
  /** The pieces cut from it; all that are cut and sewn unless said. */
  readonly pieceIds?: readonly string[];
  readonly strips: readonly ClothStrip[];
  readonly grain: 'straight' | 'cross' | 'bias';
  /** How far off the grain a piece may be tilted either way (radians); not at all unless said. */
  readonly tilt?: number;
  /** Pieces cut in two and joined, each along its grain at a level of its outline as it is laid. */
  readonly pieced?: readonly PieceJoin[];
  /** Pieces on the fold are opened out and cut single. */
  readonly openedOut?: true;
  /** The shares of its length and width it loses in the wash, which it has before it is cut. */
  readonly shrinks?: { readonly along: number; readonly across: number };
  readonly price?: ClothPriced;
}

/** A piece where it lies on the cloth. */
export interface KeptPlace {
  readonly id: string;
  /** Which of its count, from 0. */
  readonly copy: number;
  /** Which of the ways it may lie, by number. */
  readonly stance: number;
  /** The top left of its box. */
  readonly at: Point;
  /** It stays where it is while the rest is laid round it. */
  readonly pinned?: true;
}

/** A lay that was made, and what it was made of. */
export interface KeptLay {
  readonly clothId: string;
  /** YYYY-MM-DD */
  readonly made: string;
  /** The version the pieces were, where they were one. */
  readonly version?: number;
  /** How much of the cloth's length it takes, as the cloth lies. */
  readonly length: number;
  readonly placed: readonly KeptPlace[];
  /** The marks of the cloth and of each outline that was laid, by which a change since is known. */
  readonly clothMark: string;
  readonly marks: readonly { readonly id: string; readonly mark: string }[];
}
