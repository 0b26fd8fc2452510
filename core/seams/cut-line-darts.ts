/**
 * The cut line over the mouths of darts: with its allowance the dart is folded towards the centre and cut through, so the
 * line there is the cut line beside the dart mirrored in the dart's leg, as its cap is on the stitch line (`dart-cap.ts`).
 *
 * Limit: a mouth whose legs, carried on into the allowance, do not meet the cut line of its own edge is cut straight over.
 */
import type { Piece } from '../garment/piece';
import { intersectPaths } from '../geometry/intersect';
import { pathLength, subPath } from '../geometry/path';
import { distance, move, type Point, vectorBetween } from '../geometry/point';
import { line, type Path } from '../geometry/segment';
import { allowanceOf } from './allowance-strips';
import type { CutPart } from './cut-line-parts';
import { capOn, dartFolds, dartShape } from './dart-cap';

/** A leg is carried on into the allowance by so many times its width: far enough for any leg not along the edge. */
const CARRIED_ON = 4;

/** And at least so far (mm), where nothing is allowed. */
const LEAST = 1;

/** The parts of a cut line, those of edges with darts led over the caps; the same parts where there are none. */
export function partsOverDarts(piece: Piece, parts: readonly CutPart[]): readonly CutPart[] {
  return parts.map((part) => {
    const edge = piece.edges[part.edgeIndex];
    if (!edge) return part;
    const folds = dartFolds(piece, part.edgeIndex);
    const reach = CARRIED_ON * (allowanceOf(edge) ?? 0) + LEAST;
    const mouths = piece.darts
      .filter(({ edgeId }) => edgeId === edge.id)
      .flatMap((dart) => {
        const shape = dartShape(piece, dart);
        const low = shape && legMeets(part.path, shape.point, shape.from, reach);
        const high = shape && legMeets(part.path, shape.point, shape.to, reach);
        return shape && low !== undefined && high !== undefined && high > low
          ? [{ low, high, point: shape.point }]
          : [];
      })
      .sort((a, b) => a.low - b.low);
    const pieces: Path[] = [];
    let done = 0;
    for (const mouth of mouths) {
      if (mouth.low < done) continue;
      pieces.push(subPath(part.path, done, mouth.low) ?? [], capOn(part.path, { ...mouth, folds }).cap);
      done = mouth.high;
    }
    if (pieces.length === 0) return part;
    return { ...part, path: [...pieces.flat(), ...(subPath(part.path, done, pathLength(part.path)) ?? [])] };
  });
}

/** How far along a cut line a leg meets it, carried on beyond its end at the mouth; the meeting nearest to that end. */
function legMeets(cut: Path, point: Point, end: Point, reach: number): number | undefined {
  const leg = vectorBetween(point, end);
  const back = Math.min(LEAST, Math.hypot(leg.dx, leg.dy) / 2) / Math.hypot(leg.dx, leg.dy);
  const ray = [line(move(end, leg, -back), move(end, leg, reach / Math.hypot(leg.dx, leg.dy)))];
  let best: number | undefined;
  let least = Infinity;
  for (const meeting of intersectPaths(cut, ray)) {
    if (meeting.kind === 'overlap') continue;
    const off = distance(meeting.point, end);
    if (off < least) [best, least] = [meeting.alongA, off];
  }
  return best;
}
