import type { Garment } from '../../../core/garment/garment';
import type { PinnedChange } from '../../../core/garment/mockup';
import type { EdgeRole } from '../../../core/garment/piece';
import type { EdgeRef } from '../../../core/garment/seam';
import { pieceOf } from '../../../core/garment/with-piece';
import type { CarryNote, NotCarried } from '../../../core/mockup/carried-over';
import { type PinnedSaying, pinnedSaying, type SaidPlace } from '../../../core/mockup/pinned-saying';
import { writeLength } from '../written';
import { trialWords } from './trial';

const beyond: Readonly<Record<EdgeRole, string>> = {
  waist: 'the waist',
  hem: 'the hem',
  fold: 'the fold',
  seam: 'the next seam',
  opening: 'the opening',
  finished: 'the finished edge',
};

/** A pinned change as a dressmaker says it, by the version it was pinned on or else by the draft. */
export function pinnedSentence(garment: Garment, change: PinnedChange): string {
  const said = saidOf(garment, pinnedSaying(garment, change));
  return `${said}; ${{ both: 'both sides of the body', left: 'her left side only', right: 'her right side only' }[change.side]}.`;
}

function saidOf(garment: Garment, saying: PinnedSaying): string {
  const length = (mm: number) => writeLength(mm, { shownIn: garment.shownIn });
  switch (saying.kind) {
    case 'edge-gone':
      return 'Pinned on an edge that is no longer there';
    case 'length': {
      const where = saying.at.kind === 'hem' ? 'at the hem' : `${length(saying.at.depth)} below the waist`;
      const names = saying.pieceIds.map((id) => pieceName(garment, id)).join(', ');
      return `${length(Math.abs(saying.by))} ${saying.by < 0 ? 'shorter' : 'longer'} ${where}: ${names}`;
    }
    case 'point': {
      const { right, down } = saying;
      const ways = [
        ...(right === 0 ? [] : [`${length(Math.abs(right))} to the ${right > 0 ? 'right' : 'left'}`]),
        ...(down === 0 ? [] : [`${length(Math.abs(down))} ${down > 0 ? 'down' : 'up'}`]),
      ];
      const corner = saying.corner === undefined ? 'a corner that is gone' : `corner ${saying.corner}`;
      return `${pieceName(garment, saying.pieceId)}, ${corner} moved ${ways.join(' and ') || 'nowhere yet'}`;
    }
    case 'edge': {
      const place = (at: SaidPlace) =>
        at.kind === 'end'
          ? `at ${beyond[at.beyond]}`
          : `at ${length(at.far)} ${saying.from === 'waist' ? 'below' : 'from'} ${beyond[saying.from]}`;
      const pins = saying.pins.map(({ by, at }, i) => {
        const way = by < 0 ? 'let out by' : 'taken in by';
        const before = saying.pins[i - 1];
        const isSame = before !== undefined && before.by < 0 === by < 0;
        return `${isSame ? 'by' : way} ${length(Math.abs(by))} ${place(at)}`;
      });
      const fades = saying.fades.filter((at) => at !== undefined).map(place);
      const fading = fades.length > 0 ? `, fading to nothing ${fades.join(' and ')}` : '';
      const given = shareSaid(garment, saying);
      return `${seamSaid(garment, saying)}: ${pins.join(', ') || 'nothing yet'}${pins.length > 0 ? fading : ''}${given}`;
    }
  }
}

type EdgeSaying = Extract<PinnedSaying, { readonly kind: 'edge' }>;

/** The seam by its name, or the edge with what it is sewn to. */
function seamSaid(garment: Garment, { edge, seam }: EdgeSaying): string {
  const own = edgeSaid(garment, edge);
  if (seam?.name) return `${own} (${seam.name})`;
  const partner = partnerOf({ seam, edge });
  return partner ? `${own} to ${edgeSaid(garment, partner)}` : own;
}

