import type { RationKnown, ReadyMade } from '../../../core/cloth/budget-presets';
import { EIGHTH_OF_YARD, TWENTIETH_OF_METRE, toBuy } from '../../../core/cloth/cloth-sums';
import type { ClothRefusal } from '../../../core/cloth/cloth-task';
import type { LayFault } from '../../../core/cloth/lay-check';
import type { LaidGrain } from '../../../core/cloth/piece-to-lay';
import type { UsualWidth } from '../../../core/cloth/usual-widths';
import type { WaysOut } from '../../../core/cloth/ways-out';
import type { ClothPriced, ClothStrip, GarmentCloth } from '../../../core/garment/garment-cloth';
import { inches, type ShownIn } from '../../../core/units/inch';
import { writeYards } from '../../../core/units/write-yards';
import { roundLength, writeLength, writeMetres } from '../written';
import { clothNames } from './cloth-names';

const grains: Readonly<Record<LaidGrain, string>> = { straight: 'straight', cross: 'cross', bias: 'bias' };
const lettered = (names: readonly string[]) =>
  names.length < 2 ? (names[0] ?? '') : `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`;

/** So much cloth as it is asked for: `1 3/4 yd, 1.60 m`, each up to what a draper cuts; her own unit first. */
function bought(length: number, shownIn: ShownIn): string {
  const yards = writeYards(toBuy(length, EIGHTH_OF_YARD));
  const metres = writeMetres(toBuy(length, TWENTIETH_OF_METRE));
  return shownIn === 'in' ? `${yards}, ${metres}` : `${metres}, ${yards}`;
}

