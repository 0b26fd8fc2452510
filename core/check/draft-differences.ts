import { cutPieces } from '../garment/cut-pieces';
import type { Garment } from '../garment/garment';
import { outlineOf } from '../garment/outline';
import type { Edge, Piece } from '../garment/piece';
import { withSharedPieces } from '../garment/shared-pieces';
import { type Affine, IDENTITY, transformPath, translation } from '../geometry/affine';
import { pathLength } from '../geometry/path';
import { distance, vectorBetween } from '../geometry/point';
import type { Path, Segment } from '../geometry/segment';

/** An edge that runs otherwise than before; lengths along the stitch line in mm, the first of them missing for a new edge. */
export interface EdgeDifference {
  readonly edge: Edge;
  readonly before: number | undefined;
  readonly after: number;
}

/** A piece that is not as it was. */
export interface PieceDifference {
  readonly piece: Piece;
  readonly edges: readonly EdgeDifference[];
  /** Edges that are not there any more. */
  readonly edgesGone: number;
  /** Whether it only lies elsewhere on the table. */
  readonly moved: boolean;
}

/** How the drafts of two garments differ, guides left out. */
export interface DraftDifferences {
  readonly added: readonly Piece[];
  readonly removed: readonly Piece[];
  readonly changed: readonly PieceDifference[];
}

/** An edge that runs within this of where it ran (mm) runs as before. */
const STAYS = 0.05;

/** What was drawn, taken away and changed between two garments. Pieces and edges are told apart by their ids. */
export function draftDifferences(before: Garment, after: Garment): DraftDifferences {
  const was = new Map(cutPieces(withSharedPieces(before, after)).map((piece) => [piece.id, piece]));
  const now = cutPieces(after);
  const there = new Set(now.map(({ id }) => id));
  return {
    added: now.filter(({ id }) => !was.has(id)),
    removed: [...was.values()].filter(({ id }) => !there.has(id)),
    changed: now.flatMap((piece) => {
      const old = was.get(piece.id);
      return old && old !== piece ? [pieceDifference(old, piece)] : [];
    }),
  };
}

function pieceDifference(was: Piece, piece: Piece): PieceDifference {
  const edgesGone = was.edges.filter(({ id }) => !piece.edges.some((edge) => edge.id === id)).length;
  const moved = edgesOff(was, piece, motionOf(was, piece));
  const edges = moved.length === 0 ? [] : edgesOff(was, piece, IDENTITY);
  const isMoved = edgesGone === 0 && moved.length === 0 && edgesOff(was, piece, IDENTITY).length > 0;
  return { piece, edges, edgesGone, moved: isMoved };
}

/** How the piece as a whole would have been moved, by one of its corners. */
function motionOf(was: Piece, piece: Piece): Affine {
  for (const { id, at } of was.corners) {
    const now = piece.corners.find((corner) => corner.id === id);
    if (now) return translation(vectorBetween(at, now.at));
  }
  return IDENTITY;
}

function edgesOff(was: Piece, piece: Piece, motion: Affine): EdgeDifference[] {
  const [old, now] = [outlineOf(was).edges, outlineOf(piece).edges];
  return piece.edges.flatMap((edge, index): EdgeDifference[] => {
    const path = now[index] ?? [];
    const wasPath = old[was.edges.findIndex(({ id }) => id === edge.id)];
    if (wasPath && isSamePath(transformPath(motion, wasPath), path)) return [];
    return [{ edge, before: wasPath && pathLength(wasPath), after: pathLength(path) }];
  });
}

function isSamePath(one: Path, other: Path): boolean {
  if (one.length !== other.length) return false;
  return one.every((segment, index) => {
    const [points, others] = [pointsOf(segment), pointsOf(other[index] as Segment)];
    return (
      points.length === others.length && points.every((point, i) => distance(point, others[i] as typeof point) <= STAYS)
    );
  });
}

function pointsOf(segment: Segment) {
  return segment.kind === 'line' ? [segment.p0, segment.p1] : [segment.p0, segment.p1, segment.p2, segment.p3];
}
