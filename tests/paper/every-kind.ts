/** Every kind of page that is printed, made of the frozen sample with every field in use. */
import { readFileSync } from 'node:fs';
import { listedWords } from '../../app/words/check-page';
import { labelWords } from '../../app/words/label';
import { paperSheetWords } from '../../app/words/paper-sheet';
import { ringCentre } from '../../core/cloth/ring-middle';
import { cutPieces } from '../../core/garment/cut-pieces';
import type { Garment, PaperChoice } from '../../core/garment/garment';
import { outlineOf } from '../../core/garment/outline';
import { versionSaid } from '../../core/garment/version-said';
import { flattenPath } from '../../core/geometry/flatten';
import { checkSheetPdf } from '../../core/paper/check-sheet';
import { labelPdf } from '../../core/paper/label-pdf';
import { type LaidCloth, layPdf } from '../../core/paper/lay-pdf';
import { listPdf } from '../../core/paper/list-pdf';
import { type PatternPdfOptions, patternPdf } from '../../core/paper/pattern-pdf';
import { addPrinting, printingOf } from '../../core/paper/printing-of';
import { tapedSheets } from '../../core/paper/taped-sheets';
import { inches } from '../../core/units/inch';
import { linden } from '../garment/linden';
import { fonts } from './fonts';
import { rectangle } from './pieces';

const today = '2026-03-04';

/** The sample on such paper. */
function garmentOn(paper: Partial<PaperChoice>): Garment {
  const garment = linden();
  return { ...garment, paper: { ...garment.paper, ...paper } };
}

async function pattern(
  paper: Partial<PaperChoice>,
  what: 'pages' | 'squares' | 'out-of-date',
  more: Partial<PatternPdfOptions> = {},
): Promise<Uint8Array> {
  const garment = garmentOn(paper);
  const words = paperSheetWords(garment.shownIn, garment.paper.step);
  const made = await patternPdf({ garment, what, words, fonts, today, ...more });
  if (made.kind !== 'pdf') throw new Error(`there is something to print: ${made.kind}`);
  return made.bytes;
}

/** Two pages of a printing, made once more. */
async function again(): Promise<Uint8Array> {
  const garment = garmentOn({});
  const { sheets } = tapedSheets(cutPieces(garment), garment.paper);
  const [page, other] = sheets[0]?.plan.pages ?? [];
  const [piece] = garment.pieces;
  if (!page || !other || !piece) throw new Error('there are pages');
  const printing = printingOf(garment, sheets, { id: 'made', today, version: { kind: 'changed', mark: 'ABCDE' } });
  return pattern({}, 'out-of-date', {
    garment: addPrinting(garment, printing),
    again: { pieceId: piece.id, names: [page.label, other.label] },
  });
}

const older = [
  { said: 'version 1, wider', pieces: [{ ...rectangle(0, 0, 300, 700), id: linden().pieces[0]?.id ?? '' }] },
];

function laid(): LaidCloth {
  const [panel, band] = linden().pieces.map((piece) => flattenPath(outlineOf(piece).whole, 0.5));
  if (!panel || !band) throw new Error('the sample has two pieces');
  const moved = (ring: typeof panel, toX: number, toY: number) => {
    const [left, top] = [Math.min(...ring.map(({ x }) => x)), Math.min(...ring.map(({ y }) => y))];
    return ring.map(({ x, y }) => ({ x: x - left + toX, y: y - top + toY }));
  };
  const lengthwise = (ring: typeof panel) => ring.map(({ x, y }) => ({ x: y, y: x }));
  const piece = (ring: typeof panel, name: string, turn = 0) => ({ ring, name, turn, middle: ringCentre(ring) });
  return {
    across: inches(22),
    length: inches(72),
    pieces: [
      piece(moved(lengthwise(panel), 10, 10), 'Panel 1'),
      {
        ...piece(moved(lengthwise(panel), 800, 20), 'Panel 2'),
        join: [
          { x: 1100, y: 100 },
          { x: 1100, y: 300 },
        ],
      },
      piece(moved(band, 20, 440), 'Waistband', Math.PI / 2),
    ],
    kept: [rectangle(1500, 400, 90, 60).corners.map(({ at }) => at)],
    fold: 'side',
    sides: { near: 'fold', far: 'selvedge', end: 'cut end' },
  };
}

