import type { WordsContent } from '../drawing/drawing';
import type { FileLayer } from './file-layers';

/** Every sentence in a file, in the language of the person who saves it. */
export interface FileWords {
  /** What stands on a piece. */
  readonly content: (content: WordsContent) => string;
  readonly unnamedPiece: string;
  readonly unnamedGarment: string;
  /** Which garment and which version. */
  readonly garmentLine: (garment: string, date: string, version: string) => string;
  /** The title of a layer. */
  readonly layer: (layer: FileLayer) => string;
}
