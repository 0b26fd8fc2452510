import type { Garment } from '../garment/garment';
import type { Mockup, PinnedChange } from '../garment/mockup';
import { settlePinned } from '../garment/mockup-edits';
import type { EdgeRef } from '../garment/seam';
import { pieceOf } from '../garment/with-piece';
import { edgeLength } from '../seams/edge-length';
import type { RingNotLengthened } from '../shaping/lengthen-garment';
import { type EdgeTarget, edgesOnSide, isOpened, piecesOnSide } from './body-side';
import {
  type EdgePlaces,
  markedPlaces,
  type PinnedOnEdge,
  placesMirrored,
  placesOn,
  placesScaled,
  withoutPlaceMarks,
  withPlacesMarked,
} from './pin-places';
import { type EdgeNotCarried, edgeCarried, seamFrom } from './pinned-edge';
import { lengthCarried, type PinnedLength } from './pinned-length';
import { type PointNotCarried, pointCarried, vectorNow } from './pinned-point';

/** What is carried over, and what is known of the version it was pinned on. */
export interface CarryWish {
  readonly mockupId: string;
  readonly pinnedIds: readonly string[];
  /** YYYY-MM-DD, for the record. */
  readonly date: string;
  /** The garment of the version the mock-up was cut from; `undefined` when it is not on this device. */
  readonly base: Garment | undefined;
}

/** Something to know before a change is taken. */
export type CarryNote = { readonly pinnedId: string } & (
  | /** The edge is longer or shorter than where it was pinned, for another reason; the places were moved in proportion. */
  { readonly kind: 'places-scaled'; readonly edge: EdgeRef; readonly was: number; readonly is: number }
  /** The version is not here, so the places are counted along the edge as it is now. */
  | { readonly kind: 'version-gone' }
  /** The piece was on the fold and has been opened: the half that was drawn is changed. */
  | { readonly kind: 'half-as-drawn'; readonly pieceId: string }
  /** The sides of the seam differ by this much more than before (mm), since no corner could give. */
  | { readonly kind: 'seam-left-off'; readonly edge: EdgeRef; readonly by: number }
);

export interface Carried {
  readonly kind: 'carried';
  /** The garment as it would be, what was carried marked as such. */
  readonly garment: Garment;
  readonly notes: readonly CarryNote[];
}

/** The first change that cannot be carried over, and why. */
export type NotCarried = { readonly kind: 'not-carried'; readonly pinnedId: string } & (
  | { readonly why: 'not-noted' | 'no-piece' }
  | { readonly why: 'sides-together'; readonly pieceIds: readonly string[] }
  | { readonly why: 'edge-changed'; readonly edge: EdgeRef; readonly was: number; readonly is: number }
  | { readonly why: EdgeNotCarried['why'] | PointNotCarried['why']; readonly pieceId?: string }
  | { readonly why: RingNotLengthened['why']; readonly pieceId?: string }
);

/** Lengths that differ by no more than this are one (mm); by more than a quarter an edge is another edge. */
const SAME = 0.5;
const ANOTHER = 0.25;

/** A change with the edges it goes to, their places marked in the garment it is carried into. */
interface Job {
  readonly change: PinnedChange;
  readonly targets: readonly { readonly target: EdgeTarget; readonly id: string; readonly places: EdgePlaces }[];
}

/**
 * The garment with pinned changes carried over in their order, each on what the one before made of it, all places still
 * those of the version they were pinned on; or why the first that cannot be carried cannot.
 */
