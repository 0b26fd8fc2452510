import type { Garment, PaperChoice } from '../../core/garment/garment';
import type { Piece } from '../../core/garment/piece';
import type { VersionSaid } from '../../core/garment/version-said';
import type { LaidCloth, LaySaid } from '../../core/paper/lay-pdf';
import type { PatternPdf, PatternPdfOptions } from '../../core/paper/pattern-pdf';
import type { Under } from '../../core/paper/placed-piece';
import type { TapedSheets } from '../../core/paper/taped-sheets';
import { language } from '../words/language';
import { createCaller } from './call';

/** Where the two fonts are, as addresses of the page: a worker counts addresses from its own place. */
export interface FontAddresses {
  readonly plain: string;
  readonly bold: string;
}

export function fontAddresses(): FontAddresses {
  const address = (name: string) => new URL(`fonts/${name}`, document.baseURI).href;
  return { plain: address('dejavu-sans.ttf'), bold: address('dejavu-sans-bold.ttf') };
}

/** What the PDF worker can be asked. */
export type PdfCalls = {
  /** Where pieces lie on pages. */
  readonly lay: {
    readonly args: {
      readonly pieces: readonly Piece[];
      readonly paper: PaperChoice;
      readonly under: Under;
    };
    readonly answer: { readonly kind: 'laid' } & TapedSheets;
  };
  /** The sheet that proves a printer. */
  readonly check: {
    readonly args: Pick<Garment, 'paper' | 'shownIn'> & { readonly today: string; readonly fonts: FontAddresses };
    readonly answer: { readonly kind: 'made'; readonly bytes: Uint8Array };
  };
  readonly pattern: {
    readonly args: {
      readonly garment: Garment;
      readonly pieceIds: readonly string[];
      readonly what: PatternPdfOptions['what'];
      readonly sheets?: PatternPdfOptions['sheets'];
      readonly chosen?: PatternPdfOptions['chosen'];
      readonly again?: PatternPdfOptions['again'];
      readonly under?: PatternPdfOptions['under'];
      readonly version: VersionSaid;
      readonly today: string;
      readonly fonts: FontAddresses;
    };
    readonly answer: PatternPdf;
  };
  /** A lay of pieces on cloth; the worker numbers its pages. */
  readonly clothLay: {
    readonly args: {
      readonly laid: LaidCloth;
      readonly said: Omit<LaySaid, 'foot'> & { readonly footer: string };
      readonly garment: Pick<Garment, 'paper' | 'shownIn'>;
      readonly today: string;
      readonly fonts: FontAddresses;
      readonly scale?: number;
    };
    readonly answer: { readonly kind: 'made'; readonly bytes: Uint8Array; readonly pages: number };
  };
  /** The list before cutting. */
  readonly list: {
    readonly args: {
      readonly garment: Garment;
      readonly version: VersionSaid;
      readonly today: string;
      readonly fonts: FontAddresses;
    };
    readonly answer: { readonly bytes: Uint8Array; readonly pages: number };
  };
  /** The label of the envelope. */
  readonly label: {
    readonly args: {
      readonly garment: Garment;
      readonly version: VersionSaid;
      readonly today: string;
      readonly fonts: FontAddresses;
      /** A JPEG. */
      readonly picture?: Uint8Array;
    };
    readonly answer: { readonly bytes: Uint8Array; readonly pages: number };
  };
};

/** A worker that has rested this long is ended; it holds the fonts and the PDF library. */
const REST_MS = 60_000;

/** Makes PDFs off the main thread. */
export const pdfWork = createCaller<PdfCalls>(
  () => new Worker(new URL('./pdf.worker.ts', import.meta.url), { type: 'module', name: language() }),
  { restMs: REST_MS },
);
