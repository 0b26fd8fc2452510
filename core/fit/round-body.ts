import { isGuide } from '../garment/cut-pieces';
import type { Garment, HangsFrom, Level, Ring } from '../garment/garment';
import type { MeasureName, MeasureSet } from '../garment/measure';
import { currentSet, depthOf, halfGirths, measureOf } from '../garment/measure-value';
import { outlineOf } from '../garment/outline';
import type { Piece } from '../garment/piece';
import type { EdgeRef } from '../garment/seam';
import { pieceOf } from '../garment/with-piece';
import { pathLength } from '../geometry/path';
import { type LevelLine, levelLine } from '../shaping/level-line';
import { inches } from '../units/inch';
import { timesRound } from './times-round';

/** What one piece adds to a girth. */
export interface PieceGirth {
  readonly pieceId: string;
  readonly times: number;
  /** `undefined` when the piece has no waist edge or does not reach down to the level. */
  readonly line: LevelLine | undefined;
  /** The level lies above where the piece begins, or on what is sewn below it: it has no line there, and needs none. */
  readonly isElsewhere?: true;
}

/** A piece of a ring: how often it goes round, and the edge its levels are measured from where that is not the waist. */
export interface WornPiece {
  readonly piece: Piece;
  readonly times: number;
  readonly from?: HangsFrom;
}

/** One side of the body, from centre front round to centre back. Lengths in mm. */
export interface SideGirth {
  readonly side: 'left' | 'right';
  readonly total: number;
  readonly body: number;
  readonly wanted: number;
}

/**
 * A ring of pieces against the body at one level. Lengths in mm, all the way round. A level above the waist has a depth
 * less than 0 and is measured that far from the waist edge into pieces that lie above it, such as a bodice's: all the
 * pieces of a ring lie on one side of their waist edges.
 */
export type GirthAtLevel = {
  readonly level: Level;
  readonly pieces: readonly PieceGirth[];
} & (
  | {
      readonly kind: 'measured';
      readonly depth: number;
      readonly total: number;
      readonly body: number;
      readonly wanted: number;
      /** What bands lap over there; it is not in `total`. */
      readonly lap: number;
      /** The sides apart, where both the body was taped and the pieces are drafted so; else empty. */
      readonly sides: readonly SideGirth[];
    }
  /** The pieces can be measured, the body has not been. */
  | { readonly kind: 'no-body'; readonly depth: number; readonly total: number; readonly missing: MeasureName }
  /** Nothing says how far down the level lies. */
  | { readonly kind: 'no-depth'; readonly missing: MeasureName }
);

/** The pieces of a ring with how often each goes round, leaving out guides and members that are no longer there. */
export function ringPieces(garment: Garment, ring: Ring): WornPiece[] {
  return ring.members.flatMap((member): WornPiece[] => {
    const piece = pieceOf(garment, member.pieceId);
    if (!piece || isGuide(piece)) return [];
    const worn = { piece, times: timesRound(piece, member) };
    const { from } = member;
    // An edge that is gone leaves the piece to its waist.
    return [from && piece.edges.some(({ id }) => id === from.edgeId) ? { ...worn, from } : worn];
  });
}

/** Sewing two pieces together takes this much of neither (mm); a piece that reaches less far down ends at the level. */
const HANDOVER = inches(1 / 16);

/** What a piece of a ring has at a depth below the waist (mm), or above it where that is less than 0. */
export function lineAt(
  { piece, from }: WornPiece,
  depth: number,
  all: readonly WornPiece[],
): Pick<PieceGirth, 'line' | 'isElsewhere'> {
  const top = from?.depth ?? 0;
  const below = from ? depth - top : Math.abs(depth);
  if (below < -NEAR) return { line: undefined, isElsewhere: true };
  const line = levelLine(piece, Math.max(0, below), from?.edgeId);
  const givesWay =
    depth > 0 && all.some((other) => (other.from?.depth ?? 0) > top && (other.from?.depth ?? 0) <= depth);
  if (!givesWay || levelLine(piece, below + HANDOVER, from?.edgeId)) return { line };
  return { line: undefined, isElsewhere: true };
}

/** Depths nearer than this are one (mm): rounding size. */
const NEAR = 1e-6;