/** Words of the Cloth room. */
export const clothWords = {
  noPiecesTitle: 'Nothing to lay yet',
  noPieces:
    'Here the pieces are laid on the cloth, to know how much of it the garment takes, straight or on the bias. Trace a piece in the Draft room first.',
  toDraft: 'Go to the Draft room',
  tableLabel:
    'The cloth with the pieces laid on it. Page Up and Page Down choose a piece; arrow keys move it, with Shift further; T turns it, P pins it; Escape puts it down.',
  labels: {
    lay: 'lay the pieces',
    move: 'move a piece on the cloth',
    turn: 'turn a piece on the cloth',
    pin: 'pin a piece on the cloth',
    unpin: 'take the pin out of a piece',
    unpinAll: 'take all pins out of the lay',
    add: 'add a cloth',
    change: 'change the cloth',
    remove: 'take a cloth away',
    strip: 'change a strip',
    join: 'join a piece',
    unjoin: 'cut a piece whole again',
    allowances: 'give the usual allowances',
    grain: 'lay with another grain',
    width: 'lay on another width',
    price: 'change what the cloth costs',
  },

  // A first cloth
  whichTitle: 'What is it cut from?',
  which: 'Choose how wide the cloth is, with its selvedges. All of it can be changed afterwards.',
  remnant: 'A remnant, or a garment taken apart',
  firstName: 'Cloth',
  liningName: 'Lining',
  interfacingName: 'Interfacing',
  remnantName: 'Remnant',

  // The strip over the cloth
  strip: 'The lay',
  layIt: 'Lay the pieces',
  layAgain: 'Lay again',
  layRest: 'Lay the rest round the pins',
  stop: 'Stop',
  laying: (share: number) => `Laying, ${Math.round(100 * share)} % of the time gone`,
  takes: 'Takes',
  bought,
  toBuyOf: (bought: string) => `: buy ${bought}`,
  exactly: (length: number, shownIn: ShownIn) => writeLength(length, { shownIn, step: 'eighth' }),
  notLaid: 'Not laid yet',
  fits: (over: number, atHand: number, shownIn: ShownIn) =>
    `Fits in the ${said(atHand, shownIn)} you have: yes, with ${writeLength(over, { shownIn, step: 'eighth' })} over.`,
  short: (by: number, atHand: number, shownIn: ShownIn) =>
    `Fits in the ${said(atHand, shownIn)} you have: no, ${writeLength(by, { shownIn, step: 'eighth' })} short.`,
  onRemnant: 'It all goes on the remnant.',
  offRemnant: (by: number, shownIn: ShownIn) =>
    `It does not all go on the remnant: ${writeLength(by, { shownIn, step: 'eighth' })} lie beyond its end.`,
  used: (share: number) => `${(100 * share).toFixed(1)} % used`,
  faults: (count: number) => (count === 1 ? '1 fault in the lay' : `${count} faults in the lay`),
  noFaults: 'No overlaps',
  stale: (what: string) => `${what} changed since this was laid. Lay again before you go by it.`,
  staleCloth: 'The cloth',
  lettered,
  laid: (length: number, shownIn: ShownIn, shortest: boolean) =>
    `Laid in ${writeLength(length, { shownIn, step: 'eighth' })}${shortest ? ', and no lay can be shorter' : ''}.`,
  broken: 'Laying failed. The last lay is kept; try again.',
  refusedIn: {
    'not-across': (names: readonly string[]) =>
      `${lettered(names)} cannot go across the cloth where the stripes must match. Give a smaller repeat across, or wider cloth.`,
    'no-room-on-fold': (names: readonly string[]) =>
      `There is no room on the fold for ${lettered(names)}. Open the fold pieces out, or fold the cloth lengthwise.`,
  },

  // The piece in hand
  inHand: 'In hand',
  turn: 'Turn',
  pin: 'Pin it here',
  unpin: 'Take the pin out',
  unpinAll: 'Take all pins out',
  putDown: 'Put it down',
  way: (degrees: number, over: boolean) =>
    `${over ? 'turned over, ' : ''}${degrees === 0 ? 'as drawn' : `turned by ${Math.round(degrees * 10) / 10}°`}`,
  pieces: 'Pieces on the cloth',
  pinned: 'pinned',
  onFold: 'on the fold',
  copyOf: (copy: number, of: number) => (of > 1 ? `${copy + 1} of ${of}` : ''),
  place: (x: string, y: string, edge: 'fold' | 'selvedge') => `${x} from the cut end, ${y} from the ${edge}`,

  // The cloth
  cloth: 'The cloth',
  cloths: 'Which cloth',
  another: 'Another cloth',
  addLining: 'Lining',
  addInterfacing: 'Interfacing',
  addRemnant: 'Remnant',
  addCloth: 'Cloth',
  name: 'Name',
  width: 'Width, selvedges counted',
  usual: 'Usual widths',
  usualNone: 'choose from a list',
  usualWidth: ({ width }: UsualWidth) =>
    `${writeLength(width, { shownIn: 'in' })}, ${writeLength(width, { shownIn: 'cm' })}`,
  usualWhen: {
    'linen-1770': 'linen of the 1770s',
    'before-1915': 'often before 1915',
    'flannel-1910': 'petticoat flannel, 1910s',
    'cotton-1910': 'household cotton, 1910s',
    'wool-1910': 'wool and tweed, 1910s',
    '1920': 'dress goods of the 1920s, 24 to 32 in (61 to 81 cm)',
    '1930': '1930s to 1950s',
    '1960': 'from the early 1960s',
    today: 'today',
  } satisfies Readonly<Record<UsualWidth['when'], string>>,
  selvedge: 'Selvedge lost, each side',
  atHand: 'Length at hand',
  atHandHint: (mm: number | undefined, shownIn: ShownIn) =>
    mm === undefined ? 'Leave empty to be told.' : said(mm, shownIn),
  folded: 'It lies',
  foldedWays: { lengthwise: 'folded lengthwise', open: 'opened out', crosswise: 'folded crosswise' },
  foldedHelp: {
    lengthwise: 'Selvedge on selvedge: each piece is cut twice, and fold pieces lie on the fold.',
    open: 'One layer: both hands of a pair are laid, and fold pieces are opened out.',
    crosswise: 'Cut end on cut end, for wide pieces. Not for cloth with a nap.',
  },
  nap: 'Nap or one-way figure',
  napHelp: 'All tops the same way.',
  more: 'Stripes, flaws, shrinking, odd shapes',
  repeatAlong: 'Repeat along the cloth',
  repeatAcross: 'Repeat across the cloth',
  repeatHint:
    'Leave empty for plain cloth. Every piece is then laid with the far end of its grain on the same place of the repeat.',
  shrinksAlong: 'Shrinks in length, in %',
  shrinksAcross: 'Shrinks in width, in %',
  shrinkHint: (shownIn: ShownIn) =>
    `The lay is made on the cloth as it is after washing, and what to buy is counted before it. Wash and measure a square of ${roundLength(shownIn, 20, 50)} to know.`,
  flaws: 'Flaws to keep clear of',
  flaw: (i: number) => `Flaw ${i + 1}`,
  addFlaw: 'Add a flaw by its size',
  drawFlaw: 'Draw a flaw on the cloth',
  fromEnd: 'From the cut end',
  fromSelvedge: 'From the selvedge',
  long: 'Length of it',
  wide: 'Width of it',
  takeAway: (what: string) => `Take ${what} away`,
  shape: 'An odd shape',
  shapeHelp: 'A remnant or a garment taken apart, laid as one layer. Its grain runs from left to right.',
  shapeStart: 'Give its corners',
  shapeDraw: 'Draw it on the cloth',
  shapeStraight: 'Straight cloth again',
  corner: (i: number) => `Corner ${i + 1}`,
  along: 'Along',
  across: 'Across',
  addCorner: 'One more corner',
  shapeWrong: 'These corners do not make a shape: its sides cross, or it has no width. Move a corner.',
  drawingHelp: {
    flaw: 'Press on the cloth for each corner of the flaw, then Done.',
    shape: 'Press on the table for each corner of the shape, going round, then Done.',
  },
  corners: (count: number) => (count === 1 ? '1 corner' : `${count} corners`),
  done: 'Done',
  notAfterAll: 'Not after all',
  lastBack: 'Take the last back',
  remove: 'Take this cloth away',
  removeAsk: 'The cloth goes, and the lay made on it. Undo brings both back.',
  removeYes: 'Take it away',
  keep: 'Keep it',

  // What is cut from it
  what: 'What is cut from it',
  count: (piece: { readonly how: 'fold' | 'pair' | 'single'; readonly count: number }) =>
    ({
      fold: `${piece.count} on the fold`,
      pair: piece.count === 2 ? 'a pair' : `${piece.count}, in pairs`,
      single: `${piece.count} as drawn`,
    })[piece.how],
  nothingCut: 'No piece is cut from this cloth yet. Choose some below.',
  unnamed: 'Piece without a name',
  aStrip: 'this strip',
  strips: 'Strips',
  stripsHelp: 'Bands, plackets, facings and binding, with their allowances in the size.',
  stripName: 'What it is',
  stripNew: { placket: 'Placket strip', facing: 'Facing strip', binding: 'Bias binding', band: 'Waistband' },
  stripLength: 'Length',
  stripWidth: 'Width as cut',
  stripCount: 'How many',
  stripCut: 'Cut',
  stripCuts: {
    along: 'along the selvedge, torn',
    across: 'across, selvedge to selvedge',
    bias: 'on the true bias',
  } satisfies Readonly<Record<ClothStrip['cut'], string>>,
  stripSaid: ({ length, width, count, cut }: ClothStrip, shownIn: ShownIn) =>
    `${count} of ${writeLength(length, { shownIn })} by ${writeLength(width, { shownIn })}, ${clothWords.stripCuts[cut]}`,
  addStrip: 'Add a strip',

  // How it is laid
  how: 'How it is laid',
  grain: 'Grain along the cloth',
  grains,
  grainsLong: { straight: 'straight: grain with the selvedge', cross: 'cross: grain across', bias: 'true bias: 45°' },
  grainHelp: {
    straight: 'The grain line of each piece runs with the selvedge.',
    cross: 'The grain line runs from selvedge to selvedge.',
    bias: 'The grain line lies at 45°, either way. Fold pieces are opened out.',
  },
  tilt: 'May lie off the grain, degrees each way',
  tiltNone: 'Not at all: every piece lies exactly on its grain.',
  tiltWarning: (degrees: number) =>
    `Up to ${Math.round(degrees * 10) / 10}° off the grain either way. A panel cut off the straight twists round the body when it hangs, and two halves tilted differently hang unlike each other. Keep it for small pieces, facings and linings (common practice).`,
  openedOut: 'Open fold pieces out and cut them single',
  time: 'How long to try',
  times: { '10': '10 seconds', '60': '1 minute', '300': '5 minutes' },
  spare: (names: string) => `Double cloth cuts more than is wanted: ${names} spare.`,
  spareOf: (count: number, name: string) => `${count} of ${name}`,
  joined: (name: string) => `${name} is cut in two and joined.`,
  unjoin: 'Cut it whole',

  // Refusals
  refused: 'These cannot be laid',
  refusal(reason: ClothRefusal, name: string, shownIn: ShownIn): string {
    switch (reason.kind) {
      case 'nap-against-itself':
        return 'Folded crosswise, the nap of one layer runs against the other. Fold it lengthwise, open it out, or cut the two layers apart and turn one.';
      case 'no-width':
        return 'Nothing is left of the width once the selvedges are off. Look at the width and the selvedge.';
      case 'unsure-shape':
        return clothWords.shapeWrong;
      case 'no-cut-line':
        return `${name} has no cut line yet: its allowances run into one another, or an edge lacks one. See to it in the Draft room.`;
      case 'no-grain':
        return `${name} has no grain line, so nobody can say which way it lies. Give it one in the Draft room.`;
      case 'no-fold-edge':
        return `${name} is cut on the fold, but none of its straight edges is a fold. Say which one is in the Draft room.`;
      case 'cannot-open-out':
        return `${name} cannot be opened out at its fold. Look at the fold edge in the Draft room.`;
      case 'too-wide':
        return `${name} takes ${writeLength(reason.needs, { shownIn, step: 'eighth' })} across, and the cloth has ${writeLength(reason.across, { shownIn, step: 'eighth' })} as it lies.`;
    }
  },
  wayAllowances: (seam: string, hem: string) =>
    `Put ${seam} beside every edge that has no allowance yet, ${hem} at hems`,
  wayLeaveOut: 'Leave these out, lay the rest',
  wayOpened: 'Open the cloth out',
  wayGrain: (grain: LaidGrain) => `Lay it on the ${grains[grain]}`,
  wayWidth: (width: number, shownIn: ShownIn) => `Use ${writeLength(width, { shownIn })} cloth`,
  wayJoin: (name: string, at: string) => `Cut ${name} apart ${at} from its edge, along its grain, and join it`,
  wayLengths: (name: string, count: number) => `Cut ${name} in ${count} lengths`,
  noWay: ({ openedOut, grains: others, width }: WaysOut) =>
    !openedOut && others.length === 0 && width === undefined
      ? 'No single change lets everything be laid: a piece has to be cut in two, or the cloth be much wider.'
      : '',

  // Answers
  sums: 'What it comes to',
  needs: 'Length of cloth',
  toBuy: 'To buy',
  usedOf: 'Of the cloth used',
  bound: 'Least there could be, by area',
  beyond: 'Longer than that by',
  percentBeyond: (share: number) => `${(100 * share).toFixed(0)} %`,
  leftOver: 'Left of what you have',
  lacking: 'Lacking',
  version: (number: number) => `Made from version ${number}.`,
  washed: (length: string) => `After washing the lay takes ${length}; the length above is before it.`,
  seekHelp: 'What would make it fit?',
  seeking: 'Trying joins along the grain, and the cloth opened out…',
  helpNone:
    'No single join along the grain makes it fit, nor does the cloth opened out. Use another grain, wider cloth, or a little more of it.',
  helpOpened: (length: string) => `Opened out, without any join, everything goes on ${length}.`,
  helpJoin: (found: {
    readonly name: string;
    readonly at: string;
    readonly from: 'fold' | 'edge';
    readonly wide: string;
    readonly long: string;
    readonly length: string;
    readonly allowance: string;
    readonly opened: boolean;
  }) =>
    `${found.opened ? 'On the cloth opened out: ' : ''}${found.name} cut apart along its grain, ${found.at} from its ${found.from === 'fold' ? 'fold' : 'outermost edge'}. The part joined on is ${found.wide} wide and ${found.long} long, with ${found.allowance} for the seam on both. Everything then goes on ${found.length}.`,
  takeHelp: (isJoin: boolean) => (isJoin ? 'Join it there' : 'Open it out'),

  // Beside one another
  besideGrains: 'Straight, cross and bias',
  besideGrainsHelp: 'Each laid for a few seconds on this cloth as it lies, or opened out where it must be.',
  besideWidths: 'Other widths',
  besideWidthsHelp: 'The same pieces and grain on the usual widths, selvedges as here and flaws left out.',
  setBeside: 'Lay each and compare',
  besideRuns: (share: number) => `Laying, ${Math.round(100 * share)} %`,
  grainHead: 'Grain',
  widthHead: 'Width',
  lengthHead: 'Takes',
  leftHead: 'Left over',
  costHead: 'Costs',
  tooWide: (by: string) => `too narrow by ${by}`,
  cannot: 'cannot be laid',
  lacks: (by: string) => `${by} short`,
  byChart: (mm: number) => `a printed chart says ${writeYards(mm)}`,
  layed: 'as laid',
  take: (what: string) => `Take ${what}`.trim(),
  takeIt: 'Take it',
  ratio: (share: number) => `The bias takes ${share.toFixed(2)} times the straight.`,

  // Budget
  budget: 'Budget',
  priceEach: 'Price',
  priceIn: 'Counted in',
  priceInHint: 'Money, coupons, points: as you call it.',
  per: 'For a',
  pers: { yard: 'yard', metre: 'metre' } satisfies Readonly<Record<ClothPriced['per'], string>>,
  cost: (count: number, of: string) => `${count.toFixed(2).replace(/\.00$/, '')} ${of}`.trim(),
  costs: 'This lay costs',
  costAs: (bought: string) => `for ${bought}`,
  ration: 'Clothing coupons, United Kingdom, 1941',
  rationHelp:
    'Coupons for a yard by its width, to be changed at will. Wool 36 in (91 cm) wide took 3 (The Times, 3 June 1941); other cloth of that width 2, and 44 in (112 cm) wide 2 1/2 (from memory and a booklet of the time); other widths are worked out from these.',
  rationNames: { woollen: 'Woollen cloth', other: 'Other cloth' },
  rationEach: (each: number, known: RationKnown) =>
    `${half(each)} a yard${{ printed: '', remembered: ' (from memory)', estimate: ' (an estimate)' }[known]}`,
  coupons: 'coupons',
  readyMade: 'Ready made it took',
  readyMadeNames: {
    slip: 'petticoat or slip',
    undergarment: 'other undergarment',
    skirt: 'skirt',
    'dress-wool': 'woollen dress',
    'dress-other': 'other dress',
    nightdress: 'nightdress',
    blouse: 'blouse',
    apron: 'apron',
  } satisfies Readonly<Record<ReadyMade['garment'], string>>,
  readyMadeSaid: (woman: number, girl: number) => `${woman}; a girl’s ${girl}`,

  // Bias strips
  bias: 'Bias strips',
  biasHelp: 'For binding cut all in one from a square, or strips cut across the cloth and joined.',
  biasLength: 'Strip wanted',
  biasWidth: 'Cut as wide as',
  biasSquare: 'A square of',
  biasSquareFor: (side: string) => `is enough; cut it ${side}`,
  biasFrom: (side: string, length: string) => `A square of ${side} gives ${length} of it.`,
  biasAcross: (strips: number, joins: number, each: string, cloth: string) =>
    `Cut across this cloth: ${strips} ${strips === 1 ? 'strip' : 'strips'} of ${each}, ${joins} ${joins === 1 ? 'join' : 'joins'}, from ${cloth} of it.`,
  biasNone: 'On this cloth a strip would be shorter than its own joins.',
  biasSide: 'Side of a square at hand',
  biasAdd: 'Put this strip into the lay',
  biasExtra: 'Take 10 to 20 % more for corners and joins (common practice).',

  // Print
  print: 'Print the lay',
  printHelp: 'A plan on one page, and a sheet to scale that can be measured with a ruler.',
  printPlan: 'Make the plan (PDF)',
  printScale: (scale: string) => `Make the sheet to scale, ${scale} (PDF)`,
  printFirst: 'Lay the pieces first.',
  printMaking: 'Making the PDF…',
  printFailed: 'The PDF could not be made. Try again.',
  printed: (pages: number) => (pages === 1 ? 'Made: 1 page.' : `Made: ${pages} pages.`),
  scaleOf: (scale: number) => `1 : ${scale}`,
  paperTitle: (garment: string, cloth: string, scale: string | undefined) =>
    `${garment}: lay on ${cloth}${scale === undefined ? '' : `, ${scale}`}`,
  paperTakes: (length: string, buy: string, width: string, grain: string) =>
    `Takes ${length} (${buy}) of cloth ${width} wide, laid on the ${grain}.`,
  paperFoot: (garment: string, cloth: string) => `${garment}, ${cloth}`,
  ruleAt: (count: number, shownIn: ShownIn, isFirst: boolean) => (isFirst ? `${count} ${shownIn}` : String(count)),
  scaleCheck: (full: string) => `This line is 4 in (10.16 cm) on paper, and ${full} of the cloth. Measure it first.`,
  filePlan: 'lay plan',
  fileScale: 'lay to scale',

  fault(fault: LayFault, name: (id: string) => string, shownIn: ShownIn): string {
    const length = (mm: number) => writeLength(mm, { shownIn });
    switch (fault.kind) {
      case 'overlap':
        return `${name(fault.ids[0])} lies over ${name(fault.ids[1])}.`;
      case 'on-kept':
        return `${name(fault.id)} lies on a flaw, or off the edge of the shape.`;
      case 'off-cloth':
        return `${name(fault.id)} lies ${length(fault.by)} off the cloth.`;
      case 'off-fold':
        return `${name(fault.id)} lies ${length(fault.by)} off the fold.`;
      case 'unmatched':
        return `${name(fault.id)} is ${length(fault.by)} off the repeat.`;
      case 'no-such-stance':
        return `${name(fault.id)} lies in a way it may not.`;
      case 'count':
        return `${name(fault.id)}: ${fault.laid} laid of ${fault.wanted}.`;
    }
  },
  canvas: {
    fold: 'fold',
    selvedge: 'selvedge',
    cutEnd: 'cut end',
    endOfCloth: (length: string) => `end of the ${length}`,
    layEnds: (length: string) => length,
  },
  clothName: ({ name }: Pick<GarmentCloth, 'name'>) => clothNames.cloth(name),
} as const;

/** A length of cloth as it lies at hand: in yards where she thinks in inches, and it is a whole eighth. */
function said(mm: number, shownIn: ShownIn): string {
  if (shownIn === 'cm') return writeMetres(mm);
  const eighths = mm / EIGHTH_OF_YARD;
  const isEven = mm >= inches(18) && Math.abs(eighths - Math.round(eighths)) < 0.01;
  return isEven ? writeYards(mm) : writeLength(mm, { shownIn, step: 'eighth' });
}

function half(count: number): string {
  const whole = Math.floor(count);
  return count === whole ? String(whole) : `${whole === 0 ? '' : `${whole} `}1/2`;
}
