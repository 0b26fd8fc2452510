/**
 * From a pattern piece to what is laid: its cut line with the grain turned along the cloth, how it may be turned, and how
 * often it is laid on cloth that lies so.
 */

import type { PieceJoin } from '../garment/garment-cloth';
import { edgeEnds } from '../garment/outline';
import type { Piece } from '../garment/piece';
import { rotationAbout, transformPoint } from '../geometry/affine';
import { boxOfPoints } from '../geometry/bounds';
import { angleOf, type Point, vectorBetween } from '../geometry/point';
import { type Ring, ringArea } from '../geometry/polygon';
import { unionOfAreas } from '../geometry/polygon-boolean';
import { cutLine } from '../seams/cut-line';
import type { Cloth } from './cloth';
import { cutOutline } from './cut-outline';
import type { Stance, ToLay } from './lay-task';
import { otherHand } from './lay-task';
import { sameEitherSide } from './same-either-side';

/** How the straight of the grain lies on the cloth. */
export type LaidGrain = 'straight' | 'cross' | 'bias';

/** How pieces are laid. */
export interface LayingChoice {
  readonly grain: LaidGrain;
  /** How far the flat outline may stand off the cut line, in mm; always outside it. */
  readonly tolerance: number;
  /** How far off the grain a piece may be tilted either way; 0 unless she permits it. */
  readonly tilt?: number;
  /** Lay pieces on the fold where the cloth has one, or always open them out and cut them single. */
  readonly onFold?: 'on-fold' | 'opened-out';
  /** Pieces cut in two and joined. */
  readonly pieced?: readonly PieceJoin[];
}

/** What is laid for a piece: one entry, or two where both hands are cut from single cloth. Or why it cannot be. */
export type PieceToLay =
  | { readonly kind: 'to-lay'; readonly entries: readonly ToLay[]; readonly spare: number }
  | { readonly kind: 'no-cut-line'; readonly pieceId: string }
  | { readonly kind: 'no-grain'; readonly pieceId: string }
  /** Cut on the fold, but no straight edge of it is a fold. */
  | { readonly kind: 'no-fold-edge'; readonly pieceId: string }
  | { readonly kind: 'cannot-open-out'; readonly pieceId: string };

/** A fold edge this near to running with the grain, or square to it, does run so (radians: 1 in 100). */
const ALONG = 0.01;

/** Tilts within what is allowed lie a degree apart, or further where that would make too many of them either way. */
const TILT_STEP = Math.PI / 180;
const MOST_TILTS = 4;

/** Points this near to the fold lie on it, in mm. */
const ON_FOLD = 0.01;

/**
 * What is laid for a piece, its count and hands by how the cloth lies. `spare` is how many pieces more than wanted are cut
 * because cloth lies double. A piece on the fold with no grain of its own has it along the fold.
 */
export function pieceToLay(
  piece: Piece,
  cloth: Pick<Cloth, 'folded' | 'nap' | 'shape'>,
  choice: LayingChoice,
): PieceToLay {
  const cut = cutLine(piece);
  if (cut.kind !== 'cut-line') return { kind: 'no-cut-line', pieceId: piece.id };
  const fold = foldOf(piece);
  if (piece.cut.how === 'fold' && !fold) return { kind: 'no-fold-edge', pieceId: piece.id };
  const grain = grainAngle(piece, fold);
  if (grain === undefined) return { kind: 'no-grain', pieceId: piece.id };
  const turn = rotationAbout({ x: 0, y: 0 }, -grain);
  const onGrain = cutOutline(cut.whole, choice.tolerance).map((point) => transformPoint(turn, point));
  const double = cloth.folded !== 'open' && !cloth.shape;
  const stances = stancesOf(choice, cloth.nap);
  if (piece.cut.how !== 'fold' || !fold) return entriesFor(piece, onGrain, stances, double);
  const line = upTheGrain(transformPoint(turn, fold[0]), transformPoint(turn, fold[1]));
  const held = double && choice.onFold !== 'opened-out' ? heldOnFold(line, cloth.folded, choice.grain) : undefined;
  if (held !== undefined) {
    const outline = onFoldOutline(onGrain, line);
    // Turned end for end the whole piece is the same, so its half may be turned over along the fold.
    const straight: Stance = { turn: held === 'along' ? 0 : -Math.PI / 2 };
    const ways: Stance[] = cloth.nap === 'none' ? [straight, { ...straight, over: 'mirrored' }] : [straight];
    const entry: ToLay = { id: piece.id, outline, count: piece.cut.count, stances: ways, onFold: held };
    return { kind: 'to-lay', spare: 0, entries: [entry] };
  }
  const whole = openedOut(onGrain, line);
  if (!whole) return { kind: 'cannot-open-out', pieceId: piece.id };
  const count = double ? Math.ceil(piece.cut.count / 2) : piece.cut.count;
  const spare = double ? 2 * count - piece.cut.count : 0;
  return { kind: 'to-lay', spare, entries: [{ id: piece.id, outline: whole, count, stances }] };
}