function shareSaid(garment: Garment, saying: EdgeSaying): string {
  const partner = partnerOf(saying);
  if (!partner || saying.share === 0.5) return '';
  const own = edgeSaid(garment, saying.edge);
  if (saying.share === 1) return `, all of it from ${own}`;
  if (saying.share === 0) return `, all of it from ${edgeSaid(garment, partner)}`;
  return `, ${Math.round(saying.share * 100)} % of it from ${own}`;
}

/** The edge an edge is sewn to; none where it is sewn to its own mirror image or to nothing. */
function partnerOf({ seam, edge }: Pick<EdgeSaying, 'seam' | 'edge'>): EdgeRef | undefined {
  return seam?.other.find(({ pieceId, edgeId }) => pieceId !== edge.pieceId || edgeId !== edge.edgeId);
}

function edgeSaid(garment: Garment, { pieceId, edgeId }: EdgeRef): string {
  const piece = pieceOf(garment, pieceId);
  const edge = piece?.edges.find(({ id }) => id === edgeId);
  return piece && edge ? trialWords.edgeOf(piece, edge).replace(': ', ', ') : 'an edge that is gone';
}

function pieceName(garment: Garment, pieceId: string): string {
  return pieceOf(garment, pieceId)?.name || 'a piece';
}

/** Why a pinned change cannot be carried over, and what to do. */
export function notCarriedSentence(garment: Garment, refusal: NotCarried): string {
  const length = (mm: number) => writeLength(mm, { shownIn: garment.shownIn });
  switch (refusal.why) {
    case 'sides-together':
      return `It is meant for one side of the body, but ${refusal.pieceIds.map((id) => pieceName(garment, id)).join(' and ')} is cut for both. Draw the sides apart first: Reshape, Left and right apart.`;
    case 'edge-changed':
      return `${edgeSaid(garment, refusal.edge)} should be ${length(refusal.was)} long by the version this was pinned on, and is ${length(refusal.is)} now. That is another edge: pin it anew on a mock-up of the present draft, or decline it.`;
    default: {
      const why = refused[refusal.why];
      if ('pieceId' in refusal && refusal.pieceId !== undefined)
        return `${pieceName(garment, refusal.pieceId)}: ${why}`;
      return `${why.charAt(0).toUpperCase()}${why.slice(1)}`;
    }
  }
}

const refused: Readonly<Record<Exclude<NotCarried['why'], 'sides-together' | 'edge-changed'>, string>> = {
  'not-noted': 'It has been carried over or declined already.',
  'no-piece': 'No piece for that side of the body is there any more.',
  'edge-gone':
    'the edge it was pinned on is no longer in the draft. Pin it anew on a mock-up of the present draft, or decline it.',
  'corner-gone': 'the corner is no longer there. Pin it anew on a mock-up of the present draft, or decline it.',
  'on-a-fold': 'it lies on the fold, which must stay straight. Draw the sides apart first, in Reshape.',
  'fades-inside': 'it is said to fade to nothing where it is still pinned. Change where it fades.',
  'no-seam': 'its seam has an edge that is no longer there. Pair it anew in the Seams room.',
  'no-pins': 'no pin says how much.',
  'along-the-neighbour':
    'the corner cannot move, since the edge beside it runs on nearly in line. Pin a little before the end.',
  crosses: 'with so much the outline would cross itself.',
  'no-piece-met': 'No piece reaches down to that line from a waist. Name the waist edge in the Draft room.',
  'no-line': 'the line does not cross it.',
  'in-the-way': 'a corner or a point lies in what would be folded away. Take another depth, or shorten at the hem.',
  'no-hem': 'No edge is named as a hem. Name it in the Draft room.',
};

