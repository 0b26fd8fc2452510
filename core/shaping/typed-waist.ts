import { outlineOf } from '../garment/outline';
import type { Piece } from '../garment/piece';
import { edgeIndex, withCorner, withEdge } from '../garment/with-piece';
import { pathAtLength, pathLength } from '../geometry/path';
import { move } from '../geometry/point';
import { selfCrossings } from '../geometry/self-crossing';
import { scaleMarks } from './carry-marks';
import { levelLine } from './level-line';
import type { RaisedWaistWish } from './raised-waist';
import { rootBetween } from './root';
import {
  carrySideMarks,
  cornerIndexAt,
  hipAlongSide,
  leadSide,
  type SideCourse,
  sideDownwards,
  type WaistEnd,
} from './side-of-waist';
import { waistAxis, waistCentre } from './waist-axis';

export interface NoTypedWaist {
  readonly kind: 'no-typed-waist';
  readonly why: 'no-waist-edge' | 'no-hip-point' | 'not-positive' | 'crosses';
}

/** How near the corner's place across is found (mm). */
const ACROSS_RIGHT = 1e-6;

/**
 * The waist by a rise and dip she types that also has a length: its seam corners stand at that height as far across as
 * the length needs (stitch length, darts included, mm), and the side is led from there to the hip, which stays as drawn.
 */
export function typedWaist(
  piece: Piece,
  { waistEdgeId, rise, centreDip = 0, centre: said }: RaisedWaistWish,
  { length, hipDepth }: { readonly length: number; readonly hipDepth: number },
): { readonly kind: 'typed-waist'; readonly piece: Piece } | NoTypedWaist {
  const index = edgeIndex(piece, waistEdgeId);
  if (piece.edges[index]?.role !== 'waist') return { kind: 'no-typed-waist', why: 'no-waist-edge' };
  if (!(length > 0 && hipDepth > 0 && hipDepth + rise > 0)) return { kind: 'no-typed-waist', why: 'not-positive' };
  const centre = said ?? waistCentre(piece, index);
  const axis = waistAxis(piece, index, centre, hipDepth);
  const hip = levelLine(piece, hipDepth);
  if (!axis || !hip) return { kind: 'no-typed-waist', why: 'no-hip-point' };
  const ends = (['before', 'after'] as const).filter((end) => end !== centre);
  const courses = ends.map((end): ((across: number) => SideCourse) | undefined => {
    const side = sideDownwards(piece, index, end);
    const run = end === 'before' ? hip.runs[0] : hip.runs.at(-1);
    const hipAlong = side && run && hipAlongSide(side, run, end);
    if (!side || hipAlong === undefined) return undefined;
    const via = pathAtLength(side, hipAlong).point;
    const hand = end === 'before' ? -1 : 1;
    return (across) => ({
      corner: move(move(axis.origin, axis.across, across * hand), axis.down, -rise),
      via,
      hipAlong,
    });
  });
  if (courses.some((course) => !course)) return { kind: 'no-typed-waist', why: 'no-hip-point' };

  const lowered = move(axis.origin, axis.down, centreDip);
  const made = (across: number): Piece => {
    const sided = ends.reduce((so, end, i) => {
      const course = courses[i]?.(across);
      return course ? leadSide(so, index, end, course).piece : so;
    }, piece);
    const cornerId =
      centre === 'middle' ? undefined : piece.corners[cornerIndexAt(piece, index, centre as WaistEnd)]?.id;
    const centred = cornerId ? withCorner(sided, cornerId, (corner) => ({ ...corner, at: lowered })) : sided;
    const through = centre === 'middle' ? [lowered] : [];
    const shape = { kind: 'curve', through, leaves: 'square', meets: 'square' } as const;
    return withEdge(centred, waistEdgeId, (edge) => ({ ...edge, shape }));
  };
  const lengthOf = (of: Piece) => pathLength(outlineOf(of).edges[index] ?? []);
  // A waist is no longer than from one end straight down and straight across, and no shorter than straight across.
  const widest = length / ends.length;
  const across = rootBetween((at) => lengthOf(made(at)) - length, widest / 8, widest * 1.25, ACROSS_RIGHT);
  if (across === undefined) return { kind: 'no-typed-waist', why: 'crosses' };
  const found = made(across);
  if (selfCrossings(outlineOf(found).whole).length > 0) return { kind: 'no-typed-waist', why: 'crosses' };
  const scaled = scaleMarks(found, waistEdgeId, lengthOf(piece), lengthOf(found));
  const marked = ends.reduce((so, end, i) => {
    const course = courses[i]?.(across);
    return course ? carrySideMarks(piece, so, index, end, course) : so;
  }, scaled);
  return { kind: 'typed-waist', piece: marked };
}