export function carriedOver(garment: Garment, wish: CarryWish): Carried | NotCarried {
  const mockup = garment.mockups?.find(({ id }) => id === wish.mockupId);
  const changes = mockup?.pinned.filter(({ id }) => wish.pinnedIds.includes(id)) ?? [];
  const settled = changes.find(({ state }) => state.kind !== 'noted');
  if (!mockup || settled) return { kind: 'not-carried', pinnedId: settled?.id ?? '', why: 'not-noted' };
  const notes: CarryNote[] = [];
  const jobs: Job[] = [];
  let now = garment;
  for (const change of changes) {
    const job = jobFor(garment, mockup, change, wish.base, notes);
    if ('why' in job) return job;
    jobs.push(job);
    for (const { target, id, places } of job.targets) now = withPlacesMarked(now, id, target, places);
  }
  for (const job of jobs) {
    const made = jobDone(now, job, wish.base, lengthsBefore(mockup, job.change, wish.pinnedIds), notes);
    if ('why' in made) return made;
    now = made;
  }
  const marked = settlePinned(withoutPlaceMarks(now, changes), wish.mockupId, wish.pinnedIds, {
    kind: 'carried',
    date: wish.date,
  });
  return { kind: 'carried', garment: marked, notes };
}

function jobFor(
  garment: Garment,
  mockup: Mockup,
  change: PinnedChange,
  base: Garment | undefined,
  notes: CarryNote[],
): Job | NotCarried {
  const { what, id: pinnedId, side } = change;
  if (what.kind !== 'edge') return { change, targets: [] };
  const refuse = (more: { readonly why: 'edge-gone'; readonly pieceId?: string }): NotCarried => ({
    kind: 'not-carried',
    pinnedId,
    ...more,
  });
  const targets = edgesOnSide(garment, what.edge, side, base);
  if ('kind' in targets) return { ...targets, kind: 'not-carried', pinnedId, why: 'sides-together' };
  const partners = side === 'both' ? [] : togetherAcross(garment, targets);
  if (partners.length > 0) return { kind: 'not-carried', pinnedId, why: 'sides-together', pieceIds: partners };
  const length = lengthOf(garment, what.edge);
  if (targets.length === 0 || length === undefined) return refuse({ why: 'edge-gone', pieceId: what.edge.pieceId });
  const known = base && placesSince(base, mockup, change, what);
  if (!base) notes.push({ kind: 'version-gone', pinnedId });
  const piece = pieceOf(garment, what.edge.pieceId);
  if (piece && side !== 'both' && isOpened(piece, base) && lengthOf(base, what.edge) !== undefined) {
    notes.push({ kind: 'half-as-drawn', pinnedId, pieceId: piece.id });
  }
  const placed: Job['targets'][number][] = [];
  for (const [number, target] of targets.entries()) {
    const is = lengthOf(garment, target);
    if (is === undefined) return refuse({ why: 'edge-gone', pieceId: target.pieceId });
    const expected = known ?? placesOn(what, what.edgeLength ?? is);
    const was = expected.length;
    if (Math.abs(is - was) > ANOTHER * was) {
      return { kind: 'not-carried', pinnedId, why: 'edge-changed', edge: target, was, is };
    }
    if (Math.abs(is - was) > SAME) notes.push({ kind: 'places-scaled', pinnedId, edge: target, was, is });
    const scaled = placesScaled(expected, is);
    const places = target.mirrored ? placesMirrored(scaled) : scaled;
    placed.push({ target, id: `${pinnedId} ${number}`, places });
  }
  return { change, targets: placed };
}

/** Pieces cut for both sides of the body to which edges meant for one side are sewn. */
function togetherAcross(garment: Garment, targets: readonly EdgeTarget[]): string[] {
  return targets.flatMap((target) => {
    const sewn = seamFrom(garment, target)?.other.map(({ pieceId }) => pieceId) ?? [];
    return sewn.filter((id) => (pieceOf(garment, id)?.cut.how ?? 'single') !== 'single');
  });
}