/** Something to know before a change is taken. */
export function carryNoteSentence(garment: Garment, note: CarryNote): string {
  const length = (mm: number) => writeLength(mm, { shownIn: garment.shownIn });
  switch (note.kind) {
    case 'places-scaled':
      return `${edgeSaid(garment, note.edge)} was ${length(note.was)} long when this was pinned and is ${length(note.is)} now, so the places are moved in proportion. Look whether they are right.`;
    case 'version-gone':
      return 'The version this was pinned on is not on this device, so the places are counted along the edge as it is now.';
    case 'half-as-drawn':
      return `${pieceName(garment, note.pieceId)} has been opened into one whole piece since: the half that was drawn then is changed. If it was pinned on the other half, choose that edge first.`;
    case 'seam-left-off':
      return `The two edges of the seam at ${edgeSaid(garment, note.edge)} differ by ${length(Math.abs(note.by))} more than before. True the seam afterwards.`;
  }
}

/** Words of the Mock-up room. */
export const mockupWords = {
  tableLabel:
    'The pieces as the mock-up was cut, with what was pinned. Press an edge to note a change there; press along it to set pins.',
  noPiecesTitle: 'Nothing to cut a mock-up from',
  noPieces: 'What is pinned at a fitting will be noted here. Trace a piece in the Draft room first.',
  toDraft: 'Go to the Draft room',
  mockups: 'Mock-ups',
  none: 'Cut the draft in cheap cloth, try it on, and note here what you pinned. Nothing noted can be forgotten: it is asked about before pages are made.',
  cut: 'Cut a mock-up',
  cutHelp: 'The draft as it is now is kept as a numbered version, so that what is pinned can always be told from it.',
  cutting: 'Keeping the version…',
  cutFailed: 'The version could not be kept on this device, so no mock-up was begun. Make room and try again.',
  cutDone: (name: string, version: number) => `${name} is cut from version ${version}.`,
  newName: (number: number) => `Mock-up ${number}`,
  versionName: (mockup: string) => `Cut for ${mockup}`,
  fromVersion: (version: number, mark: string, date: string) => `Version ${version} (${mark}), ${date}`,
  open: (noted: number, pinned: number) =>
    pinned === 0 ? 'nothing noted yet' : noted === 0 ? 'all settled' : `${noted} noted`,
  all: 'All mock-ups',
  name: 'Name',
  note: 'Note',
  noteHint: 'Its cloth, how it hung, what was worn under it.',
  moved: 'The draft has changed since this mock-up was cut. The table shows it as it was cut.',
  versionGone: 'The version it was cut from is not on this device, so the table shows the draft as it is now.',
  remove: 'Remove this mock-up',
  removeAsk: 'Remove it with all that is noted on it? Undo brings it back.',
  removeYes: 'Remove it',
  keep: 'Keep it',
  details: 'Name, note, version',
  pinned: 'What was pinned',
  nothingPinned: 'Nothing is noted yet. Press an edge on the table, or choose what was pinned:',
  add: 'Note another',
  kinds: { edge: 'In or out along an edge', length: 'Longer or shorter', point: 'A point moved' },
  number: (number: number) => `Change ${number}`,
  state: {
    noted: () => 'Noted, not yet in the draft',
    carried: (date: string) => `Carried over on ${date}`,
    declined: (date: string, reason: string) => `Declined on ${date}: ${reason}`,
  },
  carry: 'Carry over',
  carryOf: (what: string) => `Carry over: ${what}`,
  carryAll: (count: number) => (count === 1 ? 'Carry it over' : `Carry all ${count} over`),
  carryEach: 'One by one',
  change: 'Change',
  changeOf: (what: string) => `Change: ${what}`,
  decline: 'Decline',
  declineOf: (what: string) => `Decline: ${what}`,
  reason: 'Why it is not carried over',
  declineIt: 'Decline it',
  reasonFirst: 'Write down why, so that you know it later.',
  again: 'Take it up again',
  againOf: (what: string) => `Take it up again: ${what}`,
  notAfterAll: 'It is not in the draft after all',
  notAfterAllHelp: 'Only the mark is taken back. To take the change out of the draft, use undo.',
  removeChange: 'Remove',
  removeChangeOf: (what: string) => `Remove: ${what}`,
  noting: { edge: 'Pinned along an edge', length: 'Longer or shorter', point: 'A point moved' },
  chooseEdge: 'Press the edge on the table, or choose it here.',
  edge: 'Which edge',
  noEdge: 'not chosen yet',
  pins: 'Pins',
  pin: (number: number) => `Pin ${number}`,
  anotherPin: 'Another pin',
  dropPin: 'Take this pin away',
  pressAlong: 'Press along the edge on the table to set a pin, drag one to move it.',
  way: 'Which way',
  ways: { in: 'taken in', out: 'let out' },
  by: 'How much, of the seam in all',
  place: { waist: 'Below the waist', other: (role: EdgeRole) => `From ${beyond[role]}` },
  fades: 'Where it fades to nothing',
  fadeEnd: (role: EdgeRole) => `Empty: at ${beyond[role]}.`,
  fadeBefore: 'Before the pins, at',
  fadeAfter: 'After the pins, at',
  share: 'Taken from',
  shares: {
    half: 'both edges alike',
    own: (name: string) => `${name} alone`,
    partner: (name: string) => `${name} alone`,
    other: (share: number) => `${Math.round(share * 100)} % from this edge`,
  },
  side: 'For which side of the body',
  sides: { both: 'both', left: 'her left', right: 'her right' },
  photo: 'Photo',
  takePhoto: 'Take a photo',
  choosePhoto: 'Choose a photo',
  dropPhoto: 'Take the photo away',
  photoAlt: (what: string) => `Photo of the fitting: ${what}`,
  photoFailed: 'That picture could not be opened or kept. Take another, or go on without one.',
  photoGone: 'Its photo is not on this device.',
  lengthWay: 'Which way',
  lengthWays: { longer: 'longer', shorter: 'shorter' },
  lengthBy: 'By',
  at: 'Where',
  ats: { hem: 'at the hem', depth: 'across, below the waist' },
  depth: 'Below the waist',
  pieces: 'Which pieces',
  point: 'Which corner',
  corner: (piece: string, number: number) => `${piece}: corner ${number}`,
  across: 'Across',
  acrossWays: { right: 'to the right', left: 'to the left' },
  acrossBy: 'Across by',
  downWay: 'Up or down',
  downWays: { down: 'down', up: 'up' },
  downBy: 'Up or down by',
  noteIt: 'Note it',
  leaveIt: 'Leave it',
  notYet: 'Say first where and how much.',
  noted: 'It is noted. Carry it over when the fitting is done.',
  labels: {
    cut: 'cut a mock-up',
    note: 'note a pinned change',
    change: 'change what was pinned',
    decline: 'decline a pinned change',
    again: 'take up a pinned change again',
    removeChange: 'remove a pinned change',
    name: 'name a mock-up',
    remark: 'note on a mock-up',
    remove: 'remove a mock-up',
    carry: (count: number) => (count === 1 ? 'carry over a pinned change' : `carry over ${count} pinned changes`),
  },
  carrying: (count: number) => (count === 1 ? 'Carry over' : `Carry over ${count} changes`),
  carryingHelp: 'Dashed as it is, blue as it would be.',
  loading: 'Opening the version it was pinned on…',
  toCome: (count: number) =>
    count === 1 ? '1 more comes after this one, taken or left.' : `${count} more come after this one, taken or left.`,
  stopHere: 'Stop here',
  without: 'Go on without that one',
  cannot: (sentence: string, why: string) => `${sentence} It cannot be carried over so. ${why}`,
  outstandingTitle: 'Pinned, but not in these pages',
  outstanding: (count: number) =>
    count === 1
      ? 'One change pinned on a mock-up is neither carried over nor declined:'
      : `${count} changes pinned on mock-ups are neither carried over nor declined:`,
  toMockup: 'To the mock-up',
  makeAllTheSame: 'Make the pages all the same',
} as const;