/** Every level of a ring, pieces against body and ease. */
export function girthsOf(garment: Garment, ring: Ring): GirthAtLevel[] {
  const set = currentSet(garment);
  const pieces = ringPieces(garment, ring);
  return ring.levels.map((level) => girthAt(garment, level, pieces, set));
}

function girthAt(garment: Garment, level: Level, members: readonly WornPiece[], set: MeasureSet): GirthAtLevel {
  const depth = levelDepth(level, set);
  if (typeof depth !== 'number') {
    const pieces = members.map(({ piece, times }) => ({ pieceId: piece.id, times, line: undefined }));
    return { kind: 'no-depth', level, pieces, missing: depth.missing };
  }
  const pieces = members.map((member) => ({
    pieceId: member.piece.id,
    times: member.times,
    ...lineAt(member, depth, members),
  }));
  const lap = lapsOver(
    members.filter((_, i) => pieces[i]?.line).map(({ piece }) => piece),
    garment,
  );
  const total = pieces.reduce((sum, { line, times }) => sum + (line?.length ?? 0) * times, 0) - lap;
  const body = level.body ?? measureOf(set, level.girth);
  if (body === undefined) return { kind: 'no-body', level, pieces, depth, total, missing: level.girth };
  const measured = { level, pieces, depth, total, lap, body, wanted: body + level.ease };
  return { kind: 'measured', ...measured, sides: sidesAt(measured, members, set) };
}

/** What the bands among these pieces lap over beyond the waist they are sewn to (mm). */
function lapsOver(pieces: readonly Piece[], garment: Garment): number {
  const isWaist = ({ pieceId, edgeId }: EdgeRef) =>
    pieceOf(garment, pieceId)?.edges.some(({ id, role }) => id === edgeId && role === 'waist') ?? false;
  const laps = (garment.seams ?? []).flatMap(({ one, other, lap }) => {
    if (!lap || ![...one, ...other].some(isWaist)) return [];
    const side = lap.side === 'one' ? one : other;
    const last = lap.at === 'start' ? side[0] : side.at(-1);
    return last ? [{ pieceId: last.pieceId, length: lap.length }] : [];
  });
  // The two long edges of a band lap over together.
  const lapOf = ({ id }: Piece) =>
    laps.reduce((most, { pieceId, length }) => (pieceId === id ? Math.max(most, length) : most), 0);
  return pieces.reduce((sum, piece) => sum + lapOf(piece), 0);
}

/** The sides apart. A piece for both sides gives half of itself to each; so does the ease. */
function sidesAt(
  { level, pieces }: { readonly level: Level; readonly pieces: readonly PieceGirth[] },
  members: readonly WornPiece[],
  set: MeasureSet,
): SideGirth[] {
  // A girth taped at this very level is one figure for both sides.
  const halves = level.body === undefined ? halfGirths(set, level.girth) : undefined;
  if (!halves || !members.some(({ piece }) => piece.side)) return [];
  return (['left', 'right'] as const).map((side) => {
    const total = pieces.reduce((sum, { line, times }, i) => {
      const own = members[i]?.piece.side;
      const share = own === undefined ? 0.5 : own === side ? 1 : 0;
      return sum + (line?.length ?? 0) * times * share;
    }, 0);
    return { side, total, body: halves[side], wanted: halves[side] + level.ease / 2 };
  });
}

/** How far below the waist a level lies (mm), or the measure that would say it. */
export function levelDepth(level: Level, set: MeasureSet): number | { readonly missing: MeasureName } {
  if (level.depth.kind === 'length') return level.depth.length;
  const noted = level.girth === 'waist' ? undefined : depthOf(set, level.girth);
  const depth = noted ?? measureOf(set, level.depth.measure);
  return depth ?? { missing: level.depth.measure };
}

/** The sum of the hem edges all the way round (mm); 0 when no edge is named as hem. */
export function hemSweep(garment: Garment, ring: Ring): number {
  return ringPieces(garment, ring).reduce((sum, { piece, times }) => {
    const { edges } = outlineOf(piece);
    const hem = piece.edges.reduce((length, edge, index) => {
      const path = edges[index];
      return edge.role === 'hem' && path ? length + pathLength(path) : length;
    }, 0);
    return sum + hem * times;
  }, 0);
}
