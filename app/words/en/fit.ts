import type { EasedCloth, EasedGarment } from '../../../core/fit/ease';
import type { Level } from '../../../core/garment/garment';
import type { GirthName } from '../../../core/garment/measure';
import type { ShownIn } from '../../../core/units/inch';

const girth = {
  waist: 'Waist',
  highHip: 'High hip',
  hip: 'Hip',
  bust: 'Bust',
  chest: 'Chest',
  underbust: 'Underbust',
  neck: 'Neck',
  upperArm: 'Upper arm',
  thigh: 'Thigh',
  knee: 'Knee',
} satisfies Record<GirthName, string>;

const washington = 'Central Washington University, costume text, chapter 16, “Ease in clothing”';

/** Where the eases of a garment of straight-cut cloth are from. */
const easeSources: Readonly<Record<EasedGarment, string>> = {
  skirt: `Waist and hip: ${washington}. High hip: common practice, half of the hip.`,
  'period-skirt':
    'Burton, School Sewing Based on Home Problems; The Perfect Dressmaking System (1914); Butterick, The New Dressmaker (1921): none at the waist, and the hip is itself measured easily.',
  underskirt: 'Common practice. A waist that is gathered or drawn up wants none.',
  slip: 'Common practice.',
  bodice: `Bust, waist and hip: ${washington}. Chest: common practice.`,
  dress: `Bust, waist and hip: ${washington}. Chest and high hip: common practice.`,
};