async function lay(scale?: number): Promise<Uint8Array> {
  const said = {
    title: `Linden petticoat: lay on calico${scale === undefined ? '' : ', 1 to 8'}`,
    lines: ['Takes 72 in (2 yd) of cloth 45 in wide, laid on the straight grain.', 'Folded lengthwise. 71 % is used.'],
    places: ['Panel 1: 1/2 in from the cut end', 'Panel 2: 31 1/2 in from the cut end', 'Waistband: at the selvedge'],
    foot: (page: number, of: number) => `Linden petticoat, calico, page ${page} of ${of}`,
    rule: { step: inches(4), written: Array.from({ length: 20 }, (_, k) => (k === 1 ? '4 in' : String(4 * k))) },
    scaleCheck: 'This line is 4 in (10.16 cm) on paper, and 32 in of the cloth. Measure it first.',
  };
  const { paper } = linden();
  return (await layPdf({ laid: laid(), said, paper, fonts, today, ...(scale === undefined ? {} : { scale }) })).bytes;
}

async function label(picture?: Uint8Array): Promise<Uint8Array> {
  const garment = linden();
  const words = labelWords(garment);
  const version = versionSaid([], garment);
  return (await labelPdf({ garment, version, words, fonts, today, ...(picture && { picture }) })).bytes;
}

async function list(): Promise<Uint8Array> {
  const garment = linden();
  const listed = listedWords(garment, versionSaid([], garment), today);
  return (await listPdf({ listed, paper: garment.paper, fonts, today })).bytes;
}

async function check(paper: Partial<PaperChoice>): Promise<Uint8Array> {
  const garment = garmentOn(paper);
  const words = paperSheetWords('in', 'sixteenth');
  return checkSheetPdf({ paper: garment.paper, shownIn: 'in', words, fonts, today });
}

/** What is printed, by what it is: each makes a PDF. */
export const EVERY_KIND: Readonly<Record<string, () => Promise<Uint8Array>>> = {
  'pages on A4': () => pattern({}, 'pages'),
  'pages on Letter, edge to edge, fine squares': () =>
    pattern({ size: 'letter', joins: 'butted', squaresOver: 'inch' }, 'pages'),
  'pages on A3 sideways, an older version under them': () =>
    pattern({ size: 'a3', turned: 'sideways' }, 'pages', { under: older }),
  'pages on A0': () => pattern({ size: 'a0' }, 'pages'),
  'pages on a roll': () => pattern({ size: 'roll', rollWidth: inches(24) }, 'pages'),
  'pages for a printer that is off': () => pattern({ printer: { across: 0.993, down: 1.006 } }, 'pages'),
  'pages made once more': () => again(),
  'squares sheets': () => pattern({}, 'squares'),
  'squares sheets along a base line': () => pattern({ squares: { from: 'base-line' } }, 'squares'),
  'squares sheets in large print': () => pattern({ squares: { print: 'large', square: inches(2) } }, 'squares'),
  'check sheet on A4': () => check({}),
  'check sheet on Letter sideways, corrected': () =>
    check({ size: 'letter', turned: 'sideways', printer: { across: 0.993, down: 1.006 } }),
  'label with the pieces drawn': () => label(),
  'label with a photo': () =>
    label(new Uint8Array(readFileSync(new URL('../../public/demo/linden-plate.jpg', import.meta.url)))),
  'list before cutting': () => list(),
  'plan of a lay': () => lay(),
  'lay to scale': () => lay(8),
};
