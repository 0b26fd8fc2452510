import type { Garment, Ring } from '../garment/garment';
import { neighbourIndex } from '../garment/outline';
import type { Piece } from '../garment/piece';
import { type EdgeRef, isSameEdge } from '../garment/seam';
import { edgeIndex } from '../garment/with-piece';
import { levelLine } from '../shaping/level-line';
import { drawnLength } from './level-hem';
import { frontOf, type PanelRound } from './panels-round';
import { ringPieces, type WornPiece } from './round-body';

/** Where the length of a garment is looked at. */
export type LengthPlace = 'front' | 'side' | 'back';

/** One drawn width of a piece in a half of the body. `front` is not there where it may lie either way. */
interface Width {
  readonly piece: Piece;
  readonly waistEdgeId: string;
  readonly long: number;
  readonly front: PanelRound['front'] | undefined;
  /** How far below the waist it begins (mm). */
  readonly top: number;
}

/** The widths of one piece in a half; one may lie over centre front or centre back, its middle there. */
interface Run {
  readonly widths: readonly Width[];
  readonly over?: readonly ('front' | 'back')[];
}

/** A seam this near to the middle of the half waist, as a share of it, is the side seam. */
const SIDE_SEAM = 1 / 12;

/** Shares nearer than this are one: rounding size. */
const SAME = 1e-9;

/**
 * How long a ring hangs from its waist to its hem at a place (mm): at centre front and centre back along the fold or edge
 * that lies there, or down the middle of a panel that lies across it; at the side along the side seam, or down the panel
 * that lies there. The longer where the two sides differ, or where a panel may lie in more than one way. `undefined`
 * without waist or hem.
 */
export function lengthAt(garment: Garment, ring: Ring, at: LengthPlace): number | undefined {
  const worn = ringPieces(garment, ring).filter(({ times }) => times > 0);
  // Of a yoke and the skirt below it the skirt says how long both are.
  const hemmed = worn.filter(({ piece }) => piece.edges.some(({ role }) => role === 'hem'));
  const members = worn.some(({ from }) => from) ? hemmed : worn;
  const sides = members.some(({ piece }) => piece.side) ? (['right', 'left'] as const) : ([undefined] as const);
  const found = sides.flatMap((side) => {
    const half = members.filter(({ piece }) => piece.side === undefined || piece.side === side);
    return waysToLie(garment, half).flatMap((runs) => lengthsAt(runs, at));
  });
  const longest = Math.max(0, ...found);
  return longest > 0 ? longest : undefined;
}

/** The runs of a half in their order from centre front to centre back; more than one where equal gores may lie so or so. */
function waysToLie(garment: Garment, members: readonly WornPiece[]): Run[][] {
  const isOnly = members.length === 1;
  const runs = members.map((member, i) => runsOf(garment, member, members[i - 1]?.piece, i, members.length));
  const known = runs.map(([first]) => first).filter((run) => run !== undefined);
  return isOnly ? (runs[0] ?? []).map((run) => [run]) : [known];
}

/** How one piece may lie in a half: mostly one way. */
function runsOf(garment: Garment, member: WornPiece, before: Piece | undefined, index: number, count: number): Run[] {
  const { piece, from } = member;
  const waist = piece.edges.find(({ id, role }) => (from ? id === from.edgeId : role === 'waist'));
  const long = levelLine(piece, 0, from?.edgeId)?.length ?? 0;
  const top = from?.depth ?? 0;
  if (!waist || !(long > 0)) return [];
  const [isFirst, isLast] = [index === 0, index === count - 1];
  const times = Math.max(1, Math.round(member.times));
  const front = frontOf(garment, piece, waist, before, { isFirst, isLast });
  const width = (end: PanelRound['front'] | undefined): Width => ({
    piece,
    waistEdgeId: waist.id,
    long,
    top,
    front: end,
  });
  const foldEnd = foldBeside(piece, waist.id);
  if (foldEnd) {
    const widths = Math.max(1, Math.round(piece.side ? times : times / 2));
    const startsOnFold = isFirst && (isLast || widths % 2 === 1);
    return [{ widths: inTurn(widths, startsOnFold ? foldEnd : other(foldEnd), width) }];
  }
  if (piece.side) return [{ widths: copies(garment, piece, waist.id, times, front, width) }];
  const half = Math.ceil(times / 2);
  const inHalf: Run = { widths: copies(garment, piece, waist.id, half, front, width) };
  if (times % 2 === 1) {
    if (isFirst) return [{ ...inHalf, over: ['front'] }];
    return [isLast ? { ...inHalf, over: ['back'] } : inHalf];
  }
  if (!isFirst || !isLast || piece.cut.how === 'pair' || opensBeside(piece, waist.id)) return [inHalf];
  const across: Run = { widths: Array.from({ length: half + 1 }, () => width(undefined)), over: ['front', 'back'] };
  // Two of one kind meet at the sides; of more, a panel or a seam may lie at the centre.
  return times === 2 ? [across] : [inHalf, across];
}

