import type { WordsContent } from '../drawing/drawing';
import type { PrinterFactors } from '../garment/garment';
import type { VersionSaid } from '../garment/version-said';
import type { KeyLine } from './key-lines';
import type { ScaleCause } from './scale-causes';
import type { SquareProof } from './square-proof';

/** Every sentence on paper, in the language of the person who prints. Lengths come in mm and are written by these. */
export interface PaperWords {
  /** A length with its unit. */
  readonly length: (mm: number) => string;
  /** A length as a bare figure, for columns under a heading. */
  readonly figure: (mm: number) => string;
  /** YYYY-MM-DD as people write it. */
  readonly date: (date: string) => string;
  /** What stands on a piece. */
  readonly content: (content: WordsContent) => string;
  readonly unnamedPiece: string;
  readonly unnamedGarment: string;
  readonly pageOf: (page: number, of: number) => string;
  readonly rowColumn: (row: string, column: number) => string;
  /** Which garment and which version. */
  readonly garmentLine: (garment: string, date: string, version: VersionSaid) => string;
  /** In what scale a page is drawn, and how it is printed. */
  readonly fullSize: string;
  /** That the page is drawn for one printer, which is off by these. */
  readonly corrected: (printer: PrinterFactors) => string;
  readonly testSquare: string;
  readonly thisWayUp: string;
  readonly inch: string;
  readonly centimetre: string;
  /** Beside a join: this page is cut off and laid over its neighbour, or goes under it. */
  readonly cutAndLayOver: (label: string) => string;
  readonly goesUnder: (label: string) => string;
  /** Or both are cut off and set edge to edge. */
  readonly cutAndSetTo: (label: string) => string;
  /** What the pages must measure when they are taped up; of one piece of several with its name. */
  readonly inAll: (piece: string | undefined, across: string, down: string, grain: string | undefined) => string;
  readonly layers: LayerWords;
  readonly first: FirstPageWords;
  readonly check: CheckSheetWords;
  readonly squares: SquaresWords;
}

/** The names of layers that can be hidden, and what is said of the older versions in dots. */
export interface LayerWords {
  readonly cut: string;
  readonly stitch: string;
  readonly marks: string;
  readonly squares: string;
  readonly under: (version: string) => string;
  /** Beside a sample of the line, counted from 0. */
  readonly older: (index: number, version: string) => string;
}

/** What stands on the sheet that proves a printer. */
export interface CheckSheetWords {
  readonly title: string;
  readonly how: readonly string[];
  readonly rule: (length: string, way: 'across' | 'down') => string;
  readonly marginTitle: string;
  readonly marginHow: readonly string[];
  /** What the longer rule measures when pages were fitted, and to what. */
  readonly fitsTitle: string;
  readonly fit: (cause: ScaleCause, share: number, length: string) => string;
}

export interface FirstPageWords {
  readonly line: (pages: number, paper: string, date: string) => string;
  readonly paper: (size: string) => string;
  readonly wearerLine: (date: string, wornOver: string) => string;
  /** Which version stands on every page, and what its mark is for. */
  readonly markLine: (version: VersionSaid) => string;
  /** What the lines on the pages mean. */
  readonly keyTitle: string;
  readonly key: Readonly<Record<KeyLine, string>>;
  readonly scaleTitle: string;
  readonly scaleLines: readonly string[];
  readonly joinTitle: string;
  readonly joinLines: Readonly<Record<'lapped' | 'butted', readonly string[]>>;
  readonly mapTitle: string;
  readonly mapLine: (piece: string, pages: number) => string;
  /** What the taped pages must measure. */
  readonly totalsTitle: string;
  readonly totals: {
    readonly grain: (length: string) => string;
    readonly widest: (across: string, down: string) => string;
    readonly diagonal: (from: number, to: number, length: string) => string;
  };
  readonly cautionTitle: string;
  readonly cautions: readonly string[];
}

export interface SquaresWords {
  readonly title: (piece: string) => string;
  readonly goesOn: (piece: string) => string;
  readonly how: (square: string) => string;
  /** How points are told from the base line between two corners, and to which side of it the piece lies. */
  readonly howByLine: (square: string, base: { from: string; to: string; side: 'left' | 'right' }) => string;
  readonly along: string;
  readonly out: string;
  readonly zero: string;
  /** Which line is drawn, and what is said of the piece. */
  readonly line: (drawn: 'stitch' | 'cut', content: string) => string;
  readonly point: string;
  readonly across: string;
  readonly down: string;
  readonly edges: string;
  readonly proofs: string;
  readonly marks: string;
  readonly straight: (from: string, to: string) => string;
  readonly proveTitle: string;
  readonly proof: (proof: SquareProof, byLine: boolean) => readonly string[];
  readonly mark: (
    mark: 'dart-start' | 'dart-point' | 'dart-end' | 'notch' | 'grain-start' | 'grain-end' | 'label',
    text: string,
  ) => string;
}
