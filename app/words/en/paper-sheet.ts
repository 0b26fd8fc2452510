import type { WordsContent } from '../../../core/drawing/drawing';
import type { EdgeRole } from '../../../core/garment/piece';
import type { VersionSaid } from '../../../core/garment/version-said';
import type { CheckSheetWords, FirstPageWords, PaperWords, SquaresWords } from '../../../core/paper/paper-words';
import type { ScaleCause } from '../../../core/paper/scale-causes';
import type { ShownIn } from '../../../core/units/inch';
import type { WrittenStep } from '../../../core/units/write-length';
import { roundLength, writeLength } from '../written';
import { measureNames } from './measures';

/** Everything said on paper, in English. Lengths are written in `shownIn`, to the nearest `step`. */
export function paperSheetWords(shownIn: ShownIn, step: WrittenStep): PaperWords {
  const options = { shownIn, step } as const;
  const length = (mm: number) => writeLength(mm, options);
  return {
    length,
    figure: (mm) => writeLength(mm, { ...options, unit: 'left-off' }),
    date: dateWords,
    content: (content) => contentWords(content, length),
    unnamedPiece: 'Piece without a name',
    unnamedGarment: 'Garment without a name',
    pageOf: (page, of) => `page ${page} of ${of}`,
    rowColumn: (row, column) => `row ${row}, column ${column}`,
    garmentLine: (garment, date, version) => `${garment}, ${versionWords(version)}, ${date}`,
    fullSize: 'full size: print at 100 %',
    corrected: ({ across, down }) =>
      `corrected for a printer that prints ${(across * 100).toFixed(1)} % across, ${(down * 100).toFixed(1)} % down`,
    testSquare: '4 in = 10.16 cm, both ways',
    thisWayUp: 'this way up',
    inch: 'in',
    centimetre: 'cm',
    cutAndLayOver: (label) => `cut off here and lay over ${label}`,
    goesUnder: (label) => `goes under ${label} up to here`,
    cutAndSetTo: (label) => `cut off here and set edge to edge with ${label}`,
    inAll: (piece, across, down, grain) =>
      `${piece === undefined ? 'all taped up' : piece}: ${across} across, ${down} down${grain === undefined ? '' : `, grain line ${grain}`}`,
    layers: {
      cut: 'Cut line',
      stitch: 'Stitch line',
      marks: 'Marks and words',
      squares: 'Fine squares',
      under: (version) => `Older: ${version}`,
      older: (index, version) => `${olderLineWords[index] ?? ''}: ${version}`,
    },
    first: firstWords(shownIn),
    check: checkWords(shownIn),
    squares: squaresWords(shownIn, length),
  };
}

/** How the lines of older versions look, in their order. */
export const olderLineWords = ['single dots', 'dots in twos', 'dots in threes', 'dashes and dots'];

/** Which version a page is of, with the mark of its pieces. */
export function versionWords(version: VersionSaid): string {
  const { mark } = version;
  if (version.kind === 'kept') {
    return `version ${version.number}${version.name === '' ? '' : `, ${version.name}`} (${mark})`;
  }
  return version.since === undefined ? `mark ${mark}` : `mark ${mark}, changed since version ${version.since}`;
}

const papers: Readonly<Record<string, string>> = {
  a4: 'A4',
  a3: 'A3',
  letter: 'Letter',
  legal: 'Legal',
  tabloid: 'Tabloid',
  a0: 'A0',
  roll: 'a roll',
};

const checkWords = (shownIn: ShownIn): CheckSheetWords => ({
  title: 'Is your printer true?',
  how: [
    'Print this page alone at 100 % or “actual size”, with fitting, shrinking and borderless printing turned off, on the paper the pattern will be printed on.',
    `Lay a ruler or a tape along each of the two rules, from end tick to end tick, and write down what you read in the Paper room. A difference of ${roundLength(shownIn, 1 / 32, 0.1)} is read by nobody.`,
  ],
  rule: (length, way) => `this rule is ${length} ${way}`,
  marginTitle: 'What your printer loses',
  marginHow: [
    'Along each edge stand short lines. Find the first that is printed whole, at every edge, and read the figure beside it. The largest of the four is what your printer loses; or write down all four.',
  ],
  fitsTitle: 'When the longer rule measures',
  fit: (cause, share, length) => `${length} (${(share * 100).toFixed(1)} %): ${fittedWords(cause)}`,
});

