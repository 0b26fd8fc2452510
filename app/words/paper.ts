import type { PaperSize, PrinterFactors } from '../../core/garment/garment';
import type { Printing } from '../../core/garment/printed';
import type { VersionSaid } from '../../core/garment/version-said';
import { dateWords, versionWords } from './paper-sheet';

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
  made: (pages: number) => (pages === 1 ? 'Made: 1 page.' : `Made: ${pages} pages.`),
  failed: 'The pages could not be made. Try again; if it fails again, print fewer pieces at once.',
  version: (version: VersionSaid) =>
    `On every page will stand: ${versionWords(version)}. The mark changes as soon as a piece does, so that old pages can be told from new.`,
  fileVersion: (version: VersionSaid) =>
    version.kind === 'kept'
      ? `version ${version.number} ${version.name.slice(0, 40)}`
      : version.since === undefined
        ? version.mark
        : `${version.mark} changed since version ${version.since}`,
  fileWhat: { pages: 'pages', squares: 'squares', 'out-of-date': 'pages out of date' },
  printed: 'On paper',
  printedLabel: { pages: 'pages made', squares: 'squares sheets made', 'out-of-date': 'pages made' },
  allCurrent: 'All pages that are in use are as the draft is now.',
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
    'no-room': 'These margins leave no room on this paper. Make them smaller, or choose larger paper.',
  },
  paper: 'Paper',
  size: 'Size',
  sizes: {
    a4: 'A4',
    letter: 'Letter',
    legal: 'Legal',
    a3: 'A3',
    tabloid: 'Tabloid',
  } satisfies Record<PaperSize, string>,
  turned: 'Sheet',
  upright: 'Upright',
  sideways: 'Sideways',
  margin: 'Clear margin',
  marginHint: 'What your printer cannot reach. 10 mm is safe on most.',
  overlap: 'Pages overlap by',
  step: 'Figures of the squares sheet',
  steps: { sixteenth: 'to 1/16 in', eighth: 'to 1/8 in', millimetre: 'to 1 mm' },
  paperLabel: 'paper',
  pages: (count: number) => (count === 1 ? '1 page' : `${count} pages`),
  total: (pages: number) => `${pages} pages with the first one, which proves the scale.`,
  proof: 'Proof of scale',
  proofHelp: 'Print the first page, measure its square with a ruler, and write down what you read.',
  across: 'The square measures across',
  down: 'The square measures down',
  proofLabel: 'proof of scale',
  proved: (date: string) => `Proved on ${date}: the square is true.`,
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
