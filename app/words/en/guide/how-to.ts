import type { HowToName } from '../../../guide/pages';
import { roundLength, type Sentence } from '../../written';

/** The small drawings that stand beside a step. */
export type DrawingName =
  | 'tape-at-waist'
  | 'hip-depth'
  | 'level-tape'
  | 'camera-square'
  | 'page-weights'
  | 'corner-pins'
  | 'known-length'
  | 'points-on-curve'
  | 'half-on-fold'
  | 'straight-waist'
  | 'waist-from-cone'
  | 'pin-and-fold'
  | 'grain-ways'
  | 'bias-corner'
  | 'test-square'
  | 'joined-pages'
  | 'squares-carried'
  | 'longer-by'
  | 'round-the-body'
  | 'cut-line'
  | 'two-laid'
  | 'envelope'
  | 'three-four-five'
  | 'dart-legs'
  | 'slash-spread'
  | 'notches-meet'
  | 'walked-seam'
  | 'open-seam';

export interface HowToStep {
  readonly say: Sentence;
  readonly drawing?: DrawingName;
}

export interface HowTo {
  readonly title: string;
  readonly why: Sentence;
  readonly steps: readonly HowToStep[];
  /** What can hurt, spoil cloth, or waste paper. */
  readonly care?: string;
}