/** Why pages came out larger or smaller. */
export function fittedWords(cause: ScaleCause): string {
  switch (cause.kind) {
    case 'fitted': {
      const fitted = `${papers[cause.page]} pages were fitted to ${papers[cause.to]}`;
      return cause.loses === undefined ? fitted : `${fitted} within the printer’s margins`;
    }
    case 'into-margins':
      return `${papers[cause.page]} pages were shrunk into the printer’s margins (“fit to printable area”)`;
    case 'uneven':
      return 'the printer stretches one way more than the other';
    case 'unknown':
      return 'pages were printed at some other size than 100 %';
  }
}

const firstWords = (shownIn: ShownIn): FirstPageWords => ({
  line: (pages, paper, date) => `Full-size pattern of ${date}: ${pages} pages of ${paper}, this one among them`,
  paper: (size) => papers[size] ?? size,
  wearerLine: (date, wornOver) =>
    wornOver === '' ? `For the measures of ${date}` : `For the measures of ${date}, taken over ${wornOver}`,
  markLine: (version) =>
    `On every page stands: ${versionWords(version)}. The mark changes as soon as a piece does, so that old pages can be told from new.`,
  keyTitle: 'The lines on the pages',
  key: {
    cut: 'cut here',
    stitch: 'sew here',
    fold: 'fold of the cloth: do not cut',
    grain: 'straight of the cloth',
    notch: 'notch: meets one like it',
    opening: 'end of an opening: sew from here on',
    dart: 'dart: fold in the middle, sew on this',
    'pleat-fold': 'pleat: fold here',
    'pleat-placement': 'pleat: bring the fold to here',
    gathers: 'gather between the two ticks',
    level: 'level of the body: not sewn',
    drill: 'point to be marked on the cloth',
    corner: 'stitch corner to measure from',
    upright: 'over the name: this end is up',
  },
  scaleTitle: 'Measure this square first',
  scaleLines: [
    'Print this page alone, at 100 % or “actual size”, with fitting, shrinking and borderless printing turned off.',
    'Lay a ruler on the square, across and down. Both ways it must be 4 in, which is 10.16 cm. Then print the rest.',
    `Near ${roundLength(shownIn, 3 + 7 / 8, 9.9)}, Letter pages were fitted to A4. Near ${roundLength(shownIn, 3 + 3 / 4, 9.6)}, A4 pages were fitted to Letter. Choose the paper you have and print again.`,
    'Every page has its own square and rulers, for a printer may slip on any of them.',
  ],
  joinTitle: 'Join the pages',
  joinLines: {
    lapped: [
      'Cut a page off along its dotted line at the right, lay it over its neighbour so that the crosses and their numbers meet, and tape. When the rows are done, cut off each row at the bottom and join the rows in the same way, by their letters.',
    ],
    butted: [
      'Cut both pages off along their dotted lines and set them edge to edge, so that the crosses and their numbers meet; tape from behind. When the rows are done, cut them off and set them together in the same way, by their letters.',
    ],
  },
  mapTitle: 'Which page goes where',
  mapLine: (piece, pages) => `${piece}: ${pages === 1 ? '1 page' : `${pages} pages`}`,
  totalsTitle: 'Taped together it measures',
  totals: {
    grain: (length) => `grain line ${length}`,
    widest: (across, down) => `${across} across and ${down} down`,
    diagonal: (from, to, length) => `stitch corner ${from} to ${to}: ${length}`,
  },
  cautionTitle: 'Before you cut',
  cautions: [
    'Measure the taped pattern against the figures under its map.',
    'A draft is a plan: make a mock-up in cheap cloth and fit it before cutting the real one.',
    'Irons burn and blades cut. Cut away from your hand, and count the pins after a fitting.',
  ],
});

