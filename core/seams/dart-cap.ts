/**
 * The cap of a dart: the cut between the two ends of its mouth, so that the dart, folded towards the centre and pressed,
 * ends level with the edge (common practice: fold the dart, cut straight through).
 *
 * Folded, the half of the dart next to the centre lies mirrored in its leg over the centre side of the piece, so its cut
 * is the mirror image of the edge there, as far as the middle of the dart; the other half is that again, mirrored in
 * the middle line. Where the legs differ in length the second half is a straight line to the end of the mouth.
 */
import { outlineOf } from '../garment/outline';
import type { Dart, Piece } from '../garment/piece';
import { reflectionIn, transformPath } from '../geometry/affine';
import { intersectPaths } from '../geometry/intersect';
import { pathAtLength, pathEnd, pathLength, reversePath, subPath } from '../geometry/path';
import { distance, isSamePoint, move, type Point, unit, vectorBetween } from '../geometry/point';
import { line, type Path } from '../geometry/segment';

/** A dart on its edge: the ends of its mouth, nearest the edge's start first, and its cap between them. */
export interface DartShape {
  readonly from: Point;
  readonly to: Point;
  /** Where the fold of the dart meets the cap. */
  readonly tip: Point;
  readonly point: Point;
  readonly cap: Path;
}

/**
 * The shape of a dart; `undefined` when its edge is missing or its mouth or depth is nothing. It folds towards the fold
 * of the piece, or an opening where there is no fold, whichever way round is nearer; else towards the edge's start.
 */
export function dartShape(piece: Piece, dart: Dart): DartShape | undefined {
  const index = piece.edges.findIndex(({ id }) => id === dart.edgeId);
  const edge = outlineOf(piece).edges[index];
  if (!edge) return undefined;
  const length = pathLength(edge);
  const [low, high] = [Math.max(0, dart.along - dart.width / 2), Math.min(length, dart.along + dart.width / 2)];
  if (!(high > low)) return undefined;
  const from = pathAtLength(edge, low).point;
  const to = pathAtLength(edge, high).point;
  const { point } = dart;
  if (isSamePoint(from, to) || isSamePoint(from, point) || isSamePoint(to, point)) return undefined;
  return { from, to, point, ...capOn(edge, { low, high, point, folds: dartFolds(piece, index) }) };
}

/** The mouth of a dart on some line across its legs, the stitch line or the cut line. */
interface CapPlace {
  readonly low: number;
  readonly high: number;
  readonly point: Point;
  readonly folds: 'start' | 'end';
}

/** The cap between two places of a line on which a dart closes, folded towards the line's start or its end. */
export function capOn(edge: Path, { low, high, point, folds }: CapPlace): { readonly cap: Path; readonly tip: Point } {
  const length = pathLength(edge);
  const [from, to] = [pathAtLength(edge, low).point, pathAtLength(edge, high).point];
  const towardsStart = folds === 'start';
  const beside = towardsStart ? subPath(edge, 0, low) : subPath(edge, high, length);
  const outwards = beside && (towardsStart ? reversePath(beside) : beside);
  const [near, far] = towardsStart ? [from, to] : [to, from];
  const { half, tip } = halfCap(outwards, near, far, point);
  const middle = reflectionIn(point, tip);
  const again = middle && reversePath(transformPath(middle, half));
  const rest = again && distance(pathEnd(again), far) < EVEN_LEGS ? again : [line(tip, far)];
  const cap = [...half, ...rest];
  return { tip, cap: towardsStart ? cap : reversePath(cap) };
}

/** Legs that differ by less than this are even, in mm. */
const EVEN_LEGS = 0.01;

/** The cap from the end of the mouth next to the centre to the middle of the dart. */
function halfCap(outwards: Path | undefined, near: Point, far: Point, point: Point) {
  const mirror = reflectionIn(point, near);
  const reach = 2 * Math.max(distance(point, near), distance(point, far));
  const [a, b] = [unit(vectorBetween(point, near)), unit(vectorBetween(point, far))];
  const along = a && b && unit({ dx: a.dx + b.dx, dy: a.dy + b.dy });
  if (mirror && outwards && along) {
    const folded = transformPath(mirror, outwards);
    const middle: Path = [line(point, move(point, along, reach))];
    const meeting = intersectPaths(folded, middle).find(({ kind }) => kind !== 'overlap');
    const half = meeting?.kind !== 'overlap' && meeting && subPath(folded, 0, meeting.alongA);
    if (half) return { half, tip: pathEnd(half) };
  }
  // The edge beside the dart is too short to fold it on: straight to the middle of the mouth.
  const tip = { x: (near.x + far.x) / 2, y: (near.y + far.y) / 2 };
  return { half: [line(near, tip)] as Path, tip };
}

/** Towards which end of an edge its darts are folded: where the centre of the garment lies. */
export function dartFolds(piece: Piece, index: number): 'start' | 'end' {
  const count = piece.edges.length;
  for (const role of ['fold', 'opening'] as const) {
    for (let steps = 1; steps <= count / 2; steps++) {
      if (piece.edges[(index - steps + count) % count]?.role === role) return 'start';
      if (piece.edges[(index + steps) % count]?.role === role) return 'end';
    }
  }
  return 'start';
}
