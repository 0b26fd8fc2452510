import type { PrinterFactors } from '../../../core/garment/garment';
import type { Printing } from '../../../core/garment/printed';
import type { PaperSize } from '../../../core/garment/sheet-choice';
import type { StoredVersion } from '../../../core/garment/version';
import type { VersionSaid } from '../../../core/garment/version-said';
import { SAFE_MARGIN } from '../../../core/paper/page-sizes';
import type { TapedSheet } from '../../../core/paper/placed-piece';
import type { PagesCounted } from '../../../core/paper/taped-sheets';
import type { ShownIn } from '../../../core/units/inch';
import { roundLength, writeLength } from '../written';
import { dateWords, olderLineWords, versionWords } from './paper-sheet';

/** Words of the Paper room. */
export const paperWords = {
  what: 'What to print',
  printHelp: 'Sheets for your own printer, taped together.',
  squaresHelp:
    'A small drawing on numbered squares and a table of points, to draw the piece on brown paper with a yardstick.',
  makePages: 'Make the pages (PDF)',
  makeSquares: 'Make the squares sheets (PDF)',
  making: (share: number) => `Making the pages… ${Math.round(share * 100)} %`,
  stop: 'Stop',
  made: (pages: number) =>
    `Made: ${pages === 1 ? '1 page' : `${pages} pages`}. The file is among the downloads of this browser.`,
  failed: 'The pages could not be made. Try again; if it fails again, print fewer pieces at once.',
  version: (version: VersionSaid) =>
    `On every page will stand: ${versionWords(version)}. The mark changes as soon as a piece does, so that old pages can be told from new.`,
  fileVersion: (version: VersionSaid) =>
    version.kind === 'kept'
      ? `version ${version.number} ${version.name.slice(0, 40)}`
      : version.since === undefined
        ? version.mark
        : `${version.mark} changed since version ${version.since}`,
  fileWhat: { pages: 'pages', squares: 'squares', 'out-of-date': 'pages out of date', again: 'page again' },
  printed: 'On paper',
  printedLabel: { pages: 'pages made', squares: 'squares sheets made', 'out-of-date': 'pages made' },
  allCurrent:
    'The newest pages of every piece are as the draft is now. Older ones, with another mark, are not to be used.',
  makeStale: 'Make only the pages out of date (PDF)',
  printingOf: ({ date, version, mark }: Printing) =>
    `${dateWords(date)}: ${version === undefined ? `mark ${mark}` : `version ${version} (${mark})`}`,
  printedPages: (piece: string, names: readonly string[], mends: boolean) =>
    `${piece || 'Piece without a name'}: ${mends ? 'only ' : ''}${names.length === 1 ? 'page' : 'pages'} ${names.join(', ')}`,
  printedSquares: (piece: string) => `${piece || 'Piece without a name'}: squares sheet`,
  unused: 'Not used any more',
  unusedLabel: 'pages not used any more',
  nothing: {
    'no-piece': 'Tick at least one piece to print.',
    'no-room':
      'These pieces cannot be laid on this paper: its margins leave no room, or a piece would take more than a thousand sheets. Make the margins smaller, choose larger paper, or look for a point gone astray.',
  },
  paper: 'Paper',
  size: 'Size',
  sizes: {
    a4: 'A4',
    letter: 'Letter',
    legal: 'Legal',
    a3: 'A3',
    tabloid: 'Tabloid',
    a0: 'A0',
    roll: 'Roll',
  } satisfies Record<PaperSize, string>,
  turned: 'Sheet',
  upright: 'Upright',
  sideways: 'Sideways',
  margin: 'Clear margin',
  more: 'More about the pages',
  placed: 'Pieces',
  fewest: 'On as few pages as can be',
  asDrawn: 'Each on its own, as drawn',
  joins: 'Pages are joined',
  lapped: 'One over the other',
  butted: 'Edge to edge',
  loses: 'My printer loses',
  losesHint: (shownIn: ShownIn) =>
    `Along the edge it loses most at: ${roundLength(shownIn, 1 / 4, 0.6)} is common. The check sheet shows it.`,
  losesBySide: 'Each side by itself',
  losesAt: { top: 'At the top', right: 'At the right', bottom: 'At the bottom', left: 'At the left' },
  keepsClear: (loses: number | undefined, shownIn: ShownIn) =>
    loses === undefined
      ? `All ink keeps ${writeLength(SAFE_MARGIN, { shownIn })} from the edge until you say what your printer loses.`
      : `All ink keeps ${writeLength(loses, { shownIn })} from the edge, which is what your printer loses.`,
  squaresOver: 'Fine squares over the pages',
  noSquares: 'None',
  inchSquares: '1 in',
  centimetreSquares: '1 cm',
  under: 'Lay an older version under it in dots',
  noUnder: 'None',
  anotherUnder: 'Choose another',
  olderLine: (index: number, version: string) => `${olderLineWords[index] ?? ''}: ${version}`,
  withoutOlder: (version: string) => `Without ${version}`,
  leftOut: (names: readonly string[]) => `Not on these pages: ${names.join(', ')}. ${paperWords.tooLarge}`,
  tooLarge:
    'At full size it would take more than a thousand sheets, or the margins leave no room. Look for a point gone astray, take larger paper, or untick it.',
  versionNamed: ({ number, name, made }: Pick<StoredVersion, 'number' | 'name' | 'made'>) =>
    `version ${number}${name === '' ? '' : `, ${name}`}, ${dateWords(made)}`,
  rollWidth: 'The roll is wide',
  rollHint: (longest: string) => `One page is as long as it needs to be, up to ${longest}.`,
  overlap: 'Pages overlap by',
  step: 'Figures of the squares sheet',
  toStep: (step: string) => `to ${step}`,
  paperLabel: 'paper',
  pages: (count: number) => (count === 1 ? '1 page' : `${count} pages`),
  total: (pages: number, first: number) =>
    first === 1
      ? `${pages} pages with the first one, which proves the scale.`
      : `${pages} pages with the first ${first}, which prove the scale and show which goes where.`,
  /** The pages of a piece's sheet, or with which piece it shares them. */
  pagesOf: (pieceId: string, { placed, plan }: TapedSheet) => {
    const first = placed[0]?.piece;
    const count = plan.pages.length === 1 ? '1 page' : `${plan.pages.length} pages`;
    return first === undefined || first.id === pieceId ? count : `with ${first.name || 'the first'}`;
  },
  counted: ({ pages, plain, least }: PagesCounted, sheets: readonly TapedSheet[], shownIn: ShownIn) => {
    const [sheet] = sheets;
    if (sheet?.plan.paper.size === 'roll') {
      const lengths = sheets.map(({ plan }) => (plan.paper.rollLength ?? 0) * plan.pages.length);
      return `Of the roll ${writeLength(
        lengths.reduce((sum, one) => sum + one, 0),
        { shownIn, step: 'eighth' },
      )} are needed.`;
    }
    const saved = pages < plain ? `Plain rows and columns would take ${plain}. ` : '';
    return `${saved}${pages === least ? 'Fewer pages cannot be.' : `Fewer than ${least === 1 ? '1 page' : `${least} pages`} cannot be.`}`;
  },
  laying: 'Looking for the fewest pages…',
  layingFailed: 'The pages could not be laid out. Change the paper, or tick fewer pieces at once.',
  choosePages: 'Only some of these pages',
  pageNamed: (name: string, piece: string) => `${name} of ${piece}`,
  makeChosen: (count: number) => (count === 1 ? 'Make the chosen page (PDF)' : `Make the ${count} chosen pages (PDF)`),
  allPages: 'All pages after all',
  again: 'A page once more',
  noPageAgain: 'None',
  makeAgain: (name: string) => `Make page ${name} again (PDF)`,
  proof: 'Proof of scale',
  proofHelp:
    'Print the check sheet once for your printer and paper, measure its two rules, and write down what you read. The test square on every page shows whether that page came out true.',
  makeCheck: 'Make the check sheet (PDF)',
  checkFile: 'check-sheet',
  measured: 'What was measured',
  measuredRules: 'The check sheet',
  measuredSquare: 'The test square',
  ruleAcross: (length: number, shownIn: ShownIn) => `The ${writeLength(length, { shownIn })} across measure`,
  ruleDown: (length: number, shownIn: ShownIn) => `The ${writeLength(length, { shownIn })} down measure`,
  across: 'The square measures across',
  down: 'The square measures down',
  proofLabel: 'proof of scale',
  proved: (date: string) => `Proved on ${date}: your printer is true.`,
  notThePrinter:
    'No printer is off like that: a viewer or the print window has fitted the pages to the paper. Print again at 100 % or “actual size”, on the paper chosen here, and measure once more.',
  printerOff: ({ across, down }: PrinterFactors) =>
    `Your printer prints ${percent(across)} across and ${percent(down)} down. The pages can be drawn the other way by as much, so that they come out true on it.`,
  correct: 'Correct the pages for this printer',
  correctLabel: 'correction for the printer',
  corrected: ({ across, down }: PrinterFactors) =>
    `Pages are corrected for a printer that prints ${percent(across)} across and ${percent(down)} down. Each page says so, and its square measures true on that printer only.`,
  otherPrinter: 'Another printer: begin anew',
  otherPrinterLabel: 'another printer',
  noPiecesTitle: 'Nothing to print yet',
  noPieces: 'The pages of your pattern will lie here. Trace a piece in the Draft room first.',
  noneChosenTitle: 'No piece is ticked',
  toDraft: 'Go to the Draft room',
  preview: (piece: string, pages: number) => `${piece} on ${pages} ${pages === 1 ? 'page' : 'pages'}`,
  unnamed: 'Piece without a name',
  openCount: (count: number) =>
    count === 1 ? '1 thing must be settled before you cut.' : `${count} things must be settled before you cut.`,
  toCheck: 'See the list',
} as const;

function percent(factor: number): string {
  return `${(factor * 100).toFixed(1)} %`;
}

/** The pieces on a sheet, by their names. */
export function sheetWords({ placed }: TapedSheet): string {
  return placed.map(({ piece }) => piece.name || paperWords.unnamed).join(' + ');
}