function squaresWords(shownIn: ShownIn, length: (mm: number) => string): SquaresWords {
  return {
    title: (piece) => `${piece}: squares sheet`,
    goesOn: (piece) => `${piece}: squares sheet, continued`,
    how: (square) =>
      `One square is ${square} at full size. On large paper draw two long lines at a true right angle; where they cross is the zero. From the zero step off each point with a yardstick, across along the one and then down, never from point to point. Join the corners, and draw the curves smoothly through their points.`,
    howByLine: (square, { from, to, side }) =>
      `One square is ${square} at full size. On large paper draw one long straight line, the base line, and mark ${from} on it; it runs through ${to}. Measure each point along the line from ${from}, and from there out at a right angle, to the ${side} as you look from ${from} to ${to}. A figure with − goes the other way. Always measure along from ${from}, never from point to point. Join the corners, and draw the curves smoothly through their points.`,
    along: `along ${shownIn}`,
    out: `out ${shownIn}`,
    zero: 'zero',
    line: (drawn, content) => `${drawn === 'cut' ? 'The cut line' : 'The stitch line'}. ${content}.`,
    point: 'point',
    across: `across ${shownIn}`,
    down: `down ${shownIn}`,
    edges: 'Along the edges',
    proofs: 'To check',
    marks: 'Marks',
    straight: (from, to) => `${from} straight to ${to}`,
    proveTitle: 'Prove the paper square first',
    proof: ({ corner, frame }, byLine) =>
      byLine
        ? [
            `The right angle: mark ${length(corner.down)} along the base line and ${length(corner.across)} out from its start. From mark to mark it must be ${length(corner.apart)} (sides of 3, 4 and 5).`,
          ]
        : [
            `The right angle: mark ${length(corner.across)} along the line across and ${length(corner.down)} along the line down. From mark to mark it must be ${length(corner.apart)} (sides of 3, 4 and 5).`,
            `The whole: a rectangle of ${length(frame.across)} by ${length(frame.down)} goes round all squares. Both its diagonals must be ${length(frame.diagonal)}.`,
          ],
    mark: (mark, text) => {
      switch (mark) {
        case 'dart-start':
          return `dart ${text} side`;
        case 'dart-point':
          return `dart ${text} point`;
        case 'dart-end':
          return `dart ${text} side`;
        case 'notch':
          return 'notch';
        case 'grain-start':
          return 'grain start';
        case 'grain-end':
          return 'grain end';
        case 'label':
          return text;
      }
    },
  };
}

const months = 'January February March April May June July August September October November December'.split(' ');

/** 7 November 2026 for 2026-11-07. */
export function dateWords(date: string): string {
  const [year, month, day] = date.split('-').map(Number);
  const name = month === undefined ? undefined : months[month - 1];
  return name === undefined ? date : `${day} ${name} ${year}`;
}

function contentWords(content: WordsContent, length: (mm: number) => string): string {
  switch (content.kind) {
    case 'piece-name':
      return content.name === '' ? 'Piece without a name' : content.name;
    case 'cut':
      return cutWords(content);
    case 'edge':
      return edgeWords(content, length);
    case 'opening':
      return openingWords[content.marks](length(content.length));
    case 'level':
      return content.name ?? measureNames[content.girth];
    case 'corner':
      return String(content.number);
    case 'upright':
      return 'up';
    case 'fold':
      return 'place on the fold';
    case 'grain':
      return 'straight of the cloth';
    case 'label':
      return content.text;
    case 'gathers':
      return `gather ${length(content.length)} into ${length(content.into)}`;
    case 'right-side-up':
      return 'right side of the cloth up';
    case 'allowance':
      return allowanceWords(content.widths, length);
  }
}

const roleNames: Readonly<Record<EdgeRole, string>> = {
  seam: 'seam',
  fold: 'fold',
  waist: 'waist',
  hem: 'hem',
  opening: 'opening',
  finished: 'finished edge',
};

/** What an edge is and what is allowed on it, as it stands along the edge. */
function edgeWords(
  { name, role, width }: Extract<WordsContent, { kind: 'edge' }>,
  length: (mm: number) => string,
): string {
  const said = name.trim() || roleNames[role];
  if (width === undefined) return said;
  return width === 0 ? `${said}, no allowance` : `${said}, ${length(width)} allowed`;
}

/** By how many marks bound it: none, one or two. */
const openingWords = {
  0: (length: string) => `left open, ${length}`,
  1: (length: string) => `leave open to the mark, ${length}`,
  2: (length: string) => `leave open between the marks, ${length}`,
} as const;

/** How a piece is cut, as it stands on the piece. */
export function cutWords({ how, count }: { readonly how: 'fold' | 'pair' | 'single'; readonly count: number }): string {
  if (how === 'fold') return `Cut ${count} on the fold`;
  if (how === 'pair') return `Cut ${count}, in mirrored pairs`;
  return `Cut ${count}`;
}

function allowanceWords(
  widths: Extract<WordsContent, { kind: 'allowance' }>['widths'],
  length: (mm: number) => string,
): string {
  if (widths === 'none') return 'NO SEAM ALLOWANCE: add it when cutting';
  if (widths === 'not-said') return 'ALLOWANCE NOT SETTLED: do not cut yet';
  if (widths === 'in-drawing') return 'allowances are in the drawing: cut on the line';
  if (widths.length === 1) return `${length(widths[0] ?? 0)} allowed all round`;
  return `allowed: ${widths.map(length).join(', ')}`;
}
