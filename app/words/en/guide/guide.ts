import type { WalkStepName } from '../../../guide/walk-steps';
import type { Sentence } from '../../written';

/** Words of the book beside the rooms and of the walk through the demo garment. */
export const guideWords = {
  open: 'How to',
  openLabel: 'How to do it',
  title: 'How it is done',
  close: 'Close the book',
  pages: 'Pages',
  backToList: 'All pages',
  words: 'Words of the trade',
  wordsHelp: 'What each word means here.',
  seekWord: 'Find a word',
  noWord: (sought: string) => `No word here has “${sought}” in it or in what it means. Try a shorter part of it.`,
  care: 'Take care',
  about: (card: string) => `About ${card}`,
  readMore: (page: string) => `More: ${page}`,
  step: (number: number) => `Step ${number}`,
  startWalk: 'Be shown the whole job',
  startWalkHelp: 'The demo garment, from measures to pages, one thing at a time. Leave it whenever you like.',
  walk: 'The job, one thing at a time',
  walkStep: (number: number, of: number) => `${number} of ${of}`,
  walkDone: 'Done',
  walkNext: 'Go on',
  walkBack: 'Back',
  walkLeave: 'Leave',
  walkEnd: 'That was the whole job',
  walkGoThere: (room: string) => `Go to ${room}`,
  walkLeft: 'You left the walk. It begins anew from the shelf whenever you like.',
  steps: {
    measures: {
      title: 'The wearer',
      say: (shownIn) =>
        `A pattern is for one body. Here are its measures, each with how to take it; try ${shownIn === 'in' ? 29 : 74} for the waist and see what the other rooms say. A likely slip is asked about.`,
    },
    squared: {
      title: 'The picture, squared up',
      say: 'A tilted photo of a booklet. The four corners lie on its printed frame, and two known lengths say how large it is. Below is the picture as if seen from straight above.',
    },
    traced: {
      title: 'The piece, traced',
      say: (shownIn) =>
        `The half panel on squares of ${shownIn === 'in' ? 'one inch' : 'two centimetres'}. Press a corner or an edge and its lengths stand in the notebook; drag a point and everything else follows. Undo is at the top right.`,
    },
    waist: {
      title: 'A waist for a body',
      say: 'The booklet drew the waist straight. The Fit room draws the one this body needs over it: press “Take the curved waist”.',
    },
    opening: {
      title: 'Can it be put on?',
      say: 'The waist cannot pass over the hip, so the top of a seam is left open. The Fit room says how deep it must be at least: press “Leave it open”.',
    },
    seams: {
      title: 'What is sewn to what',
      say: 'Front and back meet at the side. Pair the side seam with its own mirror image, as proposed, and the two are walked along each other.',
    },
    cloth: {
      title: 'On the cloth',
      say: (shownIn) =>
        `${shownIn === 'in' ? 'Two yards and a half' : 'Two metres and a quarter'} of it are at hand. Press “Lay the pieces” and see what they take; then drag one, or lay all of it on the bias.`,
    },
    pages: {
      title: 'On paper',
      say: 'Press “Make the pages”. Every page has a test square on it, to be measured; the table of points is for brown paper.',
    },
    proof: {
      title: 'Is the printer true?',
      say: (shownIn) =>
        `Print the first page, measure its square both ways and write down what you read. To go on without a printer, write ${shownIn === 'in' ? '4 and 4' : '10.16 and 10.16'}.`,
    },
    check: {
      title: 'Before you cut',
      say: 'Everything there is to be sure of, with its numbers, each leading to where it is mended. When nothing is left open, cut.',
    },
  } satisfies Readonly<Record<WalkStepName, { readonly title: string; readonly say: Sentence }>>,
} as const;