/** Where the places of a change have come to by all that was carried over from its mock-up since. */
function placesSince(base: Garment, mockup: Mockup, change: PinnedChange, what: PinnedOnEdge): EdgePlaces | undefined {
  const length = lengthOf(base, what.edge);
  if (length === undefined) return undefined;
  const places = placesOn(what, length);
  const carried = mockup.pinned.filter(({ state }) => state.kind === 'carried');
  if (carried.length === 0) return places;
  const ids = carried.map(({ id }) => id);
  let now = withPlacesMarked(base, change.id, what.edge, places);
  // Where the sides are apart now they were not yet; for finding places again a change is one of both sides.
  const jobs = carried.map((one): Job => {
    const length = one.what.kind === 'edge' ? lengthOf(base, one.what.edge) : undefined;
    if (one.what.kind !== 'edge' || length === undefined) return { change: { ...one, side: 'both' }, targets: [] };
    const target = { ...one.what.edge, mirrored: false };
    return { change: one, targets: [{ target, id: one.id, places: placesOn(one.what, length) }] };
  });
  for (const { targets } of jobs)
    for (const one of targets) now = withPlacesMarked(now, one.id, one.target, one.places);
  for (const job of jobs) {
    const made = jobDone(now, job, base, lengthsBefore(mockup, job.change, ids), []);
    if (!('why' in made)) now = made;
  }
  return markedPlaces(now, change.id, what.edge, places);
}

function jobDone(
  garment: Garment,
  { change, targets }: Job,
  base: Garment | undefined,
  before: readonly PinnedLength[],
  notes: CarryNote[],
): Garment | NotCarried {
  const { what, side, id: pinnedId } = change;
  if (what.kind === 'edge') {
    let now = garment;
    for (const { target, id, places } of targets) {
      const led = markedPlaces(now, id, target, places);
      if (!led) return { kind: 'not-carried', pinnedId, why: 'edge-gone', pieceId: target.pieceId };
      const made = edgeCarried(now, target, led, what.share);
      if (made.kind === 'edge-not-carried') return { ...made, kind: 'not-carried', pinnedId };
      if (made.left !== 0) notes.push({ kind: 'seam-left-off', pinnedId, edge: target, by: made.left });
      now = made.garment;
    }
    return now;
  }
  const pieces = piecesOnSide(garment, what.kind === 'length' ? what.pieceIds : [what.pieceId], side);
  if ('kind' in pieces) return { ...pieces, kind: 'not-carried', pinnedId, why: 'sides-together' };
  if (pieces.length === 0) return { kind: 'not-carried', pinnedId, why: 'no-piece' };
  if (what.kind === 'length') {
    const made = lengthCarried(garment, pieces, placeAfter(what, before), what.by);
    return 'why' in made ? { ...made, kind: 'not-carried', pinnedId } : made;
  }
  const named = pieceOf(garment, what.pieceId);
  const at = named?.corners.findIndex(({ id }) => id === what.cornerId) ?? -1;
  let now = garment;
  for (const piece of pieces) {
    const by = vectorNow(what.by, base && pieceOf(base, what.pieceId), piece);
    const made = pointCarried(now, pieceOf(now, piece.id) ?? piece, piece.corners[at]?.id ?? '', by);
    if ('why' in made) return { ...made, kind: 'not-carried', pinnedId };
    now = made;
  }
  return now;
}

/** Changes of length that were, or are now, carried over before this one. */
function lengthsBefore(mockup: Mockup, change: PinnedChange, pinnedIds: readonly string[]): PinnedLength[] {
  const index = mockup.pinned.findIndex(({ id }) => id === change.id);
  return mockup.pinned.flatMap(({ id, what, state }, at) => {
    const isBefore = state.kind === 'carried' ? id !== change.id : at < index && pinnedIds.includes(id);
    return isBefore && what.kind === 'length' ? [what] : [];
  });
}

/** A depth below the waist on the version lies lower by what has been let in above it since. */
function placeAfter({ at, pieceIds }: PinnedLength, before: readonly PinnedLength[]): PinnedLength['at'] {
  if (at.kind === 'hem') return at;
  const added = before.filter(
    (one) => one.at.kind === 'depth' && one.at.depth < at.depth && one.pieceIds.some((id) => pieceIds.includes(id)),
  );
  return { kind: 'depth', depth: added.reduce((depth, { by }) => depth + by, at.depth) };
}

function lengthOf(garment: Garment | undefined, { pieceId, edgeId }: EdgeRef): number | undefined {
  const piece = garment && pieceOf(garment, pieceId);
  return piece && edgeLength(piece, edgeId);
}