/** Widths that turn every second time, as the two halves of a piece on the fold do. */
function inTurn(count: number, first: PanelRound['front'], width: (front: PanelRound['front']) => Width): Width[] {
  return Array.from({ length: count }, (_, i) => width(i % 2 === 0 ? first : other(first)));
}

/** The same piece several times in a half: turned every second time where its far edge is sewn to its own like. */
function copies(
  garment: Garment,
  piece: Piece,
  waistEdgeId: string,
  count: number,
  front: PanelRound['front'] | undefined,
  width: (front: PanelRound['front'] | undefined) => Width,
): Width[] {
  if (!front || count < 2) return Array.from({ length: count }, () => width(front));
  const [near, far] = [beside(piece, waistEdgeId, front), beside(piece, waistEdgeId, other(front))];
  if (isSewnTo(garment, far, far)) return inTurn(count, front, width);
  const isOneWay = isSewnTo(garment, near, far);
  return Array.from({ length: count }, (_, i) => width(i === 0 || isOneWay ? front : undefined));
}

function lengthsAt(runs: readonly Run[], at: LengthPlace): number[] {
  const widths = runs.flatMap((run) => run.widths);
  const overs = runs.flatMap(({ over }) => over ?? []);
  const overFront = overs.includes('front') ? (widths[0]?.long ?? 0) / 2 : 0;
  const overBack = overs.includes('back') ? (widths.at(-1)?.long ?? 0) / 2 : 0;
  const total = widths.reduce((sum, { long }) => sum + long, 0) - overFront - overBack;
  if (!(total > 0)) return [];
  let past = -overFront;
  const placed = widths.map((width) => {
    const from = past / total;
    past += width.long;
    return { width, from, to: past / total };
  });
  const place = at === 'front' ? 0 : at === 'back' ? 1 : sideOf(placed.map(({ to }) => to));
  return placed.flatMap(({ width, from, to }) => {
    if (place < from - SAME || place > to + SAME) return [];
    const share = (place - from) / (to - from);
    const shares = width.front ? [share] : [share, 1 - share];
    return shares.map((each) => {
      const exact = Math.abs(each) < SAME ? 0 : Math.abs(each - 1) < SAME ? 1 : each;
      const { piece, waistEdgeId, top } = width;
      return top + drawnLength(piece, { waistEdgeId, front: width.front ?? 'start' }, exact);
    });
  });
}

/** Where the side lies, as a share of the half waist: at the seam nearest the middle, or in the middle itself. */
function sideOf(seams: readonly number[]): number {
  const off = (share: number) => Math.abs(share - 0.5);
  const nearest = seams.reduce((best, share) => (off(share) < off(best) ? share : best), 1);
  return off(nearest) <= SIDE_SEAM ? nearest : 0.5;
}

function other(end: PanelRound['front']): PanelRound['front'] {
  return end === 'start' ? 'end' : 'start';
}

/** The edge of a piece beside its waist, at one end of it. */
function beside(piece: Piece, waistEdgeId: string, end: PanelRound['front']): EdgeRef | undefined {
  const edge = piece.edges[neighbourIndex(piece, edgeIndex(piece, waistEdgeId), end === 'start' ? -1 : 1)];
  return edge && { pieceId: piece.id, edgeId: edge.id };
}

function roleBeside(piece: Piece, waistEdgeId: string, end: PanelRound['front']) {
  const ref = beside(piece, waistEdgeId, end);
  return piece.edges.find(({ id }) => id === ref?.edgeId)?.role;
}

/** At which end of the waist of a piece cut on the fold its fold lies. */
function foldBeside(piece: Piece, waistEdgeId: string): PanelRound['front'] | undefined {
  if (piece.cut.how !== 'fold') return undefined;
  return (['start', 'end'] as const).find((end) => roleBeside(piece, waistEdgeId, end) === 'fold');
}

function opensBeside(piece: Piece, waistEdgeId: string): boolean {
  return (['start', 'end'] as const).some((end) => roleBeside(piece, waistEdgeId, end) === 'opening');
}

function isSewnTo(garment: Garment, a: EdgeRef | undefined, b: EdgeRef | undefined): boolean {
  if (!a || !b) return false;
  return (garment.seams ?? []).some(({ one, other: two }) => {
    const has = (side: readonly EdgeRef[], edge: EdgeRef) => side.some((each) => isSameEdge(each, edge));
    return (has(one, a) && has(two, b)) || (has(one, b) && has(two, a));
  });
}
