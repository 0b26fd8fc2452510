/**
 * The two sides of a stored seam as runs to be walked from one end to the other.
 *
 * `one` is walked the way its edges are drawn, `other` against it or along with it as the seam says. Where edges of
 * several pieces follow one another, a piece may have to be walked the other way round: seams of the garment that join
 * the pieces beside the run say so (a front and a back both drawn from the centre to the side meet at the side).
 * Limit: without such a seam every piece of a run is taken as it is drawn.
 */
import type { Garment } from '../garment/garment';
import { neighbourIndex, outlineOf } from '../garment/outline';
import type { Notch, Piece } from '../garment/piece';
import { type EdgeRef, isSameEdge, type Seam, type SeamEdge } from '../garment/seam';
import { edgeIndex, pieceOf } from '../garment/with-piece';
import { pathAtLength } from '../geometry/path';
import type { Point, Vector } from '../geometry/point';
import { scaleVector } from '../geometry/point';
import { windingOf } from './corner-angle';
import { netEdgeLength } from './edge-length';
import { drawnAlong } from './sewn-along';
import { SEAM_MATCH, type WalkedEdge, type WalkedNotch, walkedEdge } from './walk';

/** One coming of an edge in a run: `from` mm after the walk began, `length` long as sewn. */
export interface SeamStretch extends EdgeRef {
  readonly piece: Piece;
  readonly from: number;
  readonly length: number;
  readonly backwards: boolean;
}

/** A notch met on the walk, with the edge it is on. */
export interface SeamNotch extends WalkedNotch, EdgeRef {
  readonly count: Notch['count'];
}

/** One side of a seam: its run, and the edges in it with how often each comes in the whole seam. */
export interface SeamSide extends WalkedEdge<SeamNotch> {
  /** What of its edges lies beyond the walk, over the whole seam (mm); 0 for a side that laps over nowhere. */
  readonly lap: number;
  readonly stretches: readonly SeamStretch[];
  readonly edges: readonly { readonly ref: EdgeRef; readonly times: number }[];
}

/** Both sides. The whole seam is the walk `repeats` times over: a half garment is walked once, not twice. */
export interface SeamSides {
  readonly one: SeamSide;
  readonly other: SeamSide;
  readonly repeats: number;
}

/** A place on a side of a seam: on which piece, where, and the unit direction of the walk. */
export interface PlaceOnSide extends EdgeRef {
  readonly piece: Piece;
  readonly point: Point;
  readonly direction: Vector;
  /** On which hand the piece lies of someone who walks: 1 on the right to the eye, -1 on the left. */
  readonly hand: 1 | -1;
}

/** The sides of a seam of the garment; `undefined` when a side has no edge, or one that is no longer there. */
export function seamSides(garment: Garment, seam: Seam): SeamSides | undefined {
  const times = [...seam.one, ...seam.other].map((edge) => edge.times ?? 1);
  const repeats = times.reduce(commonDivisor);
  const one = sideOf(garment, seam.one, repeats, 'forwards');
  const other = sideOf(garment, seam.other, repeats, seam.way === 'same' ? 'forwards' : 'backwards');
  if (!one || !other) return undefined;
  if (!seam.lap) return { one, other, repeats };
  const { side, length, at } = seam.lap;
  const lapped = (whole: SeamSide) => withoutLap(whole, { length: length / repeats, at, whole: length });
  return side === 'one' ? { one: lapped(one), other, repeats } : { one, other: lapped(other), repeats };
}

/** Where a lap lies unless she says otherwise: away from the fold of the side that laps over, else at the end of the walk. */
export function lapEnd(garment: Garment, seam: Seam, side: 'one' | 'other'): 'start' | 'end' {
  const { lap: _, ...bare } = seam;
  const last = seamSides(garment, bare)?.[side].stretches.at(-1);
  if (!last) return 'end';
  return roleBeside(garment, [last], last.backwards ? -1 : 1) === 'fold' ? 'start' : 'end';
}

