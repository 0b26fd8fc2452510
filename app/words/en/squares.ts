const named = (piece: string) => piece || 'the piece without a name';

/** Words for the squares sheet and how its points are told. */
export const squaresWords = {
  title: 'On brown paper',
  label: 'squares sheet',
  help: 'How the squares sheets are drawn and told. Draw them on large paper with a yardstick and a right angle.',
  square: 'One square at full size',
  asFine: 'as fine as can be read',
  from: 'Points are told',
  fromZero: 'across and down from a zero',
  fromLine: 'along a base line and out from it',
  baseOf: (piece: string) => `Base line of ${named(piece)}`,
  ownBase: (from: string, to: string) => `${from} to ${to}, the longest straight`,
  base: (from: string, to: string, edge: string) => `${from} to ${to}${edge === '' ? '' : `, ${edge}`}`,
  print: 'Letters',
  usual: 'usual',
  large: 'large, for the floor',
  onScreenHelp: 'Or lay this screen on the floor: one point at a time, in large figures, ticked off as you draw.',
  onScreen: (piece: string) => `${piece || 'Piece without a name'} point by point`,
} as const;
