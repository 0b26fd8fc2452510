import type { Level } from '../../../core/garment/garment';
import type { EdgeRole } from '../../../core/garment/piece';
import { draftWords } from './draft';
import { fitWords } from './fit';

/** A number with its sign, where there is a difference at all. */
function signed(difference: number, written: string): string {
  return difference > 0 && /[1-9]/.test(written) ? `+${written}` : written;
}

/** Words of the Compare room. */
export const compareWords = {
  tableLabel:
    'Two pieces, one over the other. Arrow keys move the other piece by a little, with Shift by more; Page Up and Page Down turn it; Escape lays it back.',
  noPiecesTitle: 'Nothing to compare yet',
  noPieces:
    'Here one piece is laid over another: an earlier version, a piece as it was traced, another garment, or a draft from measures. Trace a piece in the Draft room first.',
  toDraft: 'Go to the Draft room',
  what: 'What is compared',
  whatHelp: 'Nothing here changes either piece.',
  mine: 'Piece of this garment',
  source: 'With a piece of',
  sources: {
    piece: 'this garment, another piece',
    traced: 'this garment, as it was traced',
    draft: 'a draft from the wearer’s measures',
  },
  version: (number: number, name: string) => (name === '' ? `version ${number}` : `version ${number}, ${name}`),
  shelf: (name: string) => `${name || 'a garment without a name'}, on the shelf`,
  fetching: 'Looking on this device…',
  nothingKept: 'No version of this garment is kept yet, and no other garment is on the shelf.',
  otherPiece: 'The other piece',
  unnamed: 'Piece without a name',
  versionDamaged: (number: number) =>
    `What is stored of version ${number} is damaged and cannot be shown. The other versions are not touched by that.`,
  shelfDamaged:
    'What is stored of that garment is damaged, so it cannot be compared with. If you have a file of it, open that first.',
  shelfNewer:
    'That garment was last changed with a newer Inchsquare. Reload the page to bring this one up to date, then compare.',
  nothingTraced: 'This garment remembers no pieces as they were traced. Compare with a version or with a copy instead.',
  noOtherPiece: 'There is no other piece there to compare with.',
  how: 'How it is laid',
  hows: {
    'as-they-lie': 'where both lie',
    corner: 'corner on corner',
    edge: 'edge on edge',
    best: 'best fit',
  },
  howHelp: {
    'as-they-lie': 'Each piece at its own place on its own table.',
    corner: 'One corner on another, without turning.',
    edge: 'The ends of one edge along another.',
    best: 'Moved and turned until the outlines lie as near as they can, never stretched.',
  },
  corner: (piece: string) => `Corner of ${piece}`,
  edge: (piece: string) => `Edge of ${piece}`,
  cornerOf: (before: string, after: string) => `${before} and ${after}`,
  way: 'Walked',
  ways: { same: 'the same way', opposite: 'the other way' },
  mirrored: 'Let the best fit turn it over',
  turned: 'Turn it over',
  seeking: 'Looking for the best fit…',
  stop: 'Stop looking',
  stopped: 'Stopped before a best fit was found.',
  failed: 'The best fit could not be worked out. Try again, or lay the pieces on an edge.',
  again: 'Look again',
  byHand: 'Moved by hand',
  byHandHelp:
    'Drag the other piece, or write how far. With the table in focus the arrow keys move it, and Page Up and Page Down turn it.',
  right: 'To the right',
  down: 'Down',
  turn: 'Turned, degrees',
  layBack: 'Lay it back',
  swap: 'Let them change places',
  swapped: (under: string) => `Now ${under} lies beneath; differences are said of the other.`,
  key: 'What the lines are',
  lines: { under: 'beneath', over: 'on top' },
  more: 'more than beneath',
  less: 'less than beneath',
  now: 'now',
  traced: 'as traced',
  draft: 'draft',
  figures: 'The differences',
  figuresLabel: 'Lengths, girths and area of both, with their difference',
  headings: { what: 'What', difference: 'Differs by' },
  edges: 'Edge by edge, as sewn',
  girths: 'All the way round',
  widths: 'One piece, across',
  area: 'Area',
  level: (level: Level) => fitWords.levelOf(level),
  atDepth: (depth: string) => `${depth} below the waist`,
  atWaist: 'at the waist',
  noEdge: 'none',
  notReached: 'ends above',
  signed,
  areaIn: (squareMm: number, shownIn: 'in' | 'cm') =>
    (shownIn === 'in' ? `${(squareMm / 645.16).toFixed(1)} sq in` : `${(squareMm / 100).toFixed(1)} cm²`).replace(
      '-',
      '−',
    ),
  largest: 'Largest gap',
  out: 'Furthest out',
  in: 'Furthest in',
  nowhere: 'nowhere',
  gapsOf: (out: string | undefined, into: string | undefined) =>
    [out && `out ${out}`, into && `in ${into}`].filter(Boolean).join(', '),
  place: (edge: string, along: string, from: string) => `on ${edge}, ${along} from ${from}`,
  atCorner: (edge: string, from: string) => `where ${edge} meets ${from}`,
  inWords: 'In words',
  lies: (over: string, under: string) => `On top: ${over}. Beneath: ${under}.`,
  same: (least: string) => `They lie on one another: no gap is as wide as ${least}.`,
  largestAt: (gap: string, place: string, side: 'out' | 'in') =>
    `The largest gap is ${gap}, ${place}; there the upper piece lies ${side === 'out' ? 'outside' : 'inside'} the lower.`,
  otherSide: (gap: string, place: string, side: 'out' | 'in') =>
    `On the other side it lies ${gap} ${side === 'out' ? 'outside' : 'inside'} at most, ${place}.`,
  noOtherSide: (side: 'out' | 'in') => `It lies nowhere ${side === 'out' ? 'outside' : 'inside'}.`,
  edgesDiffer: (list: string) => `Edges that differ: ${list}.`,
  edgesAgree: 'All edges are of one length.',
  girthsDiffer: (list: string) => `All the way round: ${list}.`,
  said: (gap: string) => `Largest gap ${gap}.`,
  guide: 'Lay it here as a guide',
  guideHelp: 'A guide lies under the draft in every room and is neither cut nor printed.',
  guideLabel: 'laid a guide under the draft',
  guideName: (piece: string, from: string) => `${piece}, ${from}`,
  guideDone: 'Laid on the table as a guide. Undo takes it away.',
  edgeOr: draftWords.edgeOr,
  /** An edge without a name, by what it is. */
  roles: { fold: 'fold', waist: 'waist', hem: 'hem' } as Partial<Record<EdgeRole, string>>,
} as const;