/** How each part of the job is done by hand and here. Measuring and cutting as is common practice. */
export const howTos: Readonly<Record<HowToName, HowTo>> = {
  'whole-job': {
    title: 'The whole job in pictures',
    why: 'From a small printed diagram to a garment that fits, one picture for each stretch of the way. The rooms along the tape stand in this order.',
    steps: [
      { say: 'Wearer: take the measures of the body it is for.', drawing: 'tape-at-waist' },
      { say: 'Diagram: photograph the page from straight above, and bring the picture in.', drawing: 'camera-square' },
      { say: 'Put the four corners on the frame of the page: the picture is squared up.', drawing: 'corner-pins' },
      { say: 'Say how long one line is at full size, such as a quarter of the waist.', drawing: 'known-length' },
      { say: 'Draft: trace the lines on the numbered squares, corner by corner.', drawing: 'points-on-curve' },
      { say: 'Say what each edge is, and on which one the cloth is folded.', drawing: 'half-on-fold' },
      { say: 'Reshape: make it longer, wider or narrower for her.', drawing: 'longer-by' },
      { say: 'Seams: allowances stand round it, and edges that are sewn together agree.', drawing: 'cut-line' },
      {
        say: 'Fit: all panels together go round waist and hips, or the notebook says what is missing.',
        drawing: 'round-the-body',
      },
      { say: 'A straight waist is curved, as the body needs it.', drawing: 'waist-from-cone' },
      {
        say: 'Mock-up: sew it in cheap cloth, pin it on the body, note every pin, and carry all of them over.',
        drawing: 'pin-and-fold',
      },
      {
        say: 'Compare: lay it over the first tracing or over another pattern, and read what differs.',
        drawing: 'two-laid',
      },
      { say: 'Cloth: lay it straight or on the bias, and know how much cloth it takes.', drawing: 'grain-ways' },
      { say: 'Paper: print it at full size and join the pages…', drawing: 'joined-pages' },
      { say: '… or carry it by its squares to brown paper.', drawing: 'squares-carried' },
      {
        say: 'Before you cut: look the list over. Then file the pattern in its envelope, and a copy of the file with it.',
        drawing: 'envelope',
      },
    ],
  },
  measuring: {
    title: 'Measuring yourself alone',
    why: 'Four measures decide whether a skirt fits: waist, hip, how far the hip lies below the waist, and the length.',
    steps: [
      {
        say: 'Wear what will be worn underneath, corset and petticoats too. Write down what that was.',
      },
      {
        say: 'Tie a cord or narrow elastic round the waist and move about. Where it settles is the waist; leave it on for all the other measures.',
        drawing: 'tape-at-waist',
      },
      {
        say: 'Measure the waist over the cord, the tape lying flat and one finger under it. Read it in front, where you can see it without bending.',
      },
      {
        say: 'The hip is the fullest place, wherever that is. Hold the tape loosely, let it slide down, and keep the largest number. A mirror at your side shows whether the tape is level.',
        drawing: 'level-tape',
      },
      {
        say: 'Pin the tape there and measure straight down your side from the cord to it: that is how deep the hip lies.',
        drawing: 'hip-depth',
      },
      {
        say: 'For lengths, stand straight, hang a tape from the cord with its weight on the floor, and read it in the mirror. Front, side and back differ: take each.',
      },
      {
        say: (shownIn) =>
          `Take every measure twice. Where the two differ by more than ${roundLength(shownIn, 1 / 4, 0.5)}, take a third.`,
      },
    ],
  },
  photographing: {
    title: 'Photographing a diagram',
    why: 'What the picture does not show cannot be squared up. A minute here saves an hour of tracing.',
    steps: [
      {
        say: 'Lay the page as flat as the binding allows. Weights go on the margin, never on the drawing.',
        drawing: 'page-weights',
      },
      {
        say: 'Have the whole printed frame in the picture, or the whole page, with a little table showing all round. Its four corners square the picture up.',
        drawing: 'camera-square',
      },
      {
        say: 'Stand above the middle and step back; zoom in rather than go close. From close by, a page bends at its edges.',
      },
      {
        say: 'Daylight from a window at one side is best. No flash on glossy paper; keep your own shadow off it.',
      },
      {
        say: 'Look at the picture at full size before you put the booklet away: can the thinnest line and the smallest figure be read?',
      },
      {
        say: 'Bring it in. Corners are proposed; pull each to its place under the magnifier.',
        drawing: 'corner-pins',
      },
      {
        say: 'Give at least two known lengths, one across and one down, each as long as can be. A printed figure, or a share of a measure such as a quarter of the waist, will do.',
        drawing: 'known-length',
      },
    ],
    care: 'Old bindings break. Do not press a book flat that does not wish to lie flat: a bent page can be straightened here.',
  },
  tracing: {
    title: 'Tracing a piece',
    why: 'A piece is a ring of corners with edges between them. Few points make a smooth edge; many make a bumpy one.',
    steps: [
      {
        say: 'Choose “Trace a piece” in the Draft room and press the first corner, then go round in either direction.',
      },
      {
        say: 'Where an edge curves, press it in two or three places along its way. The curve runs through every point you set.',
        drawing: 'points-on-curve',
      },
      {
        say: 'Where the printed line is clear, let the trace follow it and press only at the corners. You can always set a point of your own.',
      },
      {
        say: 'Half of a piece is enough: say that an edge is a fold of the cloth, and the other half is there.',
        drawing: 'half-on-fold',
      },
      {
        say: 'Trace the line the diagram shows, and say whether it is the line to sew on or the line to cut on. Old drafts often leave seams out.',
      },
      {
        say: 'Say what each edge is: seam, waist, hem, fold, opening. The checks of seams and fit rest on it.',
      },
      {
        say: 'A printed figure is often truer than the drawing. Write it on its edge, and the two are compared.',
      },
      { say: 'Lay the grain: the straight of the cloth, in most pieces along the centre front or back.' },
    ],
  },
  'curved-waist': {
    title: 'The curved waist',
    why: 'Old diagrams often draw the waist straight. Sewn to a body that widens to the hip, a straight waist stands off in the middle and drags at the sides.',
    steps: [
      {
        say: 'A skirt from waist to hip is near to a cone. Cut it open and lay it flat, and its upper edge is a piece of a circle, not a straight line.',
        drawing: 'waist-from-cone',
      },
      {
        say: (shownIn) =>
          `The more the hip is wider than the waist, the more the curve rises at the side. For a waist of ${roundLength(shownIn, 28, 70)} and a hip of ${roundLength(shownIn, 38, 95)}, ${roundLength(shownIn, 8, 20)} down, a quarter rises a little over ${shownIn === 'in' ? 'an inch' : roundLength(shownIn, 1, 2.5)}.`,
        drawing: 'straight-waist',
      },
      {
        say: 'The Fit room draws the curve your measures need over the straight waist and says by how much they part.',
      },
      {
        say: 'Press “Take the curved waist”. It meets the centre and the side seam squarely, so that the waist runs on smoothly where panels meet.',
      },
      {
        say: 'A hip that is higher on one side, or a hollow back, needs more. Pin it in the mock-up and carry the change over.',
      },
    ],
  },
  'mock-up': {
    title: 'The mock-up',
    why: 'A mock-up in cheap cloth finds what no sum finds. What is pinned on the body must come back into the pattern, every pin of it.',
    steps: [
      {
        say: 'Cut it from cloth that hangs like the real one. Mark the lines to sew on, the waist and the centre on the right side.',
      },
      { say: 'Sew with long stitches, leave the opening open, press, and put it on over what will be worn beneath.' },
      {
        say: 'Pin away what is too wide along the seam, and slit and patch what is too tight. Do not pin across a dart.',
        drawing: 'pin-and-fold',
      },
      {
        say: 'While it is still on, write down each pin in the Mock-up room: which edge, how far along, how much was taken in or let out.',
      },
      {
        say: (shownIn) =>
          `What you write is the whole of the tuck or half of it: look at what the field asks for. A tuck of ${roundLength(shownIn, 1 / 2, 1)} over both layers takes ${roundLength(shownIn, 1 / 4, 0.5)} from each piece.`,
      },
      { say: 'Carry each change over, or decline it with a reason. Nothing stays half done.' },
    ],
    care: 'Count the pins after a fitting. Close blades, cut away from your hand, and mind the hot iron.',
  },
  cloth: {
    title: 'Straight or bias, and how much cloth',
    why: 'On the bias cloth hangs softly and stretches, and it takes more. Lay the pieces both ways before you choose.',
    steps: [
      {
        say: 'The straight grain runs along the selvedge. It stretches least, and most pieces hang along it.',
        drawing: 'grain-ways',
      },
      {
        say: 'The true bias runs at 45°: fold a corner so that the cut end lies along the selvedge, and the fold is the bias.',
        drawing: 'bias-corner',
      },
      {
        say: 'Measure the cloth between the selvedges, and wash and press it before you measure if it is to be washed.',
      },
      { say: 'Cloth with a nap, a shine or a print that has an up and a down takes all its pieces one way.' },
      { say: 'Hang a bias skirt for a day before you level its hem: it drops.' },
      {
        say: (shownIn) =>
          `Buy a little over. ${shownIn === 'in' ? 'An eighth of a yard is' : 'Ten centimetres are'} cheaper than a missing waistband.`,
      },
    ],
    care: 'For children’s nightwear there are rules on how cloth burns, and for cords on children’s clothes too. They differ by country: look up your own.',
  },
  printing: {
    title: 'Printing at full size',
    why: (shownIn) =>
      `Programs that show pages like to shrink them to fit. A page shrunk to 97 % makes a hip of ${roundLength(shownIn, 38, 95)} into ${roundLength(shownIn, 37, 92)}.`,
    steps: [
      { say: 'Make the pages and print the first one alone, at 100 % or “actual size”, never “fit to page”.' },
      {
        say: 'Measure its square with a ruler both ways and write down what you read. If it is off, the likely cause is named.',
        drawing: 'test-square',
      },
      { say: 'Print the rest with the same settings, on the same paper.' },
      {
        say: 'Trim along two sides only, lay each page onto its neighbour so that the crosses meet, and tape or paste.',
        drawing: 'joined-pages',
      },
      { say: 'Measure the whole: each piece says how long its grain line and its widest place must be.' },
      { say: 'When you change the draft later, only the pages that are no longer true are printed again.' },
    ],
    care: 'Measure before you cut cloth. A sheet that is a hair off is a finger’s breadth off over ten pages.',
  },
  'brown-paper': {
    title: 'By coordinates to brown paper',
    why: 'Without a printer a pattern can be carried over point by point with a yardstick, as the booklets meant it.',
    steps: [
      { say: 'Rule a long straight edge on the paper and set a square corner to it.' },
      {
        say: 'Prove the corner: 3 ft along one side and 4 ft along the other must be 5 ft apart.',
        drawing: 'three-four-five',
      },
      {
        say: 'Each point of the squares sheet says how far across and how far down from zero. Measure each from the same two edges, not from the last point.',
        drawing: 'squares-carried',
      },
      { say: 'Tick each point off as it is set; the screen can show one at a time in large figures.' },
      {
        say: 'Join the points: a yardstick for straight edges; for curves bend a thin batten, or stand a tape on its edge, through the points.',
      },
      { say: 'Measure the two proofs on the sheet. If they are right, the whole is right.' },
    ],
  },
};
