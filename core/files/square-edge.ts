/** A run of a file's line as an edge that stands square to its straight neighbour. */
import type { EndRule } from '../garment/piece';
import { endTangent, pathEnd, pathStart, startTangent } from '../geometry/path';
import { dot, type Point, SAME_POINT, unit, type Vector, vectorBetween } from '../geometry/point';
import type { Path } from '../geometry/segment';
import {
  COUNTS,
  type EndDirections,
  type FittedRun,
  isStraight,
  MOST_KNOTS,
  runThrough,
  spreadRun,
} from './followed-run';

/** An edge may stand square to its neighbour when the cosine between them is below this, 0.3 degrees; it must follow its line then, too. */
const SQUARE = 5e-3;

export interface SquareEdge {
  readonly through: readonly Point[];
  readonly leaves: EndRule;
  readonly meets: EndRule;
  readonly off: number;
}

/**
 * A run that stands square to a straight neighbour and that a spline through its own knots, or through a few places spread
 * along it, follows when it is ruled to do so: then the edge has that rule, and stays square when she changes the piece.
 */
export function squareEdge(run: Path, before: Path, after: Path, within: number): SquareEdge | undefined {
  if (isStraight(run)) return undefined;
  const chord = vectorBetween(pathStart(run), pathEnd(run));
  const leaving = squareTo(before, startTangent(run), chord);
  const arriving = squareTo(after, endTangent(run), chord);
  if (!leaving && !arriving) return undefined;
  const ends = { leaving, arriving };
  const knots = run.slice(1).map(({ p0 }) => p0);
  const fitted = knots.length <= MOST_KNOTS ? runThrough(run, knots, within, ends) : spreadSquare(run, within, ends);
  if (!fitted || fitted.off > within) return undefined;
  const [leaves, meets] = [leaving, arriving].map((way): EndRule => (way ? 'square' : 'free')) as [EndRule, EndRule];
  return { through: fitted.through, leaves, meets, off: fitted.off };
}

function spreadSquare(run: Path, within: number, ends: EndDirections): FittedRun | undefined {
  for (const count of COUNTS) {
    const spread = spreadRun(run, count, within, ends);
    if (spread.off <= within) return spread;
  }
  return undefined;
}

/**
 * The direction exactly square to a straight neighbour, if `tangent` is as good as that already. The rule of a piece takes
 * the side on which the chord lies, so the tangent must lie there too.
 */
function squareTo(neighbour: Path, tangent: Vector, chord: Vector): Vector | undefined {
  const along = isStraight(neighbour) ? unit(vectorBetween(pathStart(neighbour), pathEnd(neighbour))) : undefined;
  if (!along || Math.abs(dot(along, tangent)) > SQUARE) return undefined;
  const side = { dx: -along.dy, dy: along.dx };
  const square = dot(side, tangent) < 0 ? { dx: along.dy, dy: -along.dx } : side;
  return dot(square, chord) > SAME_POINT ? square : undefined;
}
