import { listedWords } from '../../app/words/check-page';
import { labelWords } from '../../app/words/label';
import { paperSheetWords } from '../../app/words/paper-sheet';
import { beforeYouCut } from '../../core/check/before-you-cut';
import { pieceDrawing } from '../../core/drawing/piece-drawing';
import { cutPieces } from '../../core/garment/cut-pieces';
import type { Garment } from '../../core/garment/garment';
import { versionSaid } from '../../core/garment/version-said';
import { checkSheetPdf } from '../../core/paper/check-sheet';
import { labelPdf } from '../../core/paper/label-pdf';
import { listPdf } from '../../core/paper/list-pdf';
import { type PatternPdfOptions, patternPdf } from '../../core/paper/pattern-pdf';
import type { PaperFonts } from '../../core/paper/pdf-document';
import { tapedSheets } from '../../core/paper/taped-sheets';
import { cutLine } from '../../core/seams/cut-line';

/** How long each step of the work took at the longest, in milliseconds of the processor: others may use the machine. */
export type Longest = Record<string, number>;

function cpuMs(): number {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
}

function atStep(step: string, fault: unknown): Error {
  return new Error(`${step}: ${fault instanceof Error ? (fault.stack ?? fault.message) : String(fault)}`);
}

/** Does something, and notes how long it took at the longest. A throw tells at which step it happened. */
export function timed<Answer>(longest: Longest, step: string, work: () => Answer): Answer {
  const began = cpuMs();
  try {
    return work();
  } catch (fault) {
    throw atStep(step, fault);
  } finally {
    longest[step] = Math.max(longest[step] ?? 0, cpuMs() - began);
  }
}

/** The same of what is waited for, with nothing else going on meanwhile. */
async function timedLater(longest: Longest, step: string, work: () => Promise<unknown>): Promise<void> {
  const began = cpuMs();
  try {
    await work();
  } catch (fault) {
    throw atStep(step, fault);
  } finally {
    longest[step] = Math.max(longest[step] ?? 0, cpuMs() - began);
  }
}

/** More sheets than this prove nothing new. */
const MOST_JOBS = 8;

const TODAY = '2026-03-04';

/**
 * Everything the rooms do with a garment: findings, allowances, drawings and the PDFs; of the pages every one is timed and a
 * few are made. Throws where any of it throws.
 */
export async function workThrough(garment: Garment, fonts: PaperFonts, longest: Longest): Promise<void> {
  timed(longest, 'findings', () => beforeYouCut(garment));
  for (const piece of garment.pieces.slice(0, 8)) {
    timed(longest, 'allowances', () => cutLine(piece));
    timed(longest, 'drawing', () => pieceDrawing(piece));
  }
  await pagesOf(garment, fonts, longest);
  await otherSheets(garment, fonts, longest);
}

/** What is printed beside the pattern: the list before cutting, the label of the envelope, the check sheet. */
async function otherSheets(garment: Garment, fonts: PaperFonts, longest: Longest): Promise<void> {
  const { paper, shownIn } = garment;
  const version = versionSaid([], garment);
  const on = { fonts, today: TODAY } as const;
  const sheets: Readonly<Record<string, () => Promise<unknown>>> = {
    list: () => listPdf({ ...on, listed: listedWords(garment, version, TODAY), paper }),
    label: () => labelPdf({ ...on, garment, version, words: labelWords(garment) }),
    'check sheet': () => checkSheetPdf({ ...on, paper, shownIn, words: paperSheetWords(shownIn, paper.step) }),
  };
  for (const [name, print] of Object.entries(sheets)) await timedLater(longest, name, print);
}

/** The pages and the squares sheets, some of each; how pieces share pages is searched for apart, with progress of its own. */
async function pagesOf(garment: Garment, fonts: PaperFonts, longest: Longest): Promise<void> {
  const paper = { ...garment.paper, placed: 'as-drawn' } as const;
  const { sheets } = timed(longest, 'pages', () => tapedSheets(cutPieces(garment), paper));
  for (const what of ['pages', 'squares'] as const) {
    await someOf({ garment: { ...garment, paper }, sheets, what, fonts }, longest);
  }
}

/** The time between one turn given to others and the next is what a person waits for. */
async function someOf(
  made: Pick<PatternPdfOptions, 'garment' | 'sheets' | 'what' | 'fonts'>,
  longest: Longest,
): Promise<void> {
  const { garment } = made;
  const signal = { aborted: false };
  let jobs = 0;
  let began = cpuMs();
  const turn = () => {
    longest.pdf = Math.max(longest.pdf ?? 0, cpuMs() - began);
    began = cpuMs();
    jobs += 1;
    signal.aborted = jobs >= MOST_JOBS;
  };
  try {
    await patternPdf({
      ...made,
      words: paperSheetWords(garment.shownIn, garment.paper.step),
      today: TODAY,
      onProgress: turn,
      signal,
    });
    turn();
  } catch (fault) {
    throw atStep('pdf', fault);
  }
}
