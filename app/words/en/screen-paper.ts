import type { Way } from '../../../core/screen/pan-steps';
import { dateWords } from './paper-sheet';

const tenth = (mm: number) => mm.toFixed(2);

/** Words for a piece at full size on a screen, or thrown on the table. */
export const screenPaperWords = {
  card: 'On a screen or by a beam',
  help: 'A piece at full size without paper: to trace from a screen that lies flat, or along a projector’s beam thrown on the cutting table. It is measured with a ruler first.',
  onScreen: 'Full size on this screen',
  byBeam: 'Thrown on the table by a beam',
  label: 'Full size',
  unnamed: 'Piece without a name',
  drawing: (piece: string) => `${piece || 'The piece'} at full size. The arrow keys move it on by whole squares.`,
  close: 'Close',
  use: 'That is how long they are',
  barsTitle: 'How long are the two bars?',
  barsHelp:
    'Lay a ruler on the screen and measure each white bar from tick to tick, to 1/32 in or half a millimetre. Their lengths tell how large this screen is.',
  barAcross: 'The bar across measures',
  barDown: 'The bar down measures',
  cornersTitle: 'Bring the four corners onto a rectangle',
  cornersHelp:
    'Lay a true rectangle on the table, as large as the light allows: a cutting mat, or tape whose two diagonals measure the same. Drag each ring until its corner of the white frame lies on its corner, or go there with the arrow keys (with Shift by ten). Then say how long its sides are.',
  corner: ['Top left corner', 'Top right corner', 'Bottom right corner', 'Bottom left corner'],
  cornerSaid: (index: number, x: number, y: number) =>
    `${screenPaperWords.corner[index]}, ${Math.round(x)} across, ${Math.round(y)} down`,
  sideAcross: 'Its upper side measures',
  sideDown: 'Its left side measures',
  noMap: {
    corners: 'These corners cross over or lie in one line. Drag them apart, in the order of their numbers.',
    lengths: 'These sides are too short to measure by. Take a larger rectangle.',
  },
  changed: 'The screen, its zoom or the window is not what was measured. Measure it here, or go back to how it was.',
  pinched: 'The page is drawn larger by two fingers: nothing measures true. Bring it back to its own size.',
  buttons: 'What is shown',
  caution: 'Measure the square before you cut.',
  inSight: (across: readonly [string, string], down: readonly [string, string]) =>
    `In sight: ${across[0]} to ${across[1]} across, ${down[0]} to ${down[1]} down. Move the paper by as many squares as you step on.`,
  step: {
    left: 'Step on to the left',
    right: 'Step on to the right',
    up: 'Step on upwards',
    down: 'Step on downwards',
  } satisfies Record<Way, string>,
  turn: 'Turn by a quarter',
  home: 'Back to the first part',
  check: 'The square measures…',
  more: 'Lines, colours, measuring anew',
  lock: 'Lock',
  locked: 'Locked. Press to unlock',
  unlock: 'Press here as well',
  piece: 'Piece',
  ground: 'Colours',
  whiteOnBlack: 'white on black',
  blackOnWhite: 'black on white',
  line: 'Lines',
  lines: ['thin', 'thick', 'very thick'],
  grid: 'Numbered squares',
  square: 'Test square',
  fill: 'Fill the screen',
  anew: { screen: 'Measure the screen anew', beam: 'Set the corners anew' },
  measuredOn: (date: string) => `Measured on ${dateWords(date)}.`,
  pixel: (across: number, down: number) =>
    `A pixel is ${tenth(across)} mm across and ${tenth(down)} mm down; nothing can be truer than that.`,
  unlike: (share: number) =>
    `Across and down differ by ${(share * 100).toFixed(0)} %, which screens do not. Measure the square both ways.`,
  awake: {
    asking: '',
    kept: 'The screen stays awake.',
    refused: 'The browser does not keep the screen awake: set a longer rest time.',
    cannot: 'This browser cannot keep the screen awake: set a longer rest time.',
  },
  squareTitle: (side: string) => `The square should be ${side}`,
  squareHelp: 'Measure the square with a ruler. What differs is mended, across and down apart.',
  squareAcross: 'It measures across',
  squareDown: 'It measures down',
  mend: 'Mend it so',
  leave: 'Leave it',
} as const;
