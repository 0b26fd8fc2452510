import { type Differences, differencesOf } from '../../core/compare/differences';
import { girthsBeside } from '../../core/compare/girths-beside';
import { levelDepth } from '../../core/fit/round-body';
import type { Garment } from '../../core/garment/garment';
import { currentSet, depthOf } from '../../core/garment/measure-value';
import { outlineOf } from '../../core/garment/outline';
import type { Piece } from '../../core/garment/piece';
import { IDENTITY } from '../../core/geometry/affine';
import { nearestOnPath } from '../../core/geometry/path';
import type { Point } from '../../core/geometry/point';

/** The two pieces as they lie, the upper one over the lower. */
export interface Pair {
  readonly under: Piece;
  readonly over: Piece;
}

/** How two pieces differ, and the garments they are of all the way round. */
export interface Compared extends Differences {
  readonly girths: readonly {
    readonly level: ReturnType<typeof girthsBeside>[number]['level'];
    readonly one: number | undefined;
    readonly other: number | undefined;
  }[];
}

/** All the figures of two pieces as they lie; girths at the levels of the garment on the table, whichever lies beneath. */
export function comparedAs(pair: Pair, garment: Garment, otherGarment: Garment, beneath: 'mine' | 'other'): Compared {
  const girths = otherGarment === garment ? [] : girthsBeside(garment, otherGarment);
  return {
    ...differencesOf(pair.under, pair.over, IDENTITY, depthsOf(garment)),
    girths: girths.map(({ level, one, other }) =>
      beneath === 'mine' ? { level, one, other } : { level, one: other, other: one },
    ),
  };
}

/** The levels below the waist at which single pieces are measured: those of the rings, else those of the body's measures. */
function depthsOf(garment: Garment): number[] {
  const set = currentSet(garment);
  const levels = garment.rings.flatMap(({ levels: all }) => all);
  const known =
    levels.length > 0
      ? levels.map((level) => levelDepth(level, set))
      : (['waist', 'highHip', 'hip'] as const).map((girth) => depthOf(set, girth));
  const depths = known.filter((depth): depth is number => typeof depth === 'number' && depth >= 0);
  return [...new Set(depths)].sort((a, b) => a - b);
}

/** Which edge of a piece a place is nearest to, and how far along it (mm). */
export function edgeAt(piece: Piece, place: Point): { readonly index: number; readonly along: number } {
  const { edges } = outlineOf(piece);
  let best = { index: 0, along: 0, distance: Infinity };
  edges.forEach((path, index) => {
    if (path.length === 0) return;
    const { along, distance } = nearestOnPath(path, place);
    if (distance < best.distance - 1e-6) best = { index, along, distance };
  });
  return best;
}