/** A side walked only where it is sewn. Notches on the lap, and the one that marks where it begins, meet none. */
function withoutLap(
  side: SeamSide,
  { length, at, whole }: { readonly length: number; readonly at: 'start' | 'end'; readonly whole: number },
): SeamSide {
  const past = at === 'start' ? length : 0;
  const sewn = Math.max(0, side.length - length);
  return {
    ...side,
    lap: whole,
    length: sewn,
    stretches: side.stretches.map((stretch) => ({ ...stretch, from: stretch.from - past })),
    notches: side.notches
      .map((notch) => ({ ...notch, along: notch.along - past }))
      .filter(({ along }) => (at === 'start' ? along > SEAM_MATCH : along < sewn - SEAM_MATCH)),
  };
}

/** The place `along` mm from where the walk begins, its lengths as sewn; beyond the ends, the ends. */
export function placeOnSide(side: SeamSide, along: number): PlaceOnSide {
  const { stretches } = side;
  const stretch = stretches.find(({ from, length }) => along < from + length) ?? stretches.at(-1);
  if (!stretch) throw new Error('a side of a seam has at least one edge');
  const { piece, pieceId, edgeId, backwards } = stretch;
  const drawn = drawnPlace(stretch, along);
  const path = outlineOf(piece).edges[edgeIndex(piece, edgeId)] ?? [];
  const { point, tangent } = pathAtLength(path, drawn);
  const hand = (windingOf(piece) * (backwards ? -1 : 1)) as 1 | -1;
  return { piece, pieceId, edgeId, point, direction: backwards ? scaleVector(tangent, -1) : tangent, hand };
}

/** Where `along` the walk lies on the drawn line of the edge of a stretch, mm from that edge's start. */
export function drawnPlace({ piece, edgeId, from, length, backwards }: SeamStretch, along: number): number {
  const local = Math.min(length, Math.max(0, along - from));
  return drawnAlong(piece, edgeId, backwards ? length - local : local) ?? 0;
}

/** Edges of one piece that follow one another as drawn; they are walked one way. */
type Block = readonly SeamEdge[];

function sideOf(
  garment: Garment,
  edges: readonly SeamEdge[],
  repeats: number,
  way: 'forwards' | 'backwards',
): SeamSide | undefined {
  const blocks = blocksOf(garment, edges);
  const turned = blocks.map(() => false);
  blocks.forEach((block, i) => {
    turned[i] = isTurned(garment, blocks[i - 1], turned[i - 1] ?? false, block, blocks[i + 1]);
  });
  const walked = blocks.flatMap((block, i) => walkedBlock(garment, block, turned[i] ?? false, repeats));
  const ordered =
    way === 'forwards' ? walked : walked.toReversed().map((each) => ({ ...each, backwards: !each.backwards }));
  const stretches: SeamStretch[] = [];
  let from = 0;
  for (const { ref, backwards } of ordered) {
    const piece = pieceOf(garment, ref.pieceId);
    const length = piece && netEdgeLength(piece, ref.edgeId);
    if (!piece || length === undefined) return undefined;
    stretches.push({ pieceId: ref.pieceId, edgeId: ref.edgeId, piece, from, length, backwards });
    from += length;
  }
  if (stretches.length === 0) return undefined;
  const counted = edges.map((edge) => ({ ref: edge, times: edge.times ?? 1 }));
  return { stretches, edges: counted, lap: 0, length: from, notches: stretches.flatMap(notchesOf) };
}

function notchesOf({ piece, pieceId, edgeId, from, backwards }: SeamStretch): SeamNotch[] {
  const walked = walkedEdge(piece, edgeId, backwards ? 'backwards' : 'forwards');
  return (walked?.notches ?? []).map((notch) => ({ ...notch, pieceId, edgeId, along: from + notch.along }));
}

