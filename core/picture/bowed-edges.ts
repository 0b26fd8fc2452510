import { distance, dot, type PhotoPoint, type Point, vectorBetween } from '../geometry/point';
import type { QuadCorners } from '../geometry/rectangle-aspect';
import type { GreyPicture } from './grey-picture';
import { refineCorners } from './refine-corners';
import { bowAt } from './robust-fit';
import { placeOnSide, type SideCourse, type SideKind } from './side-course';

/** The edges of a page that bow, followed as curves. */
export interface BowedEdges {
  /** Top left first, clockwise. */
  readonly corners: QuadCorners;
  /** Which two edges bow: the sheet is bent about lines that join them. */
  readonly bowed: 'top-and-bottom' | 'left-and-right';
  /** Points along the top edge from left to right (or the left edge downwards), ends included. */
  readonly first: readonly PhotoPoint[];
  /** Points along the bottom edge from left to right (or the right edge downwards), ends included. */
  readonly second: readonly PhotoPoint[];
  /** How far the edges that should be straight bow all the same, as a share of their length: a measure of doubt. */
  readonly otherBow: number;
}

/** Edges are curves of this degree: a page that curls into the gutter bends over a fifth of its width. */
const DEGREE = 7;

/** Points handed back along each edge: a spline through so many keeps within a twentieth of a pixel of such a curve. */
const POINTS = 17;

/** The edges of a page or frame whose corners are about known, on a picture and its halves; `undefined` as `refineCorners`. */
export function bowedEdges(
  levels: readonly GreyPicture[],
  corners: QuadCorners,
  options: { readonly kind: SideKind; readonly reachPx: number },
): BowedEdges | undefined {
  const refined = refineCorners(levels, corners, { ...options, degree: DEGREE });
  if (!refined) return undefined;
  const [top, right, bottom, left] = refined.sides;
  const [tl, tr, br, bl] = refined.corners;
  const level = Math.max(bowOf(top), bowOf(bottom));
  const upright = Math.max(bowOf(left), bowOf(right));
  const isLevel = level >= upright;
  return {
    corners: refined.corners,
    bowed: isLevel ? 'top-and-bottom' : 'left-and-right',
    first: isLevel ? pointsOn(top, tl, tr) : pointsOn(left, bl, tl).reverse(),
    second: isLevel ? pointsOn(bottom, br, bl).reverse() : pointsOn(right, tr, br),
    otherBow: Math.min(level, upright),
  };
}

/** How far a side leaves the straight line between its ends, as a share of its length. */
export function bowOf({ from, to, fit }: SideCourse): number {
  const [start, end] = [bowAt(fit.terms, -1), bowAt(fit.terms, 1)];
  const offs = [-0.75, -0.5, -0.25, 0, 0.25, 0.5, 0.75].map((t) =>
    Math.abs(bowAt(fit.terms, t) - (start + ((end - start) * (t + 1)) / 2)),
  );
  return Math.max(...offs) / distance(from, to);
}

function pointsOn(side: SideCourse, from: PhotoPoint, to: PhotoPoint): PhotoPoint[] {
  const [start, end] = [shareAt(side, from), shareAt(side, to)];
  return Array.from({ length: POINTS }, (_, i) => placeOnSide(side, start + ((end - start) * i) / (POINTS - 1)));
}

/** Where along the side, -1 to 1, a place lies: offsets are square to its chord. */
function shareAt({ from, to }: SideCourse, point: Point): number {
  const way = vectorBetween(from, to);
  return (2 * dot(vectorBetween(from, point), way)) / dot(way, way) - 1;
}
