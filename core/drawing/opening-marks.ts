/** Where a seam is left open: which stretches, and the marks at their ends. */
import { outlineOf } from '../garment/outline';
import type { Piece } from '../garment/piece';
import { pathAtLength, pathLength } from '../geometry/path';
import { move, type Point, scaleVector, type Vector } from '../geometry/point';
import type { Path } from '../geometry/segment';
import { allowanceOf } from '../seams/allowance-strips';
import { windingOf } from '../seams/corner-angle';
import type { CutLineSoFar } from '../seams/cut-line';
import { stroke } from './arrows';
import type { Stroke } from './drawing';
import { reach } from './piece-lines';

/** The mark at the end of an opening reaches so far in from the stitch line, in mm: 1/2 in, further than a notch. */
const INSIDE = 12.7;

/** An opening: edges named so that follow one another, and where the seam beside them is sewn. */
export interface OpeningRun {
  /** Their run on the stitch line, and its length (mm). */
  readonly path: Path;
  readonly length: number;
  readonly indexes: readonly number[];
  /** At its start, at its end, or at both, goes on a seam that is sewn. */
  readonly sewn: { readonly before: boolean; readonly after: boolean };
}

/** The openings of a piece, each from end to end; none where the whole piece is one. */
export function openingRuns(piece: Piece): OpeningRun[] {
  const { edges: paths } = outlineOf(piece);
  const count = piece.edges.length;
  const roleAt = (index: number) => piece.edges[(index + count) % count]?.role;
  return piece.edges.flatMap((edge, first): OpeningRun[] => {
    if (edge.role !== 'opening' || roleAt(first - 1) === 'opening') return [];
    const indexes = [first];
    while (roleAt(first + indexes.length) === 'opening') indexes.push((first + indexes.length) % count);
    const sewn = { before: roleAt(first - 1) === 'seam', after: roleAt(first + indexes.length) === 'seam' };
    const path = indexes.flatMap((index) => paths[index] ?? []);
    return [{ path, length: pathLength(path), indexes, sewn }];
  });
}

/** A short line across the seam at each end of an opening from which it is sewn, from the cut line to inside the piece. */
export function openingStrokes(piece: Piece, cut: CutLineSoFar): Stroke[] {
  const { edges: paths } = outlineOf(piece);
  return openingRuns(piece).flatMap(({ indexes, sewn }) => {
    const [first = 0, last = first] = [indexes[0], indexes.at(-1)];
    return [
      ...(sewn.before ? [endMark(piece, cut, first, 0)] : []),
      ...(sewn.after ? [endMark(piece, cut, last, pathLength(paths[last] ?? []))] : []),
    ];
  });
}

function endMark(piece: Piece, cut: CutLineSoFar, index: number, along: number): Stroke {
  const { point, out } = placeOn(piece, index, along);
  const edge = piece.edges[index];
  const width = cut.kind === 'cut-line' && piece.drawnAs !== 'included' && edge ? (allowanceOf(edge) ?? 0) : 0;
  return stroke('opening', reach(cut, index, point, move(point, out, width)), move(point, out, -INSIDE));
}

/** A place of an edge and the unit direction out of the piece there. */
function placeOn(piece: Piece, index: number, along: number): { readonly point: Point; readonly out: Vector } {
  const { point, tangent } = pathAtLength(outlineOf(piece).edges[index] as Path, along);
  return { point, out: scaleVector({ dx: tangent.dy, dy: -tangent.dx }, windingOf(piece)) };
}
