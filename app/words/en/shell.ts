import type { CopyAge } from '../../state/copy-age';

function copiedAgo(days: number): string {
  if (days === 0) return 'Much changed since the copy';
  return days === 1 ? 'Last copy 1 day old' : `Last copy ${days} days old`;
}

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
    mockup: 'Mock-up',
    versions: 'Versions',
    compare: 'Compare',
    cloth: 'Cloth',
    paper: 'Paper',
    check: 'Before you cut',
  },
  roomsInOrder: 'The job, from body to paper',
  leftOnTape: (count: number) => `${count} left`,
  leftKnowingly: (count: number) => (count === 1 ? '1 thing left knowingly' : `${count} things left knowingly`),
  unsettled: (count: number) => (count === 1 ? '1 thing to settle' : `${count} things to settle`),
  settled: 'nothing to settle',
  undo: (what: string | undefined) => (what ? `Undo: ${what}` : 'Nothing to undo'),
  redo: (what: string | undefined) => (what ? `Do again: ${what}` : 'Nothing to do again'),
  units: { in: 'in', cm: 'cm' },
  writeIn: { in: 'Write lengths in inches', cm: 'Write lengths in centimetres' },
  unitsChanged: 'inches or centimetres',
  saving: {
    saved: 'Kept on this device',
    waiting: 'Keeping…',
    failed: 'Not kept',
    looking: 'Only to look at',
  },
  copyOld: (age: CopyAge) => (age.kind === 'none' ? 'No copy in a file yet' : copiedAgo(age.days)),
  notKept: (why: string) => `Your last changes are on the screen but not yet kept: ${why}`,
  saveToFile: 'Save to a file now',
  cleared:
    'What this browser kept was cleared away while you worked. The garment on the table is kept anew; its pictures, its versions and other garments may be gone. Save it to a file now, and bring the others in from their files.',
  laidBeside: (name: string) =>
    `The garment was changed in another window meanwhile. What you did in this one is kept beside it, as “${name}”; you go on with that here. Both are on the shelf.`,
  blocked:
    'An older Inchsquare, open in another window of this browser, holds what is kept here. Close its other windows; this one goes on by itself.',
  newerFile:
    'This garment was made with a newer Inchsquare. What this one knows of it is shown, to look at only: nothing is changed or kept here. Bring this one up to date by reloading the page; the file can be saved on as it came.',
  saveAsItCame: 'Save the file as it came',
  newerStore:
    'A newer Inchsquare has kept garments in this browser. They can be looked at and saved to files; nothing is written into them here. Reload the page to bring this one up to date.',
  notNow: 'Not now',
  refused: (what: string) =>
    `That was not done (${what}): it would put a piece more than a kilometre away, or leave a mark without its edge.`,
  elsewhere: 'This garment is open in another window, and only one window at a time can change it.',
  editHere: 'Go on here instead',
  broken: (room: string) =>
    `Something in ${room} could not be shown. Your garment is safe; the other rooms still work.`,
  brokenAll: 'The workbench could not be shown. Your garment is kept on this device as far as it was said to be.',
  knows: (name: string, pieces: number) => `On the table: ${name}, ${pieces === 1 ? '1 piece' : `${pieces} pieces`}.`,
  report: 'What went wrong, for those who mend it',
  reportHelp:
    'It stays on this device unless you pass it on. No picture, name or measure is in it; figures are struck out.',
  reportYours: 'What you were doing, if you like to say',
  reportSave: 'Save this report',
  tryAgain: 'Try again',
  stray:
    'Something went wrong just now, and perhaps what you asked for was not done. Your work is kept. Try it once more; if it goes wrong again, load the page anew.',
  strayClose: 'Put this away',
  loading: 'One moment…',
  newer: 'A newer Inchsquare is ready. Your work is kept; the page loads anew.',
  newerTake: 'Change to it now',
  newerLater: 'Later',
  newerOthers:
    'Inchsquare is open in another window of this browser as well. Close it there first: no window is changed amid its work.',
  newerElsewhere:
    'A newer Inchsquare was taken in another window. Rooms not opened here yet may not come until this page is loaded anew; your work is kept.',
  newerReload: 'Load it anew',
} as const;
