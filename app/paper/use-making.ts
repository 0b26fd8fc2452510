import { useRef, useState } from 'react';
import type { Garment } from '../../core/garment/garment';
import type { Piece } from '../../core/garment/piece';
import type { Printing } from '../../core/garment/printed';
import { versionSaid } from '../../core/garment/version-said';
import type { PagesAgain } from '../../core/paper/mend-plan';
import type { PatternPdfOptions } from '../../core/paper/pattern-pdf';
import type { TapedSheet } from '../../core/paper/placed-piece';
import { addPrinting, type ChosenPages, mendingOf, printingOf, squaresPrintingOf } from '../../core/paper/printing-of';
import { useGarment } from '../state/garment-store';
import { newId } from '../state/new-id';
import { today } from '../state/today';
import { download, fileName } from '../storage/download';
import { versionsOf } from '../storage/versions';
import { say } from '../ui/say';
import { paperWords as words } from '../words/paper';
import { fontAddresses, pdfWork } from '../workers/pdf-calls';

/** What is made, with all that it takes. */
export type Wanted =
  | { readonly what: 'squares' }
  | {
      readonly what: 'pages';
      readonly sheets: readonly TapedSheet[];
      readonly chosen?: ChosenPages | undefined;
      readonly under?: PatternPdfOptions['under'];
    }
  | { readonly what: 'out-of-date'; readonly again?: PagesAgain };

export interface Making {
  /** The share done, 0 to 1, while something is being made. */
  readonly share: number | undefined;
  readonly trouble: string | undefined;
  readonly make: (wanted: Wanted) => void;
  readonly stop: () => void;
}

/** One PDF at a time, with its progress and a way to stop it; pages and squares sheets that were made are remembered as printed. */
export function useMaking(garment: Garment, pieces: readonly Piece[]): Making {
  const [share, setShare] = useState<number>();
  const [trouble, setTrouble] = useState<string>();
  const stopper = useRef<AbortController>(undefined);

  async function make(wanted: Wanted) {
    stopper.current = new AbortController();
    setTrouble(undefined);
    setShare(0);
    // Read anew, for a version may just have been kept in another room; pages without its name are better than none.
    const version = versionSaid(await versionsOf(garment.id).catch(() => []), garment);
    // Pages that are on paper are made again of every piece, ticked or not.
    const of = wanted.what === 'out-of-date' ? garment.pieces : pieces;
    const answer = await pdfWork.call(
      'pattern',
      {
        ...wanted,
        garment,
        pieceIds: of.map((piece) => piece.id),
        version,
        today: today(),
        fonts: fontAddresses(),
      },
      { signal: stopper.current.signal, onProgress: setShare },
    );
    setShare(undefined);
    if (answer.kind === 'pdf') {
      const kind = wanted.what === 'out-of-date' && wanted.again ? 'again' : wanted.what;
      const name = `${fileName(`${garment.name} ${words.fileVersion(version)} ${words.fileWhat[kind]}`)}-${garment.paper.size}.pdf`;
      download(new Uint8Array(answer.bytes), name, 'application/pdf');
      const printing = printingIn(wanted, garment, pieces, { id: newId(), today: today(), version });
      if (printing && useGarment.getState().garment?.id === garment.id) {
        useGarment.getState().edit(words.printedLabel[wanted.what], (now) => addPrinting(now, printing));
      }
      say(words.made(answer.pages));
    } else if (answer.kind === 'nothing-to-print') setTrouble(words.nothing[answer.why]);
    else if (answer.kind === 'broken') setTrouble(words.failed);
  }

  return { share, trouble, make: (wanted) => void make(wanted), stop: () => stopper.current?.abort() };
}

/** Which pages were made, of the garment as it was when they were. */
function printingIn(
  wanted: Wanted,
  garment: Garment,
  pieces: readonly Piece[],
  made: Parameters<typeof printingOf>[2],
): Printing | undefined {
  switch (wanted.what) {
    case 'squares':
      return squaresPrintingOf(pieces, made);
    case 'pages':
      return printingOf(garment, wanted.sheets, made, wanted.chosen);
    case 'out-of-date':
      return mendingOf(garment, made, wanted.again);
  }
}
