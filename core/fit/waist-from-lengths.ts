import type { Garment, Ring } from '../garment/garment';
import type { LengthName, MeasureSet } from '../garment/measure';
import { neighbourIndex, outlineOf } from '../garment/outline';
import type { Piece } from '../garment/piece';
import { edgeIndex, pieceOf, withCorner, withEdge, withPiece } from '../garment/with-piece';
import { pathLength } from '../geometry/path';
import { between, move, unit, vectorBetween } from '../geometry/point';
import { carryMarks } from '../shaping/carry-marks';
import { rootBetween } from '../shaping/root';
import { type NotTakenIn, takeIn } from '../shaping/take-in';
import { type NoPanelsRound, type PanelRound, type PanelsRoundOptions, panelsRound } from './panels-round';
import { type Reading, roundCurve, type Spread } from './round-curve';

/** Lengths from the waist to one level (the floor) at the four places; mm. */
export interface FourLengths {
  readonly front: number;
  readonly right: number;
  readonly back: number;
  readonly left: number;
}

/** What each panel's waist was raised by at its front and back edge (mm; less than 0 is lowered). */
export interface PanelRaised {
  readonly pieceId: string;
  readonly front: number;
  readonly back: number;
}

export type WaistFromLengths =
  | { readonly kind: 'waist-from-lengths'; readonly garment: Garment; readonly panels: readonly PanelRaised[] }
  | NoPanelsRound
  | {
      readonly kind: 'no-waist-from-lengths';
      readonly why: NotTakenIn['why'] | 'length-out-of-reach';
      readonly pieceId: string;
    };

export interface WaistFromLengthsOptions extends PanelsRoundOptions {
  readonly spread?: Spread;
}

/** Less than this (mm) is rounding and moves nothing. */
const NO_CHANGE = 1e-9;

/** Between its ends a panel's waist is given its height at this many places more. */
const PLACES = 5;

/** A waist is brought back to its length within this (mm). */
const LENGTH_RIGHT = 1e-4;

/** The corners of a waist are moved across by no more than this share of its length to keep it. */
const MOST_ACROSS = 0.5;

/**
 * The waist of every panel of a ring raised by how much longer the way to the floor is there than at centre front, so
 * that the hem stays level: the difference is always taken at the top edge (The Perfect Dressmaking System, 1914). The
 * centre front stays; each waist keeps the sewn length it had, its corners moving across where they must. With smooth
 * spreading the centres stay square and the two sides of a seam go on in line. The panels must hang level as drawn.
 */
export function waistFromLengths(
  garment: Garment,
  ring: Ring,
  lengths: FourLengths,
  { spread = 'smooth', ...places }: WaistFromLengthsOptions = {},
): WaistFromLengths {
  const panels = panelsRound(garment, ring, places);
  if ('kind' in panels) return panels;
  const height = roundCurve(readingsOf(lengths), spread);
  if (!height) throw new Error('four readings make a curve');
  const rise = (at: number) => height(at) - lengths.front;
  let changed = garment;
  for (const panel of panels) {
    const piece = pieceOf(garment, panel.pieceId);
    if (!piece) continue;
    const raised = raisedPanel(piece, panel, rise);
    if ('why' in raised) return { kind: 'no-waist-from-lengths', why: raised.why, pieceId: piece.id };
    changed = withPiece(changed, piece.id, () => raised);
  }
  const raised = panels.map(({ pieceId, from, to }) => ({ pieceId, front: rise(from), back: rise(to) }));
  return { kind: 'waist-from-lengths', garment: changed, panels: raised };
}

/** The four lengths as readings round the body. */
export function readingsOf({ front, right, back, left }: FourLengths): readonly Reading[] {
  return [
    { at: 0, value: front },
    { at: 0.25, value: right },
    { at: 0.5, value: back },
    { at: 0.75, value: left },
  ];
}

/** The wearer's lengths from waist to floor, right and left apart where she was measured so; `undefined` until all are there. */
export function lengthsToFloor({ measures }: Pick<MeasureSet, 'measures'>): FourLengths | undefined {
  const of = (name: LengthName) => measures[name];
  const [front, side, back] = [of('waistToFloorFront'), of('waistToFloorSide'), of('waistToFloorBack')];
  if (!front || !side || !back) return undefined;
  const mean = (one: typeof front) => (one.length + (one.right ?? one.length)) / 2;
  return { front: mean(front), right: side.right ?? side.length, back: mean(back), left: side.length };
}