/** Words of the Fit room. */
export const fitWords = {
  roundTheBody: 'Round the body',
  noRing: 'Say which pieces together go once round the body, and they are measured against it at every level.',
  propose: 'Take every piece that has a waist',
  ringName: 'Round the body',
  ringLabel: 'pieces round the body',
  easeLabel: 'ease',
  unnamedPiece: 'Piece without a name',
  tableLabel: 'The pieces with the levels of the body drawn on them',
  notMeasured: (level: string, field: string) => `${level}: the field “${field}” of the Wearer room is still empty.`,
  roundHelp:
    'Tick the pieces that together go once round the body, and say how many drawn widths of each that is. A piece on the fold counts twice.',
  times: 'Drawn widths',
  timesFor: (piece: string) => `Drawn widths of ${piece}`,
  hangsFrom: 'Measured from another edge than the waist',
  hangsFromOf: (piece: string) => `Measured from another edge than the waist: ${piece}`,
  hangsFromHelp:
    'For what begins below or above the waist: a skirt under its band, a flounce, a slip that hangs from its upper edge.',
  hangsEdge: 'Its levels are measured from',
  theWaist: 'its waist, as it lies on the body',
  edgeNumber: (number: number) => `edge ${number}`,
  hangsWhere: 'That edge lies',
  hangsDepth: 'How far from the waist that edge lies',
  hangsLabel: 'where a piece is measured from',
  noPiecesTitle: 'Nothing to fit yet',
  noPieces:
    'Here the pieces are held against the body, level by level. Trace one in the Draft room first, and measure the wearer.',
  toDraft: 'Go to the Draft room',
  levels: 'Level by level',
  girth,
  /** What she calls a level, or the girth it stands for. */
  levelOf: (level: Level): string => level.name ?? girth[level.girth],
  atDepth: (depth: string) => `${depth} down`,
  atHeight: (height: string) => `${height} above the waist`,
  bodyTaped: 'Body, taped at this level',
  side: { left: 'Her left half', right: 'Her right half' },
  sideIs: (pieces: string, body: string) => `${pieces} for ${body},`,
  sidesTogether: (left: string, right: string) =>
    `Her left half is ${left}, her right half ${right}. No piece is drafted for one side only, so the two are looked at together.`,
  noneHere: 'None of these pieces reaches this level.',
  lapLeftOut: (lap: string) => `A lap of ${lap} lies double and is not counted.`,
  noLevels: 'There is no level yet at which the pieces are held against the body. Add one.',
  addLevel: 'Add a level',
  addThisLevel: 'Add this level',
  levelAddedLabel: 'level added',
  changeLevel: (level: string) => `${level}: where and how it is measured`,
  levelName: 'Name of the level',
  levelNameHint: 'Left empty, it goes by its girth.',
  levelLabel: 'level',
  levelRemovedLabel: 'level removed',
  removeLevel: 'Remove this level',
  removeLevelOf: (level: string) => `Remove this level: ${level}`,
  levelRemoved: (level: string) => `The level ${level} is removed. Undo brings it back.`,
  standsFor: 'The girth it stands for',
  bodyHere: 'Body at this very level',
  bodyHereHint: 'Where the tape went round just here. Left empty, the girth it stands for is taken.',
  place: 'Where it lies',
  sides: { below: 'so far below the waist', above: 'so far above the waist' },
  asFarAs: (measure: string) => `by the measure: ${measure}`,
  depth: 'How far from the waist',
  depthFirst: 'Write how far from the waist the level lies.',
  easeCard: 'Usual ease',
  easeHelp:
    'Room beyond the body, all the way round, for cloth that does not stretch. What you write at a level goes before it.',
  easedKind: 'The garment',
  easedKinds: {
    skirt: 'A skirt',
    'period-skirt': 'A skirt of the 1910s or 1920s',
    underskirt: 'An underskirt or petticoat',
    slip: 'A slip',
    bodice: 'A bodice',
    dress: 'A dress',
  } satisfies Record<EasedGarment, string>,
  easedCloth: 'Its cloth is cut',
  easedCloths: { straight: 'on the straight grain', bias: 'on the bias' } satisfies Record<EasedCloth, string>,
  easeRange: (low: string, high: string, usual: string) => `${low} to ${high}, usual ${usual}`,
  easeSource: (kind: EasedGarment, cloth: EasedCloth) =>
    cloth === 'bias' && kind !== 'period-skirt'
      ? 'Common practice: bias cloth gives of itself, so it is cut closer before it has hung.'
      : easeSources[kind],
  nothingUsual: 'nothing usual; yours stays',
  takeEases: 'Take these',
  easesLabel: 'usual ease',
  easesTaken: (at: string, others: string) =>
    others === ''
      ? 'The usual ease is written at every level.'
      : `The usual ease is written at ${at}. There is none for ${others}: what stands there stays.`,
  easesWritten: (at: string, others: string) =>
    others === ''
      ? 'The ease wanted at every level is the usual one.'
      : `The usual ease stands at ${at}; there is none for ${others}.`,
  wearing: 'Getting it on, and walking',
  narrowest: 'Narrowest, all round',
  shoulders: 'Her shoulders, about',
  hipToPass: 'Her hip',
  casing: 'Drawn-up waist, opened wide',
  opening: 'Opening',
  openingOf: (piece: string, edge: string | undefined) => `Opening: ${edge ? `${piece}, ${edge}` : piece}`,
  noOpening: 'none yet',
  openingNeeded: 'It must be, for the hip to pass',
  whichSeam: 'Which seam',
  openTo: 'Open from the waist down to',
  leaveOpen: 'Leave it open',
  leaveOpenHelp:
    'It is drawn on every piece cut from this drawing. One open seam is enough; sew the others all the way.',
  leaveOpenLabel: 'opening',
  leftOpen: (depth: string) => `The uppermost ${depth} of the seam are left open, on both sides of it.`,
  hemRound: 'Hem, all round',
  beyondHip: 'Hem beyond the hip',
  walkingHelp: (least: string, easy: string) =>
    `To walk easily a closed hem wants ${least} to ${easy} beyond the hip, or a slit or pleat (common practice).`,
  outerCard: 'Worn over it',
  outerHelp: 'Lengths of the garment over this one, from the waist to its hem. Leave empty what you do not know.',
  outerAt: { front: 'Its length at the front', side: 'Its length at the side', back: 'Its length at the back' },
  outerLabel: 'garment worn over it',
  ownLength: (own: string) => `This one is ${own} long there.`,
  ownAgainst: (own: string, most: string) => `This one is ${own} long there, and may be ${most}.`,
  shorterBy: 'This one stays shorter by',
  shorterHint: (shownIn: ShownIn) =>
    shownIn === 'in' ? 'An inch or two is common practice.' : 'Three to five centimetres are common practice.',
  removeOuter: 'Nothing is worn over it',
  outerRemoved: 'The garment worn over it is removed. Undo brings it back.',
  noHem: 'No edge is named as the hem yet, so the lengths cannot be compared.',
  whichRing: 'Which pieces are looked at',
  ringNamed: 'These pieces together are called',
  unnamedRing: 'Without a name',
  ringNames: { below: 'Below the waist', above: 'Above the waist' },
  ringAddedLabel: 'more pieces round the body',
  ringRenamedLabel: 'name of what goes round',
  ringRemovedLabel: 'pieces round the body removed',
  ringRemoved: (name: string) => `“${name}” is no longer looked at; its pieces stay. Undo brings it back.`,
  removeRing: 'Remove',
  moreRings:
    'Other pieces may go round the body beside these, such as a bodice above its skirt. Each lies on one side of the waist.',
  addBelow: 'Add more below the waist',
  addAbove: 'Add more above the waist',
  proposeAbove: 'Take them above the waist, as a bodice',
  noWaistNamed:
    'No edge is named as the waist yet, so no piece was taken. Name it in the Draft room, or tick the pieces here.',
  bustLeftOut: 'Front waist length and bust depth place the bust. Measure them, or add the level by hand.',
  otherWays: 'Other ways to curve it',
  otherWaysOf: (piece: string) => `Other ways to curve it: ${piece}`,
  pieces: 'The pieces go round',
  body: 'Body',
  ease: 'Ease wanted',
  over: (by: string) => `${by} over`,
  short: (by: string) => `${by} short`,
  exact: 'just right',
  /** The way out beside a girth that is short: to the Reshape room, with this begun. */
  letOut: (edge: string, by: string, level: string, of: 'edge' | 'seam') =>
    `Let out ${edge}, ${by} at the ${level.toLowerCase()}${of === 'seam' ? ' from both edges of its seam' : ''}`,
  toWearer: 'Go to the Wearer room',
  curvedWaist: 'The waist the body needs',
  curvedHelp:
    'On a shaped body a straight waist peaks at every seam. The blue line is the curve that meets the fold and the seam squarely and has the length your body needs.',
  straight: 'Waist as drawn',
  curved: 'Curved waist',
  rise: 'Rises at the side',
  dip: 'Dips between the seams',
  ofWhole: (length: string) => `${length} for the whole garment`,
  take: 'Take the curved waist',
  taken: (piece: string) => `The waist of ${piece} is curved now.`,
  takeLabel: 'curved waist',
  noCurve: {
    'no-hip-point': 'it does not reach down to the hip, so the curve cannot be worked out.',
    'no-waist-edge': 'no edge of it is named as the waist.',
    'not-positive': 'waist and waist to hip must be more than nothing.',
    crosses: 'the curve would cross another edge of the piece. Look at the measures and at the shape of its sides.',
    'measure-missing': 'waist, hip and waist to hip are needed to work the curve out.',
  },
  isCurved: 'This waist is already the one the body needs.',
  findings: 'What to look at',
  nothingCompared: 'Nothing is compared yet: measure the wearer first.',
  allWell: 'The pieces go round the body as you wish.',
} as const;
