import type { EdgeRole, Piece } from '../../core/garment/piece';
import { draftWords } from './draft';

/** Words of the Seams room. */
export const seamsWords = {
  tableLabel:
    'The pieces. Press an edge and then the edge it is sewn to; with a seam in hand, drag along it to walk the second piece along the first.',
  noPiecesTitle: 'Nothing to sew yet',
  noPieces:
    'Here edges are paired as they are sewn, and one is walked along the other. Trace a piece in the Draft room first.',
  toDraft: 'Go to the Draft room',
  noEdges:
    'No edge is called a seam or a waist yet. Say in the Draft room what each edge is, and pairs are proposed here. Any two edges can be paired below all the same.',
  edgeOf: ({ name, edges }: Piece, edgeId: string) => {
    const index = edges.findIndex(({ id }) => id === edgeId);
    return `${name || 'A piece'}: ${draftWords.edgeOr(edges[index]?.name ?? '', index + 1)}`;
  },
  goneEdge: 'an edge that is gone',
  times: (times: number) => ` (${times} times)`,
  andMore: (first: string, more: number) => `${first} and ${more} more`,
  both: (one: string, other: string) => `${one} to ${other}`,
  mirrored: (edge: string) => `${edge} to its mirror image`,

  seams: 'Seams',
  noSeams: 'No seam is paired yet.',
  worstFirst: 'What differs most from what is meant stands first.',
  lengths: (one: string, other: string) => `${one} and ${other}`,
  differs: {
    agree: 'agree',
    agreeWithin: (by: string) => `agree within ${by}`,
    agreeEased: (longer: string, by: string) => `agree, with ${longer} eased in by ${by}`,
    agreeLap: (by: string) => `agree, with a lap of ${by}`,
    longerThan: (longer: string, by: string, shorter: string) => `${longer} is ${by} longer than ${shorter}`,
    equal: 'are equally long',
    beyond: (said: string, by: string, what: 'ease' | 'lap') =>
      `${said}, ${by} ${what === 'lap' ? 'beyond its lap' : 'beyond its ease'}`,
    short: (said: string, by: string, what: 'ease' | 'lap') =>
      `${said}, ${by} short of the ${what === 'lap' ? 'lap' : 'ease'} meant`,
    mirror: 'agrees with itself',
    gone: 'one of its edges is no longer there',
    notchesOff: (count: number) => (count === 1 ? '1 notch misses' : `${count} notches miss`),
  },

  proposed: 'Proposed pairs',
  by: {
    name: 'by their name',
    length: 'by their length',
    band: 'a waist and its band',
    'own-mirror': 'cut as a mirrored pair',
  },
  pairIt: 'Pair it',
  pairThis: (seam: string) => `Pair ${seam}`,
  pairWithLap: (by: string) => `Pair it, with a lap of ${by}`,
  pairWithEase: (by: string) => `Pair it, easing ${by} in`,
  pairAll: (count: number) => `Pair all ${count}`,

  pair: 'Pair two edges',
  pairHelp: 'Press one edge on the table and then the edge it is sewn to, or choose them here.',
  firstEdge: 'This edge',
  secondEdge: 'is sewn to',
  notChosen: 'not chosen yet',
  pairThem: 'Pair them',
  inSeam: (edge: string) => `${edge} is in a seam already.`,
  nowSecond: (edge: string) => `${edge}. Now press the edge it is sewn to.`,
  bothPicked: (one: string, other: string) => `${one} and ${other}. Pair them in the notebook.`,
  loose: 'Sewn to nothing yet',
  pickLoose: (edge: string) => `Pair ${edge}`,
  first: '1st',
  second: '2nd',

  allSeams: 'All seams',
  name: 'Name of the seam',
  nameHint: 'Empty: the names of its edges.',
  side: { one: 'First side', other: 'Second side' },
  drop: (edge: string) => `Take ${edge} out of this side`,
  addEdge: { one: 'Add an edge to the first side', other: 'Add an edge to the second side' },
  addNone: 'no more',
  comesTimes: (edge: string) => `How often ${edge} comes`,
  easedInBy: (side: string) => `${side} is eased in by`,
  lapOf: 'Lap of the band',
  lapHint: 'How much longer the band is than the waist. Where the waist is eased in as well, the lap less that ease.',
  way: 'They run round their pieces',
  ways: { opposite: 'opposite ways', same: 'the same way' },
  unpair: 'Unpair',
  theSeam: 'This seam',

  walk: (seam: string) => `Walking ${seam}`,
  stripLabel: (one: string, other: string) => `${one} and ${other} pulled straight, one over the other, to scale`,
  slider: 'How far the walk has come',
  contact: (one: string, at: string, other: string, there: string) => `${at} along ${one}, ${there} along ${other}`,
  contactShort: (at: string, there: string) => `${at} meets ${there}`,
  back: (step: string) => `${step} back`,
  on: (step: string) => `${step} on`,
  start: 'start',
  end: 'end',
  walked: 'What walking shows',
  whole: 'Lengths of the whole seam',
  noPartings: 'They lie on one another all the way.',
  parts: (from: string, to: string, longer: string, by: string) =>
    `From ${from} to ${to} they part: ${longer} is ${by} too long there.`,
  partsShort: (by: string, way: 'long' | 'short') => `${by} too ${way}`,
  notchOff: (number: number, by: string, way: 'beyond' | 'before', other: string) =>
    `Notch ${number} lies ${by} ${way} its partner on ${other}.`,
  notchAlone: (edge: string, at: string) => `A notch of ${edge} at ${at} has no partner.`,
  allNotches: (count: number) => (count === 1 ? 'The notch meets its partner.' : `All ${count} notches meet.`),
  noNotches: 'There are no notches on it.',
  notchTag: (number: number | undefined, off: string | undefined) =>
    number === undefined ? 'alone' : off === undefined ? `${number}` : `${number}: ${off} off`,
  ownMirror: 'Both sides are one edge and its mirror image, so they always agree.',

  agree: 'Make them agree',
  trials: { lengths: 'True the lengths', notches: 'Match the notches', corners: 'True the corners' },
  trialHelp: {
    lengths: 'One edge gives, or both, until only the ease that is meant is left.',
    notches: 'The notches of one side are put across to where they meet the other.',
    corners: 'The lines beside the seam are bent near it, so that they run on over it.',
  },
  move: 'What gives',
  moves: { both: 'both, by half' },
  where: 'Where',
  wheres: {
    'at-start': (by: string) => `at the start${by}`,
    'at-end': (by: string) => `at the end${by}`,
    spread: 'spread over all of it',
  },
  beside: (role: EdgeRole | undefined) => {
    const said = role && besideWords[role];
    return said ? ` (${said})` : '';
  },
  from: 'Take the notches of',
  whichEnd: 'At',
  ends: {
    'at-start': (by: string) => `its start${by}`,
    'at-end': (by: string) => `its end${by}`,
  },
  how: 'How',
  hows: { square: 'both square to the seam', blend: 'run on smoothly' },
  angles: (one: string, other: string, sum: string) => `${one} + ${other} = ${sum}`,
  anglesNow: 'The corners now',
  anglesThen: 'and after',
  straightOn: '180° together is a line that runs on smoothly.',
  changesNothing: 'It is so already; nothing would change.',
  refused: {
    'no-seam': 'One of its edges is no longer there. Unpair it, and pair what is there.',
    'own-mirror': 'Both sides are one edge and its mirror image, so they always agree.',
    'no-edge': 'One of its edges is no longer there. Unpair it, and pair what is there.',
    'nothing-left': 'So little of the edge would be left that it could not be sewn. Let the other side give.',
    'marks-in-the-way': 'A dart, a notch, pleats or gathers lie on what would go. Choose the other end, or spread it.',
    'on-a-fold': 'The corner there lies on a fold and must stay. Choose the other end, or spread it.',
    'not-met': 'It cannot be met in this way. Try another end, or spread it.',
    crosses: 'The outline would cross itself. Try another way.',
    ruled:
      'The seam itself is drawn square to, or in line with, the line beside it. Free its end in the Draft room first.',
    'too-short': 'The line beside the seam is too short to be bent.',
  },
  steps: {
    pair: 'pair edges',
    pairAll: 'pair all proposed',
    unpair: 'unpair a seam',
    name: 'name of a seam',
    ease: 'ease of a seam',
    way: 'way of a seam',
    side: 'edges of a seam',
    lengths: 'true a seam',
    notches: 'match notches',
    corners: 'true the corners of a seam',
  },
  paired: (seam: string) => `Paired: ${seam}.`,
  pairedAll: (count: number) => (count === 1 ? '1 seam paired.' : `${count} seams paired.`),
  unpaired: (seam: string) => `${seam} is no seam any more; its edges stay.`,
} as const;

/** How an end of a seam is told from the other by what is drawn beside it. */
const besideWords: Readonly<Partial<Record<EdgeRole, string>>> = {
  waist: 'at the waist',
  hem: 'at the hem',
  opening: 'at the opening',
  fold: 'at the fold',
  finished: 'at the finished edge',
};
