import { neighbourIndex, outlineOf } from '../garment/outline';
import type { Piece } from '../garment/piece';
import { endTangent, signedArea, startTangent } from '../geometry/path';
import { isSamePoint, turnBetween, type Vector } from '../geometry/point';
import type { Path } from '../geometry/segment';

/** Which way a piece is run round: 1 when its outline runs clockwise to the eye, -1 when the other way. */
export function windingOf(piece: Piece): 1 | -1 {
  return signedArea(outlineOf(piece).whole) < 0 ? -1 : 1;
}

/** Whether a path goes anywhere at all: some of it lies further than SAME_POINT from its start. */
export function goesSomewhere(path: Path): boolean {
  return path.some((segment) =>
    segment.kind === 'line'
      ? !isSamePoint(segment.p0, segment.p1)
      : !(
          isSamePoint(segment.p0, segment.p1) &&
          isSamePoint(segment.p0, segment.p2) &&
          isSamePoint(segment.p0, segment.p3)
        ),
  );
}

/**
 * The angle inside the piece at a corner, radians in [0, 2π]: less than π where the piece juts out, more where it is
 * hollow. Edges without length are passed over; π for a piece that has none with length.
 */
export function cornerAngle(piece: Piece, cornerIndex: number): number {
  const { edges } = outlineOf(piece);
  const arriving = nearestDirection(piece, edges, neighbourIndex(piece, cornerIndex, -1), -1);
  const leaving = nearestDirection(piece, edges, cornerIndex, 1);
  if (!arriving || !leaving) return Math.PI;
  return Math.PI - windingOf(piece) * turnBetween(arriving, leaving);
}

/** The direction at the corner of the first edge with length, from `index` on, backwards or forwards. */
function nearestDirection(piece: Piece, edges: readonly Path[], index: number, step: -1 | 1): Vector | undefined {
  for (let count = 0, at = index; count < edges.length; count++, at = neighbourIndex(piece, at, step)) {
    const path = edges[at] as Path;
    if (goesSomewhere(path)) return step < 0 ? endTangent(path) : startTangent(path);
  }
  return undefined;
}
