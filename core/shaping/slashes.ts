import { outlineOf } from '../garment/outline';
import type { Piece } from '../garment/piece';
import { edgeIndex } from '../garment/with-piece';
import { pathLength, signedArea } from '../geometry/path';
import { distance } from '../geometry/point';
import { lengthenAcross } from './lengthen';
import { type NotSpread, spread } from './spread';
import { type EdgePlace, pointAt } from './turn-part';

/** Several slashes through a piece, all between the same two edges. */
export interface SlashesWish {
  /** The edge that opens. */
  readonly open: string;
  /** The edge at the other end of the slashes: hinged it keeps its length, loose it opens as much. */
  readonly far: string;
  readonly hinge: 'far' | 'none';
  /** So many, evenly shared; or where they begin on the opened edge (mm), each with its end on the far edge if she says. */
  readonly places: number | readonly { readonly open: number; readonly far?: number }[];
  /**
   * By how much they open, for less than 0 lap: the angle of each (hinged only), or how much longer the opened edge is to
   * be in all, measured along it when it is trued (mm).
   */
  readonly by: { readonly kind: 'angle'; readonly angle: number } | { readonly kind: 'length'; readonly total: number };
}

export interface NotSlashed {
  readonly kind: 'not-slashed';
  /** `too-many`: more than {@link MOST_HINGED} from a hinge, {@link MOST_SLASHES} without one. */
  readonly why: NotSpread['why'] | 'in-the-way' | 'not-met' | 'too-many';
}

/** Nobody cuts a pattern into more strips; each hinged one bends all that were opened before it. */
export const MOST_HINGED = 30;
export const MOST_SLASHES = 99;

/** The length asked for is met to this many mm. */
const MET = 0.01;
const MOST_TRIES = 12;

/**
 * The piece slashed in several places at once and spread or lapped. Hinged, each slash opens by the same angle, the far
 * edge keeps its length and only bends; without a hinge the parts move apart side by side. Edges cut through are trued
 * with smooth curves; a fold stays where it is, without one the start of the opened edge.
 */
export function slash(piece: Piece, wish: SlashesWish): Piece | NotSlashed {
  const count = typeof wish.places === 'number' ? wish.places : wish.places.length;
  if (count > (wish.hinge === 'far' ? MOST_HINGED : MOST_SLASHES)) return refuse('too-many');
  const lines = linesOf(piece, wish);
  if (!lines) return refuse('no-such-place');
  const { by } = wish;
  if (by.kind === 'angle') {
    return wish.hinge === 'none' ? refuse('no-such-place') : opened(piece, wish, lines, by.angle);
  }
  if (by.total === 0) return piece;
  const length = (one: Piece) => pathLength(outlineOf(one).edges[edgeIndex(one, wish.open)] ?? []);
  const wanted = length(piece) + by.total;
  if (!(wanted > 0)) return refuse('too-wide');
  // First as if each opened its share straight across; from then on the last two tries give the next.
  const reach = lines.reduce((sum, line) => sum + lineLength(piece, line), 0);
  let amount = wish.hinge === 'none' ? by.total / lines.length : by.total / reach;
  let last: { readonly amount: number; readonly off: number } | undefined;
  for (let tries = 0; tries < MOST_TRIES; tries++) {
    const made = opened(piece, wish, lines, amount);
    if ('why' in made) return made;
    const off = length(made) - wanted;
    if (Math.abs(off) <= MET) return made;
    const slope = last ? (off - last.off) / (amount - last.amount) : (off + by.total) / amount;
    last = { amount, off };
    if (!(Math.abs(slope) > 1e-9)) break;
    amount -= off / slope;
  }
  return refuse('not-met');
}

interface SlashLine {
  readonly open: EdgePlace;
  readonly far: EdgePlace;
}

