import { isGuide } from '../garment/cut-pieces';
import type { Garment, Ring } from '../garment/garment';
import { outlineOf } from '../garment/outline';
import type { Piece } from '../garment/piece';
import { pieceOf, withPiece } from '../garment/with-piece';
import { pathAtLength, pathEnd, pathLength, pathStart, signedArea } from '../geometry/path';
import { dot, quarterTurn, scaleVector, unit, type Vector, vectorBetween } from '../geometry/point';
import { type LineAcross, lengthenAcross, lengthenAtHem, type NotLengthened } from './lengthen';
import { levelLine } from './level-line';
import { waistAxis, waistCentre } from './waist-axis';

/** Where a ring of pieces is made longer, and by how much (mm; less than 0 shortens). */
export interface RingLengthening {
  /** How far below the waist the line runs across every piece that it meets. */
  readonly depth: number;
  readonly by: number;
  /** How much of it, 0 to 1, is given at the hem instead of at the line; nothing unless said. */
  readonly atHem?: number;
}

/** A ring that cannot be made longer so, and the piece that hinders it; without one, no piece is met. */
export interface RingNotLengthened {
  readonly kind: 'ring-not-lengthened';
  readonly why: NotLengthened['why'] | 'no-piece-met';
  readonly pieceId?: string;
}

/** The axis of a waist without a centre line is taken over its first two inches. */
const AXIS_DEPTH = 50.8;

/** By what length is divided: up to 5 in are given half at the line and half at the hem (Butterick, The New Dressmaker, 1921). */
export const HALF_AT_HEM = 0.5;

/**
 * The garment with every piece of a ring that reaches down to a line made longer there, each along its own centre or
 * grain, and the rest at the hem. The line follows the level below the waist, so that it meets the same places of a
 * seam's two sides; the sides run over the gap straight where they were straight, else smoothly. Pieces that end above
 * the line stay. Shortened at the same line by the same amount the garment is as it was, to 0.01 mm; where part of it was given at a hem between curved sides, to less than a millimetre.
 */
export function lengthenRing(
  garment: Garment,
  ring: Pick<Ring, 'members'>,
  wish: RingLengthening,
): Garment | RingNotLengthened {
  const { depth, by, atHem = 0 } = wish;
  let changed = garment;
  let met = 0;
  for (const { pieceId } of ring.members) {
    const piece = pieceOf(garment, pieceId);
    const line = piece && !isGuide(piece) && lineAcrossPiece(piece, depth);
    if (!piece || !line) continue;
    met += 1;
    // Shortened first at the hem, lengthened last at it: so the one undoes the other step by step.
    const steps = [
      (of: Piece) => lengthenAcross(of, line, by * (1 - atHem)),
      (of: Piece) => (atHem === 0 ? of : lengthenAtHem(of, by * atHem)),
    ];
    const made = inTurn(piece, by < 0 ? steps.reverse() : steps);
    if (made.kind === 'refused') return { kind: 'ring-not-lengthened', why: made.why, pieceId };
    changed = withPiece(changed, pieceId, () => made.piece);
  }
  return met > 0 ? changed : { kind: 'ring-not-lengthened', why: 'no-piece-met' };
}

/**
 * The line across a piece at a depth below its waist: from side to side as the level lies, moving along the piece's centre
 * line, its grain, or square to the middle of its waist. `undefined` where the piece has no waist or ends above it.
 */
export function lineAcrossPiece(piece: Piece, depth: number): LineAcross | undefined {
  const level = depth > 0 ? levelLine(piece, depth) : undefined;
  const [first, last] = [level?.runs[0], level?.runs.at(-1)];
  const down = first && downOf(piece);
  if (!first || !last || !down) return undefined;
  const ends = { from: pathStart(first), to: pathEnd(last) };
  const along = unit(vectorBetween(ends.from, ends.to));
  if (!along) return undefined;
  // What lies below must lie to the right of the line's way.
  const isForwards = dot(quarterTurn(along), down) > 0;
  return isForwards ? { ...ends, way: down } : { from: ends.to, to: ends.from, way: down };
}

/** Straight down a piece from its waist, by what a change further down leaves as it is. */
function downOf(piece: Piece): Vector | undefined {
  const index = piece.edges.findIndex(({ role }) => role === 'waist');
  const waist = outlineOf(piece).edges[index];
  if (!waist) return undefined;
  const centre = waistCentre(piece, index);
  if (centre !== 'middle') return waistAxis(piece, index, centre, AXIS_DEPTH)?.down;
  const inward = signedArea(outlineOf(piece).whole) > 0 ? 1 : -1;
  const square = scaleVector(quarterTurn(pathAtLength(waist, pathLength(waist) / 2).tangent), inward);
  const grain = piece.grain && unit(vectorBetween(piece.grain.from, piece.grain.to));
  if (!grain) return square;
  const lean = dot(grain, square);
  return Math.abs(lean) < GRAIN_DOWN ? square : scaleVector(grain, Math.sign(lean));
}

/** A grain that leans more than 20 degrees (its cosine) from straight down is a bias or crosswise one. */
const GRAIN_DOWN = Math.cos(Math.PI / 9);

function inTurn(
  piece: Piece,
  steps: readonly ((of: Piece) => Piece | NotLengthened)[],
): { readonly kind: 'made'; readonly piece: Piece } | { readonly kind: 'refused'; readonly why: NotLengthened['why'] } {
  let made = piece;
  for (const step of steps) {
    const next = step(made);
    if ('why' in next) return { kind: 'refused', why: next.why };
    made = next;
  }
  return { kind: 'made', piece: made };
}