/** The place round the body that lies a share of the way along a panel's edge as drawn from its start. */
export function placeAlong({ from, to, front }: PanelRound, share: number): number {
  return front === 'start' ? from + (to - from) * share : to + (from - to) * share;
}

function raisedPanel(
  piece: Piece,
  panel: PanelRound,
  rise: (at: number) => number,
): Piece | { readonly why: NotTakenIn['why'] | 'length-out-of-reach' } {
  const index = edgeIndex(piece, panel.waistEdgeId);
  const lengthOf = (of: Piece) => pathLength(outlineOf(of).edges[index] ?? []);
  const total = lengthOf(piece);
  const pins = Array.from({ length: PLACES + 2 }, (_, i) => {
    const share = i / (PLACES + 1);
    return { along: total * share, by: -rise(placeAlong(panel, share)) };
  });
  if (pins.every(({ by }) => Math.abs(by) < NO_CHANGE)) return piece;
  const raised = takeIn(piece, panel.waistEdgeId, pins);
  if ('why' in raised) return raised;
  const free = freeWaist(raised, index);
  const wider = (by: number) => movedAcross(free, index, by);
  const most = total * MOST_ACROSS;
  const by = rootBetween((each) => lengthOf(wider(each)) - total, -most, most, LENGTH_RIGHT / 10);
  return by === undefined ? { why: 'length-out-of-reach' } : carriedFrom(piece, wider(by), panel.waistEdgeId);
}

/** The waist without end rules of its own: it stands as its height has it, square only at a fold or opening. */
function freeWaist(piece: Piece, index: number): Piece {
  const rule = (step: -1 | 1) => (isCentre(piece, index, step) ? 'square' : 'free');
  return withEdge(piece, piece.edges[index]?.id ?? '', (edge) =>
    edge.shape.kind === 'curve' ? { ...edge, shape: { ...edge.shape, leaves: rule(-1), meets: rule(1) } } : edge,
  );
}

function isCentre(piece: Piece, index: number, step: -1 | 1): boolean {
  const role = piece.edges[neighbourIndex(piece, index, step)]?.role;
  return role === 'fold' || role === 'opening';
}

/** The waist drawn out (in, for less than 0) by `by` mm along its chord, shared by the ends that are no centre. */
function movedAcross(piece: Piece, index: number, by: number): Piece {
  const [start, end] = [piece.corners[index], piece.corners[(index + 1) % piece.corners.length]];
  const chord = start && end && unit(vectorBetween(start.at, end.at));
  if (!start || !end || !chord) return piece;
  const [atStart, atEnd] = [!isCentre(piece, index, -1), !isCentre(piece, index, 1)];
  const share = atStart === atEnd ? 0.5 : 1;
  const moved = {
    start: atStart || !atEnd ? move(start.at, chord, -by * share) : start.at,
    end: atEnd || !atStart ? move(end.at, chord, by * share) : end.at,
  };
  const chordLength = Math.hypot(end.at.x - start.at.x, end.at.y - start.at.y);
  const carried = (point: typeof start.at) => {
    const along = vectorBetween(start.at, point);
    const share = (along.dx * chord.dx + along.dy * chord.dy) / chordLength;
    const [was, is] = [between(start.at, end.at, share), between(moved.start, moved.end, share)];
    return move(point, vectorBetween(was, is));
  };
  const shaped = withEdge(piece, piece.edges[index]?.id ?? '', (edge) =>
    edge.shape.kind === 'curve'
      ? { ...edge, shape: { ...edge.shape, through: edge.shape.through.map(carried) } }
      : edge,
  );
  const first = withCorner(shaped, start.id, (corner) => ({ ...corner, at: moved.start }));
  return withCorner(first, end.id, (corner) => ({ ...corner, at: moved.end }));
}

/** The waist has its old length, so its darts and notches lie as far along it as they did. */
function carriedFrom(before: Piece, after: Piece, edgeId: string): Piece {
  const marks = [...before.darts, ...before.notches].filter((mark) => mark.edgeId === edgeId).map(({ along }) => along);
  let next = 0;
  return carryMarks(after, edgeId, () => marks[next++] ?? 0);
}
