import { useRef, useState } from 'react';
import type { Garment } from '../../core/garment/garment';
import type { Piece } from '../../core/garment/piece';
import { type VersionSaid, versionSaid } from '../../core/garment/version-said';
import type { PatternPdfOptions } from '../../core/paper/pattern-pdf';
import { addPrinting, mendingOf, printingOf, squaresPrintingOf } from '../../core/paper/printing-of';
import { useGarment } from '../state/garment-store';
import { today } from '../state/today';
import { download, fileName } from '../storage/download';
import { versionsOf } from '../storage/versions';
import { say } from '../ui/say';
import { paperWords as words } from '../words/paper';
import { fontAddresses, pdfWork } from '../workers/pdf-calls';

type What = Exclude<PatternPdfOptions['what'], 'both'>;

export interface Making {
  /** The share done, 0 to 1, while something is being made. */
  readonly share: number | undefined;
  readonly trouble: string | undefined;
  readonly make: (what: What) => void;
  readonly stop: () => void;
}

/** One PDF at a time, with its progress and a way to stop it; pages and squares sheets that were made are remembered as printed. */
export function useMaking(garment: Garment, chosen: readonly Piece[]): Making {
  const [share, setShare] = useState<number>();
  const [trouble, setTrouble] = useState<string>();
  const stopper = useRef<AbortController>(undefined);

  async function make(what: What) {
    stopper.current = new AbortController();
    setTrouble(undefined);
    setShare(0);
    // Read anew, for a version may just have been kept in another room; pages without its name are better than none.
    const version = versionSaid(await versionsOf(garment.id).catch(() => []), garment);
    // Pages that are out of date are made of every piece, ticked or not.
    const pieces = what === 'out-of-date' ? garment.pieces : chosen;
    const answer = await pdfWork.call(
      'pattern',
      {
        garment,
        pieceIds: pieces.map((piece) => piece.id),
        what,
        version,
        today: today(),
        fonts: fontAddresses(),
      },
      { signal: stopper.current.signal, onProgress: setShare },
    );
    setShare(undefined);
    if (answer.kind === 'pdf') {
      const name = `${fileName(`${garment.name} ${words.fileVersion(version)} ${words.fileWhat[what]}`)}-${garment.paper.size}.pdf`;
      download(new Uint8Array(answer.bytes), name, 'application/pdf');
      remember(garment, chosen, what, version);
      say(words.made(answer.pages));
    } else if (answer.kind === 'nothing-to-print') setTrouble(words.nothing[answer.why]);
    else if (answer.kind === 'broken') setTrouble(words.failed);
  }

  return { share, trouble, make: (what) => void make(what), stop: () => stopper.current?.abort() };
}

/** Notes in the garment which pages were made, as it was when they were. */
function remember(garment: Garment, chosen: readonly Piece[], what: What, version: VersionSaid): void {
  const made = { id: crypto.randomUUID(), today: today(), version };
  const printing = printingIn[what](garment, chosen, made);
  if (!printing || useGarment.getState().garment?.id !== garment.id) return;
  useGarment.getState().edit(words.printedLabel[what], (now) => addPrinting(now, printing));
}

const printingIn: Readonly<
  Record<What, (...made: Parameters<typeof printingOf>) => ReturnType<typeof printingOf> | undefined>
> = {
  pages: printingOf,
  squares: (_, chosen, made) => squaresPrintingOf(chosen, made),
  'out-of-date': (garment, _, made) => mendingOf(garment, made),
};
