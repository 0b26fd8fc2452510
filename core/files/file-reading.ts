/** What comes of reading a file from elsewhere: pieces, a question, or why it is not read. */
import type { Piece } from '../garment/piece';
import type { Point } from '../geometry/point';
import type { XmlRefusal } from './xml-reader';

/** A piece read from a file, and the layer its outline was on, as the file names it. */
export interface ReadPiece {
  readonly piece: Piece;
  readonly layer: string;
}

/** What is to be said of a file that was read. Lengths in mm. */
export type FileFinding =
  /** A line that does not close, which may have been meant as an outline. `gap` is what is missing. */
  | {
      readonly kind: 'open-line';
      readonly name: string;
      readonly layer: string;
      readonly gap: number;
      readonly at: Point;
    }
  /** An outline that encloses nothing. */
  | { readonly kind: 'encloses-nothing'; readonly name: string; readonly layer: string }
  /** An edge follows the file's line less closely than promised. */
  | { readonly kind: 'not-followed'; readonly pieceId: string; readonly edgeId: string; readonly off: number }
  /** More corners, notches or drill marks than a piece may have. */
  | { readonly kind: 'too-much-for-a-piece'; readonly name: string }
  /** A notch that lies by no edge. */
  | { readonly kind: 'notch-astray'; readonly pieceId: string; readonly at: Point }
  /** Parts of the file of a kind that is not read, and how many. */
  | { readonly kind: 'not-read'; readonly what: string; readonly count: number }
  /** A path whose data breaks off; what came before was read. */
  | { readonly kind: 'broken-line'; readonly name: string };

/** Nothing in the file says how long its unit is; `across` and `down` are the size of all outlines in that unit. */
export interface UnitsNotKnown {
  readonly kind: 'units-not-known';
  readonly across: number;
  readonly down: number;
}

/** Why a file is not read at all. `line` counts from 1. */
export type FileRefusal =
  | XmlRefusal
  | { readonly kind: 'not-this-kind' }
  | { readonly kind: 'binary-dxf' }
  | { readonly kind: 'broken-number'; readonly line: number }
  | { readonly kind: 'broken-off'; readonly line: number }
  | { readonly kind: 'too-large'; readonly limit: number }
  | {
      readonly kind: 'too-many';
      readonly what: 'elements' | 'entities' | 'points' | 'outlines';
      readonly limit: number;
    }
  /** It brings a program with it: a script, or a line of one on an element. */
  | { readonly kind: 'script' }
  /** It wants something fetched from outside itself. */
  | { readonly kind: 'outside-link'; readonly link: string };

export type FileReading =
  | { readonly kind: 'read'; readonly pieces: readonly ReadPiece[]; readonly findings: readonly FileFinding[] }
  | UnitsNotKnown
  | FileRefusal;

/** Characters in one file at most: larger than any set of patterns, and read in seconds. */
export const LARGEST_FILE = 30_000_000;

/** Points of all lines in one file at most. */
export const MOST_POINTS = 300_000;

/** Outlines in one file at most. */
export const MOST_OUTLINES = 500;
