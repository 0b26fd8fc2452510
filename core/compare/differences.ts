import { outlineOf } from '../garment/outline';
import type { Edge, Piece } from '../garment/piece';
import { type Affine, transformPath, transformPoint } from '../geometry/affine';
import { nearestOnPath, pathAtLength, pathLength, signedArea } from '../geometry/path';
import { distance, type Point } from '../geometry/point';
import type { Path } from '../geometry/segment';
import { netEdgeLength } from '../seams/edge-length';
import { levelLine } from '../shaping/level-line';

/** The widest gap between two outlines: how wide, from where on one to where on the other. */
export interface Gap {
  readonly width: number;
  readonly from: Point;
  readonly to: Point;
}

/** Two edges that stand for one another, with their sewn lengths; only one of them where the other piece has none. */
export interface EdgePair {
  readonly one: { readonly edge: Edge; readonly length: number } | undefined;
  readonly other: { readonly edge: Edge; readonly length: number } | undefined;
}

/** How two pieces differ when one is laid over the other. Lengths mm, areas mm². */
export interface Differences {
  readonly gap: Gap;
  readonly edges: readonly EdgePair[];
  /** The width of each at levels below the waist, where both have one. */
  readonly levels: readonly { readonly depth: number; readonly one: number; readonly other: number }[];
  readonly areas: readonly [number, number];
}

/** The outlines are looked at this often (mm) for their widest gap, and there more closely, to a hundredth of it. */
const LOOK_EVERY = 3;

/**
 * One piece beside another laid over it by a motion. Edges stand for one another by their id, then by name, then by role
 * and place; `depths` are levels below the waist.
 */
export function differencesOf(one: Piece, other: Piece, motion: Affine, depths: readonly number[]): Differences {
  const mine = outlineOf(one).whole;
  const theirs = transformPath(motion, outlineOf(other).whole);
  const there = widestGap(mine, theirs);
  const back = widestGap(theirs, mine);
  const gap = there.width >= back.width ? there : { width: back.width, from: back.to, to: back.from };
  return {
    gap,
    edges: edgePairs(one, other, motion),
    levels: depths.flatMap((depth) => {
      const [mineAt, theirsAt] = [levelLine(one, depth), levelLine(other, depth)];
      return mineAt && theirsAt ? [{ depth, one: mineAt.length, other: theirsAt.length }] : [];
    }),
    areas: [Math.abs(signedArea(mine)), Math.abs(signedArea(outlineOf(other).whole))],
  };
}

/** The place of a path that lies furthest from another. */
function widestGap(path: Path, from: Path): Gap {
  const length = pathLength(path);
  const count = Math.max(8, Math.ceil(length / LOOK_EVERY));
  const at = (along: number): Gap => {
    const { point } = pathAtLength(path, along);
    const near = nearestOnPath(from, point);
    return { width: near.distance, from: point, to: near.point };
  };
  let best = at(0);
  let bestAt = 0;
  for (let i = 1; i < count; i++) {
    const along = (length * i) / count;
    const gap = at(along);
    if (gap.width > best.width) [best, bestAt] = [gap, along];
  }
  // Corners are looked at themselves: there a gap comes to a point.
  for (const { along, point } of cornersOf(path)) {
    const near = nearestOnPath(from, point);
    if (near.distance > best.width) [best, bestAt] = [{ width: near.distance, from: point, to: near.point }, along];
  }
  for (let step = length / count; step > LOOK_EVERY / 100; step /= 2) {
    for (const along of [bestAt - step, bestAt + step]) {
      const gap = at(Math.min(length, Math.max(0, along)));
      if (gap.width > best.width) [best, bestAt] = [gap, along];
    }
  }
  return best;
}

function cornersOf(path: Path): { along: number; point: Point }[] {
  let along = 0;
  return path.map((stretch) => {
    const at = { along, point: stretch.p0 };
    along += pathLength([stretch]);
    return at;
  });
}

function edgePairs(one: Piece, other: Piece, motion: Affine): EdgePair[] {
  const left = new Set(other.edges);
  const pairs = new Map<Edge, Edge>();
  const take = (mine: Edge, theirs: Edge | undefined) => {
    if (!theirs || pairs.has(mine)) return;
    left.delete(theirs);
    pairs.set(mine, theirs);
  };
  for (const mine of one.edges)
    take(
      mine,
      [...left].find(({ id }) => id === mine.id),
    );
  for (const mine of one.edges) {
    if (!pairs.has(mine) && mine.name !== '')
      take(
        mine,
        [...left].find(({ name }) => name === mine.name),
      );
  }
  for (const mine of one.edges) {
    if (pairs.has(mine)) continue;
    const at = middleOf(one, mine);
    const like = [...left].filter(({ role }) => role === mine.role);
    const off = (theirs: Edge) => distance(at, transformPoint(motion, middleOf(other, theirs)));
    take(mine, like.sort((a, b) => off(a) - off(b))[0]);
  }
  const side = (piece: Piece, edge: Edge | undefined) => edge && { edge, length: netEdgeLength(piece, edge.id) ?? 0 };
  return [
    ...one.edges.map((mine) => ({ one: side(one, mine), other: side(other, pairs.get(mine)) })),
    ...[...left].map((theirs) => ({ one: undefined, other: side(other, theirs) })),
  ];
}

function middleOf(piece: Piece, edge: Edge): Point {
  const path = outlineOf(piece).edges[piece.edges.indexOf(edge)] ?? [];
  return pathAtLength(path, pathLength(path) / 2).point;
}
