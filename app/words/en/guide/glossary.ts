export interface TradeWord {
  readonly word: string;
  readonly means: string;
}

/** The words of the trade as they are used here, in the order of the alphabet; common practice throughout. */
export const glossary: readonly TradeWord[] = [
  { word: 'Allowance', means: 'What is added beyond the line to sew on, so that there is cloth to sew in or turn up.' },
  { word: 'Balance', means: 'How front and back hang to one another. A hem that lifts in front is out of balance.' },
  { word: 'Band', means: 'The strip that finishes a waist. A shaped band is curved as the body is.' },
  {
    word: 'Bias',
    means: 'Any direction oblique to the threads; the true bias lies at 45° to them and stretches most.',
  },
  {
    word: 'Cross grain',
    means: 'Across the cloth, from selvedge to selvedge. It gives a little more than the straight grain.',
  },
  { word: 'Cut line', means: 'The line the shears follow: the line to sew on with its allowances.' },
  { word: 'Dart', means: 'A wedge folded out and sewn so that flat cloth goes round a body.' },
  {
    word: 'Ease',
    means:
      'Room beyond the body’s own measure, to move and to breathe. Also what a longer edge is worked into a shorter one by.',
  },
  { word: 'Facing', means: 'A piece cut like an edge and turned inside to finish it.' },
  { word: 'Flare', means: 'The widening of a piece towards the hem.' },
  { word: 'Fold, on the', means: 'Half a piece laid with one edge on folded cloth, so that it comes out whole.' },
  { word: 'Gore', means: 'One of several panels, narrow above and wide below, that make up a skirt.' },
  { word: 'Grain', means: 'The direction of the threads; the straight grain runs along the selvedge.' },
  { word: 'Hem', means: 'The lower edge, and what is turned up to finish it.' },
  { word: 'High hip', means: 'About half-way between waist and hip, over the hip bones.' },
  { word: 'Hip', means: 'The fullest place below the waist, wherever it lies.' },
  { word: 'Known length', means: 'A line on the picture whose length at full size you know. It sets the scale.' },
  { word: 'Lay', means: 'All pieces placed on the cloth, ready to be cut.' },
  { word: 'Mirrored pair', means: 'Two pieces from one drawing, one of them turned over, as for a left and a right.' },
  { word: 'Mock-up', means: 'The garment made first in cheap cloth, to be fitted and marked.' },
  { word: 'Nail', means: 'An old measure of cloth: 2 1/4 in (5.7 cm), the sixteenth part of a yard.' },
  { word: 'Nap', means: 'A pile, shine or print that looks otherwise upside down; all pieces must lie one way.' },
  { word: 'Net', means: 'Drawn to the line to sew on, without allowances.' },
  { word: 'Notch', means: 'A mark on an edge that meets its fellow on another edge.' },
  { word: 'Pinned change', means: 'What was taken in or let out on the body, with its place on its edge.' },
  { word: 'Placket', means: 'The finished opening that lets a garment be put on.' },
  { word: 'Repeat', means: 'How far a pattern in the cloth runs before it comes again.' },
  { word: 'Selvedge', means: 'The woven edge of the cloth. It is tighter than the rest and is mostly left off.' },
  { word: 'Side seam', means: 'The seam that joins front to back at the side.' },
  { word: 'Square up', means: 'To turn a picture taken at a slant into one seen straight from above.' },
  {
    word: 'Squares sheet',
    means: 'A small drawing on numbered squares with a table of points, to be carried to brown paper.',
  },
  { word: 'Stitch line', means: 'The line to sew on.' },
  { word: 'Take in, let out', means: 'To make narrower, or wider, at a seam.' },
  {
    word: 'True',
    means: 'To make two edges that are sewn together agree in length, and run on smoothly where seams meet.',
  },
  {
    word: 'Walk',
    means: 'To lay one edge along the other inch by inch, as they will be sewn, and see whether they agree.',
  },
  { word: 'Yoke', means: 'The fitted upper part to which a fuller part is sewn.' },
];
