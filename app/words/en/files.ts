import type { FileFinding, FileRefusal } from '../../../core/files/file-reading';
import type { FileWords } from '../../../core/files/file-words';
import type { FileUnit } from '../../../core/files/svg-units';
import type { Garment } from '../../../core/garment/garment';
import { writeLength } from '../written';
import { paperSheetWords } from './paper-sheet';

/** What stands in a drawing file, in English. */
export function fileWords({ shownIn, paper }: Garment): FileWords {
  const { content, unnamedPiece, unnamedGarment, garmentLine } = paperSheetWords(shownIn, paper.step);
  return {
    content,
    unnamedPiece,
    unnamedGarment,
    garmentLine: (garment, date, mark) => garmentLine(garment, date, { kind: 'changed', mark }),
    layer: (layer) => layers[layer],
  };
}

const layers: Readonly<Record<Parameters<FileWords['layer']>[0], string>> = {
  outline: 'Outline',
  stitch: 'Stitch line',
  cut: 'Cut line',
  fold: 'Fold',
  grain: 'Grain',
  notches: 'Notches',
  marks: 'Darts and marks',
  words: 'Words',
};

const whole = new Intl.NumberFormat('en-GB', { maximumFractionDigits: 0 });

/** Words for drawing files, going out and coming in. */
export const filesWords = {
  out: {
    title: 'Drawing files',
    help: 'For a drawing program, a cutter or a printing house: all pieces at full size, where they lie on the table. Guides are left out.',
    svg: 'Save as SVG',
    svgHelp: 'in millimetres, a group a piece, a named layer a kind of line',
    dxf: 'Save as DXF',
    dxfHelp: 'a block a piece, on the numbered layers of sewn-product files',
    dxfUnit: 'The DXF is in',
    png: 'Save a picture (PNG)',
    pngHelp: 'to look at or send; not to cut from',
    failed: 'The file could not be made. Save the garment to a file, and try again.',
    made: (name: string) => `${name} is in your downloads.`,
    units: { mm: 'millimetres', in: 'inches' } satisfies Readonly<Record<'mm' | 'in', string>>,
  },
  bringIn: {
    button: 'Bring in outlines (SVG, DXF)',
    reading: 'Reading the outlines…',
    stop: 'Stop',
    label: 'bring in outlines',
    done: (count: number) =>
      count === 1
        ? '1 piece is in. Say next what its line includes.'
        : `${count} pieces are in. Say next what their lines include.`,
    none: 'There is no closed outline in that file. Join the ends of its lines where it was drawn, save it again, and bring it in.',
    stopped: 'Stopped. Nothing was brought in.',
    tooLong:
      'That file takes too long to read: nothing was brought in. Save it with fewer points or fewer lines where it was drawn.',
    broken: 'That file could not be read; nothing was brought in.',
    unitTitle: 'How large is it?',
    unitHelp: (across: number, down: number) =>
      `The file does not say how long its unit is. All outlines together are ${whole.format(across)} by ${whole.format(down)} units.`,
    unit: 'One unit is',
    units: {
      mm: 'a millimetre',
      cm: 'a centimetre',
      in: 'an inch',
      px: 'a screen dot, 96 to the inch',
    } satisfies Readonly<Record<FileUnit, string>>,
    comesTo: (across: string, down: string) => `Then they are ${across} by ${down}.`,
    take: 'Bring it in so',
    leave: 'Leave it',
  },
} as const;

/** What is said of a file that was read. */
export function fileFindingSentence(finding: FileFinding, shownIn: Garment['shownIn']): string {
  const length = (mm: number) => writeLength(mm, { shownIn });
  const named = (name: string) => (name === '' ? 'A line' : `The line ${name}`);
  switch (finding.kind) {
    case 'open-line':
      return `${named(finding.name)} on layer ${finding.layer} does not close: ${length(finding.gap)} is missing. It was left out.`;
    case 'encloses-nothing':
      return `${named(finding.name)} on layer ${finding.layer} encloses nothing. It was left out.`;
    case 'not-followed':
      return `An edge lies up to ${length(finding.off)} from the line of the file. Look it over in the draft.`;
    case 'too-much-for-a-piece':
      return `${named(finding.name)} has more corners or notches than a piece may have. It was left out.`;
    case 'notch-astray':
      return 'A notch lies by no edge. It was left out.';
    case 'not-read':
      return `${finding.count === 1 ? '1 part' : `${finding.count} parts`} of the kind ${finding.what} ${finding.count === 1 ? 'is' : 'are'} not read.`;
    case 'broken-line':
      return `${named(finding.name)} breaks off. What came before was read.`;
  }
}

/** Why a file is not read at all, and what to do. */
export function fileRefusalSentence(refusal: FileRefusal): string {
  switch (refusal.kind) {
    case 'not-this-kind':
      return 'That is no SVG and no DXF file, whatever it is called. Save the drawing as one of the two, and bring that in.';
    case 'binary-dxf':
      return 'That DXF is of the binary kind. Save it as DXF in plain text (ASCII), and bring that in.';
    case 'broken-xml':
      return `That SVG is broken at line ${refusal.line}. Open it in a drawing program and save it again.`;
    case 'broken-number':
      return `A number at line ${refusal.line} cannot be read. Save the drawing again where it was made.`;
    case 'broken-off':
      return `The file stops at line ${refusal.line} before its end. Copy or download it again.`;
    case 'too-large':
      return `The file is longer than ${whole.format(refusal.limit / 1e6)} million letters, the most that is read. Save it with fewer points.`;
    case 'too-many':
      return `The file has more than ${whole.format(refusal.limit)} ${refusal.what}, the most that is read. Save it in parts.`;
    case 'too-deep':
      return `Its groups lie more than ${refusal.limit} deep in one another. Take the groups apart where it was drawn, and save it again.`;
    case 'document-type':
      return 'That SVG defines its own signs (a document type), which can be used to do harm; it is not read. Save it as a plain SVG.';
    case 'script':
      return 'That SVG has a program in it, which is not run here and the file not read. Save it as a plain SVG.';
    case 'outside-link':
      return `That SVG wants something from elsewhere (${refusal.link.slice(0, 60)}), and nothing is fetched here. Put it into the file, or leave it out.`;
  }
}
