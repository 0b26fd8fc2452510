import type { Cutting } from '../../../core/garment/done-to-it';
import type { Garment } from '../../../core/garment/garment';
import type { VersionHead } from '../../../core/garment/version';
import type { VersionSaid } from '../../../core/garment/version-said';
import { dateWords } from './paper-sheet';

/** What a piece is called; of one that is gone, what it was called when it was first drawn. */
export function pieceName(id: string, { pieces, traced = [] }: Pick<Garment, 'pieces' | 'traced'>): string {
  const named = [...pieces, ...traced].find((piece) => piece.id === id);
  if (!named) return 'a piece that is gone';
  return named.name || 'a piece without a name';
}

const when = new Intl.DateTimeFormat('en-GB', {
  day: 'numeric',
  month: 'long',
  year: 'numeric',
  hour: '2-digit',
  minute: '2-digit',
});
const day = new Intl.DateTimeFormat('en-GB', { day: 'numeric', month: 'long', year: 'numeric' });

const numbered = ({ number, name }: Pick<VersionHead, 'number' | 'name'>) =>
  name === '' ? `Version ${number}` : `Version ${number}, ${name}`;

/** Words of the Versions room. */
export const versionsWords = {
  now: 'The draft now',
  said: (said: VersionSaid) => {
    if (said.kind === 'kept') return `The draft is ${numbered(said).replace('Version', 'version')}.`;
    return said.since === undefined
      ? 'The draft is not kept as a version yet.'
      : `The draft has been changed since version ${said.since}.`;
  },
  name: 'Name',
  nameHint: 'Such as “as drafted” or “after the second fitting”.',
  note: 'Note',
  keep: 'Keep as a version',
  kept: (version: Pick<VersionHead, 'number' | 'name'>) => `Kept: ${numbered(version)}.`,
  notKept: 'The version could not be kept. Save the garment to a file, then make room on this device.',
  notRead: 'The versions of this garment could not be read. Reload the page and try again.',
  damaged: 'What is kept of this version can no longer be read. The other versions are not touched by that.',
  list: 'Versions',
  none: 'No version is kept yet. Keep one before a fitting, and before you cut.',
  numbered,
  date: dateWords,
  look: (version: Pick<VersionHead, 'number' | 'name'>) => `Look at ${numbered(version)}`,
  isNow: 'the draft now',
  traced: 'As traced',
  tracedHelp: 'Each piece as it was first drawn. It never changes.',
  tracedNone: 'No piece is drawn yet.',
  tracedLate: (names: readonly string[], since: number) =>
    `How ${names.join(', ')} was first drawn is not known. This is how it was on ${day.format(since)}, the earliest that is kept.`,
  beneath: 'As traced, laid beneath',
  lookingAt: (what: string) => `On the table: ${what}. The draft as it is now lies over it in dashes.`,
  stop: 'Back to the draft',
  bringBack: 'Bring it back',
  bringBackHelp:
    'The pieces become as they were. What you have now is kept as a version first, and undo takes it back.',
  bringBackLabel: (number: number) => `version ${number} brought back`,
  broughtBack: (number: number) => `Version ${number} is on the table again.`,
  keptFirst: (number: number, back: number) =>
    `What you had is kept as version ${number}; version ${back} is on the table again.`,
  keptBefore: (number: number) => `before version ${number} was brought back`,
  changedMeanwhile: 'The draft was changed in the meantime. Nothing was brought back; try again.',
  differs: 'What is different now',
  same: 'Nothing: its pieces are just as they are now.',
  pieceAdded: 'drawn since',
  pieceRemoved: 'taken away since',
  pieceMoved: 'only lies elsewhere',
  pieceOther: 'other marks or words',
  edgeNew: 'new edge',
  edgesGone: (count: number) => (count === 1 ? '1 edge is gone' : `${count} edges are gone`),
  edgeReshaped: (length: string) => `other shape, ${length} as before`,
  cutting: 'Cut from it',
  cutFrom: 'What was cut',
  from: { 'mock-up': 'a mock-up', cloth: 'the cloth' } satisfies Record<Cutting['from'], string>,
  cutOn: 'Cut on',
  noteCut: 'Note that it was cut',
  cutLabel: (number: number) => `cut from version ${number}`,
  forget: 'Take out',
  forgetLabel: 'taken out: what was cut',
  cutSaid: ({ from, date }: Pick<Cutting, 'from' | 'date'>) =>
    `${from === 'cloth' ? 'The cloth' : 'A mock-up'} was cut from it on ${dateWords(date)}.`,
  cutCurrent: 'The draft is still as it was cut.',
  cutChanged: (names: readonly string[]) => `Changed since: ${names.join(', ')}.`,
  steps: 'Step by step',
  stepsHelp: 'What was done to the pieces, in order. A step that is undone goes from here.',
  noSteps: 'Nothing has been done to a piece yet.',
  earlier: (count: number) => (count === 1 ? 'Show 1 earlier step' : `Show ${count} earlier steps`),
  when: (time: number) => when.format(time),
  table: 'The pieces, and a version of them',
  noPiecesTitle: 'Nothing to keep yet',
  noPieces: 'Versions of your draft will be kept here. Trace a piece in the Draft room first.',
  toDraft: 'Go to the Draft room',
} as const;
