import type { Level } from '../../core/garment/garment';
import type { Cut, Edge, Piece } from '../../core/garment/piece';
import { draftWords } from './draft';
import { fitWords } from './fit';

/** Words of the Reshape room. */
export const reshapeWords = {
  tableLabel: 'The pieces, and over them the change you are trying. Press a piece, then an edge of it, to choose it.',
  nothingChosen: 'Press a piece on the table, then an edge of it, and choose a change.',
  isChosen: (what: string) => `Chosen: ${what}`,
  groups: {
    length: 'Length',
    width: 'Width and fullness',
    darts: 'Darts',
    waist: 'Waist and hem',
    pieces: 'New pieces',
  },
  changes: {
    lengthen: {
      name: 'Lengthen or shorten',
      help: 'Cut across the piece and part it, or fold it; or at the hem. Every piece round the body can go along.',
    },
    'take-in': {
      name: 'Take in or let out',
      help: 'Along an edge or a part of it, fading to nothing; on both edges of the seam if you like.',
    },
    slash: {
      name: 'Slash and spread',
      help: 'Cut from one edge to another, hinge, and open it for flare, or lap it to lose width.',
    },
    fullness: { name: 'Gathers and pleats', help: 'Width that is sewn up smaller, with its marks and the sums.' },
    'new-dart': { name: 'Add a dart', help: 'At a place on an edge, with its width and its length.' },
    'move-dart': { name: 'Move a dart', help: 'Round the piece about its point; its angle is kept.' },
    'dart-away': {
      name: 'Turn a dart into something else',
      help: 'Close it into the hem as flare, make a gore seam of it, or leave it as ease.',
    },
    'split-dart': { name: 'Split a dart', help: 'Into two or more that take up as much together.' },
    waist: {
      name: 'Curve the waist',
      help: 'From the cone of the body, from the side seam, by its rise and dip, or back to straight.',
    },
    hang: {
      name: 'Level the waist and hem',
      help: 'From the lengths to the floor, or from the gaps you read under a hem that has hung.',
    },
    seam: {
      name: 'True a seam',
      help: 'Make two edges agree by moving one, the other or both, and match their notches.',
    },
    'sides-apart': {
      name: 'Left and right apart',
      help: 'One piece for each side of a body whose sides differ, or the two made one again.',
    },
    base: {
      name: 'Draft a base pattern',
      help: 'From the measures: a skirt, gores, a circle, drawers, a bodice, a slip. As pieces, or to lay under a draft.',
    },
    band: {
      name: 'Shaped band',
      help: 'A waistband that lies to the body, from the measures or from the pattern itself.',
    },
    strip: {
      name: 'Strip, facing or binding',
      help: 'For a placket, a waist or an edge, as long as what it finishes.',
    },
  },
  take: 'Take it',
  leave: 'Leave it as it was',
  taken: (label: string) => `Done: ${label}. Undo takes it back.`,
  checks: 'All checks, after this change',
  nothingNew: 'Nothing new would be open after this.',
  wouldBe: (sentence: string) => `After this: ${sentence}`,
  wouldSettle: (sentence: string) => `This settles: ${sentence}`,
  andMore: (count: number) => (count === 1 ? 'and one more edge' : `and ${count} more edges`),
  fromTo: (was: string, is: string) => `${was} → ${is}`,
  round: (level: Level) => `Round the ${(level.name ?? fitWords.girth[level.girth]).toLowerCase()}`,
  edgeOf: ({ name, edges }: Piece, edge: Edge) =>
    `${name}: ${draftWords.edgeOr(edge.name, edges.findIndex(({ id }) => id === edge.id) + 1)}`,
  newPiece: (name: string) => `New piece: ${name}`,
  cut: (cut: Cut) => draftWords.cutWords(cut.count, cut.how),
  noPieces: 'There is no piece yet. Trace one in the Draft room, or draft a base pattern here.',
  pieceFirst: 'Press a piece on the table first.',
  edgeFirst: 'Press a piece on the table, then the edge that is to change.',
  cornerNumber: (number: number) => `corner ${number}`,
  noDart: 'There is no dart yet. Add one first.',
  dart: 'Dart',
  dartOn: (edge: string, number: number) => (number === 1 ? edge : `${edge}, dart ${number}`),
  edge: 'Edge',
  piece: 'Piece',
  moveDart: {
    to: 'To the edge',
    along: 'Along that edge',
    width: 'Width at its mouth',
    label: 'move a dart',
    refused: {
      'no-dart': 'That dart is no longer there.',
      'no-such-place': 'That place is not on the edge.',
      'in-its-mouth': 'That place lies in the mouth of the dart itself. Choose one beside it.',
      crosses: 'There the outline would cross itself. Choose another place.',
    },
  },
  takeIn: {
    way: 'Which way',
    ways: { in: 'take in', out: 'let out' },
    from: 'to nothing before, at',
    to: 'to nothing after, at',
    fadeHint: 'It fades to nothing at both ends of the edge, or sooner where you say so:',
    pin: (number: number) => `Pin ${number}: along the edge`,
    by: 'how much there',
    add: 'Add a pin',
    drop: 'Take the last pin away',
    edgeIs: (length: string, start: string) => `The edge is ${length} long, counted from ${start}.`,
    label: (way: 'in' | 'out', edge: string) => (way === 'in' ? `take in ${edge}` : `let out ${edge}`),
    refused: {
      'no-edge': 'That edge is no longer there. Press another.',
      'no-pins': 'Say at least once how much, at a place on the edge.',
      'along-the-neighbour':
        'At its very end the edge runs on into its neighbour, so the corner cannot move. Pin a little before the end.',
      crosses: 'With so much the outline would cross itself. Take less.',
    },
  },
} as const;
