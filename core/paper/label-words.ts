import type { Garment } from '../garment/garment';
import type { Cut } from '../garment/piece';
import type { VersionSaid } from '../garment/version-said';

/** Every sentence on the label of an envelope. */
export interface LabelWords {
  readonly unnamedGarment: string;
  readonly unnamedPiece: string;
  /** Where the draft is from, line by line; none where nothing is known. */
  readonly source: (source: Garment['source']) => readonly string[];
  readonly version: (version: VersionSaid, date: string) => string;
  /** For whom it is, which set of measures, and its main figures. */
  readonly wearer: (garment: Garment) => readonly string[];
  /** Cloth and notions, where she noted them. */
  readonly needs: (garment: Garment) => readonly string[];
  readonly inside: (pieces: number, cut: number) => string;
  readonly piecesTitle: string;
  readonly goesOn: (garment: string) => string;
  readonly cut: (cut: Cut) => string;
  readonly howToFold: string;
}