function blocksOf(garment: Garment, edges: readonly SeamEdge[]): Block[] {
  const blocks: SeamEdge[][] = [];
  for (const edge of edges) {
    const block = blocks.at(-1);
    const before = block?.at(-1);
    if (block && before && (before.times ?? 1) === (edge.times ?? 1) && followsOn(garment, before, edge)) {
      block.push(edge);
    } else blocks.push([edge]);
  }
  return blocks;
}

function followsOn(garment: Garment, before: EdgeRef, after: EdgeRef): boolean {
  const next = beside(garment, before, 1);
  return next !== undefined && isSameEdge(next, after);
}

/** Whether a block must be walked against how it is drawn, for the one before it, or at the beginning the one after. */
function isTurned(
  garment: Garment,
  before: Block | undefined,
  beforeTurned: boolean,
  block: Block,
  after: Block | undefined,
): boolean {
  if (before) {
    const exit = besideBlock(garment, before, beforeTurned ? -1 : 1);
    return (
      joins(garment, exit, besideBlock(garment, block, 1)) && !joins(garment, exit, besideBlock(garment, block, -1))
    );
  }
  if (!after) return false;
  const next = ([-1, 1] as const).map((step) => besideBlock(garment, after, step));
  const meets = (step: -1 | 1) => next.some((edge) => joins(garment, besideBlock(garment, block, step), edge));
  return meets(-1) && !meets(1);
}

/** Whether some seam of the garment sews one edge to the other. */
function joins(garment: Garment, a: EdgeRef | undefined, b: EdgeRef | undefined): boolean {
  if (!a || !b) return false;
  const has = (side: readonly SeamEdge[], edge: EdgeRef) => side.some((each) => isSameEdge(each, edge));
  return (garment.seams ?? []).some(
    ({ one, other }) => (has(one, a) && has(other, b)) || (has(one, b) && has(other, a)),
  );
}

function besideBlock(garment: Garment, block: Block, step: -1 | 1): EdgeRef | undefined {
  const edge = step < 0 ? block[0] : block.at(-1);
  return edge && beside(garment, edge, step);
}

/** The edge drawn before or after one on its piece. */
function beside(garment: Garment, { pieceId, edgeId }: EdgeRef, step: -1 | 1): EdgeRef | undefined {
  const piece = pieceOf(garment, pieceId);
  const index = piece ? edgeIndex(piece, edgeId) : -1;
  const edge = piece && index >= 0 ? piece.edges[neighbourIndex(piece, index, step)] : undefined;
  return edge && { pieceId, edgeId: edge.id };
}

/** Every coming of a block, in walking order. The halves of a piece on the fold come in turn, joined at the fold. */
function walkedBlock(garment: Garment, block: Block, turned: boolean, repeats: number) {
  const comings = Math.round((block[0]?.times ?? 1) / repeats);
  const forwards = block.map((ref) => ({ ref: ref as EdgeRef, backwards: false }));
  const backwards = forwards.toReversed().map(({ ref }) => ({ ref, backwards: true }));
  const isOnFold = pieceOf(garment, block[0]?.pieceId ?? '')?.cut.how === 'fold';
  if (!isOnFold || comings === 1)
    return Array(comings)
      .fill(turned ? backwards : forwards)
      .flat() as typeof forwards;
  const startsOnFold = roleBeside(garment, block, -1) === 'fold';
  return Array.from({ length: comings }, (_, i) => ((i % 2 === 0) === startsOnFold ? backwards : forwards)).flat();
}

function roleBeside(garment: Garment, block: Block, step: -1 | 1): string | undefined {
  const ref = besideBlock(garment, block, step);
  return ref && pieceOf(garment, ref.pieceId)?.edges.find(({ id }) => id === ref.edgeId)?.role;
}

/** The largest number that goes into both without a rest; 1 where either is no whole number. */
function commonDivisor(a: number, b: number): number {
  if (!Number.isInteger(a) || !Number.isInteger(b) || a < 1 || b < 1) return 1;
  return a % b === 0 ? b : commonDivisor(b, a % b);
}
