import { projectFileWords } from './project-file';

/** Words about many garments at once: bringing them in, and a whole shelf in one file. */
export const wholeShelfWords = {
  readMe: [
    'This is a whole shelf of garments drafted with Inchsquare.',
    'Open it with Inchsquare: on the shelf, choose "Open a file".',
    '',
    'Each .inchsquare.zip in it is one garment and can be taken out and opened alone.',
    'put-away/  the garments that were put away',
    '',
  ].join('\r\n'),
  fileName: 'shelf',
  save: 'Save the whole shelf to one file',
  saveHelp: 'Every garment with its versions and pictures, those put away as well.',
  saving: 'Gathering the garments…',
  saved: (count: number) => (count === 1 ? '1 garment is in the file.' : `${count} garments are in the file.`),
  leftOut: (names: string) => `Not in the file, because what is stored of them is damaged: ${names}.`,
  cannotSave: 'The shelf could not be saved to a file. Save the garments one by one instead.',
  tooLarge: 'The shelf is more than one file may hold: 1 GB, or 1000 garments. Save the garments one by one instead.',
  noneSaved: 'Nothing on the shelf can be read, so no file was made.',
  bringing: (done: number, count: number) => `Bringing in ${done + 1} of ${count}…`,
  areIn: (count: number) => (count === 1 ? '1 is in.' : `${count} are in.`),
  alreadyHere: (count: number) =>
    count === 1
      ? '1 is here already just as it is in the file.'
      : `${count} are here already just as they are in the file.`,
  besides: (count: number) =>
    count === 1
      ? 'Of 1 another state was here; the one from the file lies beside it.'
      : `Of ${count} another state was here; those from the file lie beside them.`,
  picturesLacking: (count: number) =>
    count === 1
      ? '1 picture was not in the files or could not be kept. The drafts themselves are whole.'
      : `${count} pictures were not in the files or could not be kept. The drafts themselves are whole.`,
  report: 'What was brought in',
  close: 'Put this report away',
  notIn: (count: number) => (count === 1 ? '1 could not be brought in:' : `${count} could not be brought in:`),
  because: (name: string, why: string) => `${name}: ${why}`,
  refused: {
    ...projectFileWords.refused,
    'too-large-shelf':
      'It holds more than 1 GB or more than 1000 garments. Take them out of it and open them a few at a time.',
    'not-kept': 'The browser would not keep it; this device may have no room left.',
    'not-readable': 'The browser could not read the file.',
  },
} as const;
