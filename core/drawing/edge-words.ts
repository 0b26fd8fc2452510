import { outlineOf } from '../garment/outline';
import type { Piece } from '../garment/piece';
import { pathAtLength, pathLength } from '../geometry/path';
import { angleOf, move, scaleVector } from '../geometry/point';
import type { Path } from '../geometry/segment';
import { allowanceOf } from '../seams/allowance-strips';
import { windingOf } from '../seams/corner-angle';
import type { EdgeContent, EdgeWords, Placed } from './drawing';
import { MM_PER_PT } from './line-styles';

/** Words along an edge are 10 pt. */
export const EDGE_SIZE = 10 * MM_PER_PT;

/** They stand this far inside the edge, and rows this far apart, in sizes. */
const INSIDE = 0.9;
const LEADING = 1.3;

/** What is written along edges. */
export interface EdgeWordsOptions {
  readonly say: 'lengths' | 'allowances' | 'both';
}

/**
 * Words along the edges of a piece, inside the stitch line at the middle of each: its length on the stitch line, the
 * width of its allowance where one has been said (0 too), or both, one under the other. A fold has no allowance.
 */
export function edgeWords(piece: Piece, { say }: EdgeWordsOptions): readonly EdgeWords[] {
  const paths = outlineOf(piece).edges;
  return piece.edges.flatMap((edge, index) => {
    const path = paths[index] as Path;
    const length = pathLength(path);
    const width = allowanceOf(edge);
    const contents: EdgeContent[] = [];
    if (say !== 'allowances') contents.push({ kind: 'edge-length', length });
    if (say !== 'lengths' && edge.role !== 'fold' && width !== undefined) {
      contents.push({ kind: 'edge-allowance', width });
    }
    return contents.map((content, row) => ({ edgeId: edge.id, content, ...insideEdge(piece, path, length, row) }));
  });
}

/** The place of words inside the middle of an edge, along it. */
export function insideEdge(piece: Piece, path: Path, length: number, row: number): Placed {
  const { point, tangent } = pathAtLength(path, length / 2);
  const into = scaleVector({ dx: -tangent.dy, dy: tangent.dx }, windingOf(piece));
  const at = move(point, into, EDGE_SIZE * (INSIDE + row * LEADING));
  return { at, size: EDGE_SIZE, angle: readable(angleOf(tangent)) };
}

/** Angles this near to one another are one (radians). */
const NEARLY = 1e-9;

/** An angle of writing that is never upside down: in (-π/2, π/2]. */
export function readable(angle: number): number {
  // A little less than a right angle off counts as one: turned there and back it is the same.
  return angle - Math.PI * Math.ceil((angle - NEARLY) / Math.PI - 0.5);
}