/** The slashes in order along the opened edge; `undefined` where one has no place. The far edge runs the other way. */
function linesOf(piece: Piece, { open, far, places }: SlashesWish): SlashLine[] | undefined {
  const [near, other] = [open, far].map((id) => outlineOf(piece).edges[edgeIndex(piece, id)]);
  if (!near || !other || open === far) return undefined;
  const [length, farLength] = [pathLength(near), pathLength(other)];
  const alongs =
    typeof places === 'number'
      ? Array.from({ length: Math.floor(places) }, (_, i) => ({ open: (length * (i + 1)) / (Math.floor(places) + 1) }))
      : places.toSorted((a, b) => a.open - b.open);
  const lines = alongs.map((place: { readonly open: number; readonly far?: number }) => ({
    open: { edgeId: open, along: place.open },
    far: { edgeId: far, along: place.far ?? farLength * (1 - place.open / length) },
  }));
  const isThere = (line: SlashLine) => pointAt(piece, line.open) && pointAt(piece, line.far);
  return lines.length > 0 && lines.every(isThere) ? lines : undefined;
}

function lineLength(piece: Piece, { open, far }: SlashLine): number {
  const [one, other] = [pointAt(piece, open), pointAt(piece, far)];
  return one && other ? distance(one, other) : 0;
}

/** The slashes opened one after another by an angle each, or side by side by a width each; notches carry their places. */
function opened(piece: Piece, wish: SlashesWish, lines: readonly SlashLine[], amount: number): Piece | NotSlashed {
  const marks = lines.flatMap(({ open, far }, i) => [
    { id: placeId(i, 'open'), ...open, count: 1 as const },
    { id: placeId(i, 'far'), ...far, count: 1 as const },
  ]);
  let made: Piece = { ...piece, notches: [...piece.notches, ...marks] };
  const startStays = keepsStart(piece, wish);
  // What moves goes first: the slashes still to come lie in the part that stays.
  const order = lines.map((_, i) => (startStays ? lines.length - 1 - i : i));
  for (const i of order) {
    const open = placeOf(made, placeId(i, 'open'));
    const far = placeOf(made, placeId(i, 'far'));
    const next =
      wish.hinge === 'far'
        ? spread(made, { hinge: far, open, by: { kind: 'angle', angle: amount } })
        : movedApart(made, open, far, amount, startStays);
    if ('why' in next) return refuse(next.why === 'no-line' || next.why === 'no-hem' ? 'no-such-place' : next.why);
    const done = [placeId(i, 'open'), placeId(i, 'far')];
    made = { ...next, notches: next.notches.filter(({ id }) => !done.includes(id)) };
  }
  return made;
}

function movedApart(piece: Piece, open: EdgePlace, far: EdgePlace, by: number, startStays: boolean) {
  const [from, to] = [pointAt(piece, open), pointAt(piece, far)];
  if (!from || !to) return refuse('no-such-place');
  // To the right of the way from the opened edge inwards lies what comes before the slash where the piece runs clockwise.
  const rightIsBefore = signedArea(outlineOf(piece).whole) > 0;
  return rightIsBefore === startStays
    ? lengthenAcross(piece, { from: to, to: from }, by)
    : lengthenAcross(piece, { from, to }, by);
}

/** Whether what lies before the slashes along the opened edge stays: a fold there does, or no fold at all behind them. */
function keepsStart(piece: Piece, { open, far }: SlashesWish): boolean {
  const count = piece.edges.length;
  const [from, to] = [edgeIndex(piece, open), edgeIndex(piece, far)];
  for (let i = (from + 1) % count; i !== to; i = (i + 1) % count) if (piece.edges[i]?.role === 'fold') return false;
  return true;
}

function placeId(index: number, end: 'open' | 'far'): string {
  return `slash ${index} ${end}`;
}

function placeOf(piece: Piece, id: string): EdgePlace {
  const { edgeId, along } = piece.notches.find((notch) => notch.id === id) as EdgePlace;
  return { edgeId, along };
}

function refuse(why: NotSlashed['why']): NotSlashed {
  return { kind: 'not-slashed', why };
}
