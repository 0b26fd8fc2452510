/** Words of the frame round the rooms. */
export const shellWords = {
  product: 'Inchsquare',
  rooms: {
    shelf: 'Shelf',
    wearer: 'Wearer',
    diagram: 'Diagram',
    draft: 'Draft',
    reshape: 'Reshape',
    seams: 'Seams',
    fit: 'Fit',
    versions: 'Versions',
    paper: 'Paper',
    check: 'Before you cut',
  },
  roomsInOrder: 'The job, from body to paper',
  unsettled: (count: number) => (count === 1 ? '1 thing to settle' : `${count} things to settle`),
  settled: 'nothing to settle',
  undo: (what: string | undefined) => (what ? `Undo: ${what}` : 'Nothing to undo'),
  redo: (what: string | undefined) => (what ? `Do again: ${what}` : 'Nothing to do again'),
  saving: {
    saved: 'Kept on this device',
    waiting: 'Keeping…',
    failed: 'Not kept',
  },
  notKept: (why: string) => `Your last changes are on the screen but not yet kept: ${why}`,
  saveToFile: 'Save to a file now',
  refused: (what: string) =>
    `That was not done (${what}): it would put a piece more than a kilometre away, or leave a mark without its edge.`,
  elsewhere: 'This garment is open in another window, and only one window at a time can change it.',
  editHere: 'Go on here instead',
  broken: (room: string) =>
    `Something in ${room} could not be shown. Your garment is safe; the other rooms still work.`,
  tryAgain: 'Try again',
  loading: 'One moment…',
  newer: 'A newer Inchsquare is ready. Your work is kept; the page loads anew.',
  newerTake: 'Change to it now',
  newerLater: 'Later',
} as const;