/** The ends of the piece's fold edge, if it has a straight one. */
function foldOf(piece: Piece): [Point, Point] | undefined {
  const index = piece.edges.findIndex(({ role, shape }) => role === 'fold' && shape.kind === 'straight');
  if (index < 0) return undefined;
  const { start, end } = edgeEnds(piece, index);
  return [start, end];
}

function grainAngle(piece: Piece, fold: [Point, Point] | undefined): number | undefined {
  if (piece.grain) return angleOf(vectorBetween(piece.grain.from, piece.grain.to));
  return fold && angleOf(vectorBetween(fold[0], fold[1]));
}

function stancesOf({ grain, tilt = 0 }: LayingChoice, nap: Cloth['nap']): Stance[] {
  const base = grain === 'straight' ? [0] : grain === 'cross' ? [Math.PI / 2] : [Math.PI / 4, -Math.PI / 4];
  const turns = nap === 'none' ? base.flatMap((turn) => [turn, turn + Math.PI]) : base;
  return [0, ...tiltsWithin(tilt)].flatMap((by) => turns.map((turn) => ({ turn: turn + by })));
}

/** The angles a piece is tried at within a tilt allowed either way: the whole of it, and between by a degree or so. */
function tiltsWithin(tilt: number): number[] {
  const steps = Math.min(MOST_TILTS, Math.ceil(tilt / TILT_STEP));
  return Array.from({ length: steps }, (_, k) => (tilt * (steps - k)) / steps).flatMap((by) => [by, -by]);
}

function entriesFor(piece: Piece, outline: Ring, stances: readonly Stance[], double: boolean): PieceToLay {
  const { how, count } = piece.cut;
  const entry = (id: string, times: number, over?: 'mirrored'): ToLay => {
    const ring = over ? mirrored(outline) : outline;
    return { id, outline: ring, count: times, stances };
  };
  if (double) {
    const inTwos = how === 'pair' || sameEitherSide(outline);
    const times = inTwos ? Math.ceil(count / 2) : count;
    return { kind: 'to-lay', spare: 2 * times - count, entries: [entry(piece.id, times)] };
  }
  if (how === 'single') return { kind: 'to-lay', spare: 0, entries: [entry(piece.id, count)] };
  const left = Math.floor(count / 2);
  const entries = [entry(piece.id, count - left), entry(otherHand(piece.id), left, 'mirrored')];
  return { kind: 'to-lay', spare: 0, entries: entries.filter((one) => one.count > 0) };
}

/** The other hand of an outline: mirrored in its grain, so that its top stays its top. */
function mirrored(outline: Ring): Ring {
  return outline.map(({ x, y }) => ({ x, y: -y })).reverse();
}

/** Whether a fold edge can lie on the cloth's fold: along it or across it, with the grain as wanted. */
function heldOnFold([a, b]: [Point, Point], folded: Cloth['folded'], grain: LaidGrain): 'along' | 'across' | undefined {
  const angle = Math.abs(angleOf(vectorBetween(a, b)));
  const withGrain = Math.min(angle, Math.PI - angle) < ALONG;
  const acrossGrain = Math.abs(angle - Math.PI / 2) < ALONG;
  const along = grain === 'straight' ? withGrain : grain === 'cross' && acrossGrain;
  const across = grain === 'straight' ? acrossGrain : grain === 'cross' && withGrain;
  if (folded === 'lengthwise' && along) return 'along';
  return folded === 'crosswise' && across ? 'across' : undefined;
}

/** The outline turned so that its fold lies exactly on y = 0 (along) with the piece beyond it. */
function onFoldOutline(outline: Ring, line: [Point, Point]): Ring {
  return besideFold(outline, line).map(({ x, y }) => ({ x, y: Math.abs(y) < ON_FOLD ? 0 : y }));
}

/** The ends of a fold so that it runs the way the grain does, and not against it. */
function upTheGrain(a: Point, b: Point): [Point, Point] {
  return b.x < a.x ? [b, a] : [a, b];
}

/** The outline with its fold moved to the line y = 0 and the piece below it, mirrored if need be: its other half. */
function besideFold(outline: Ring, [a, b]: [Point, Point]): Point[] {
  const turn = rotationAbout(a, -angleOf(vectorBetween(a, b)));
  const laid = outline.map((point) => transformPoint(turn, point)).map(({ x, y }) => ({ x, y: y - a.y }));
  const box = boxOfPoints(laid);
  const below = box !== undefined && box.maxY >= -box.minY;
  return below ? laid : laid.map(({ x, y }) => ({ x, y: -y })).reverse();
}

/** A half put together with its mirror image in the fold; `undefined` where the two do not make one ring. */
function openedOut(outline: Ring, [a, b]: [Point, Point]): Ring | undefined {
  const half = onFoldOutline(outline, [a, b]);
  const both = unionOfAreas([half], [half.map(({ x, y }) => ({ x, y: -y })).reverse()]);
  if (both.kind === 'unsure') return undefined;
  const ring = [...both.rings].sort((p, q) => Math.abs(ringArea(q)) - Math.abs(ringArea(p)))[0];
  if (!ring) return undefined;
  // Back to where the grain runs along x.
  const back = rotationAbout({ x: 0, y: 0 }, angleOf(vectorBetween(a, b)));
  return ring.map((point) => transformPoint(back, point));
}
