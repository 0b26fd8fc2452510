import { outlineOf } from '../garment/outline';
import type { Edge, Piece } from '../garment/piece';
import { type Affine, transformPath, transformPoint } from '../geometry/affine';
import { pathAtLength, pathLength, pathStart, signedArea } from '../geometry/path';
import { distance, type Point } from '../geometry/point';
import type { Path } from '../geometry/segment';
import { netEdgeLength } from '../seams/edge-length';
import { levelLine } from '../shaping/level-line';
import { type Gap, type Gaps, gapsBetween, ringOf, wider } from './gaps';

/**
 * Two edges that stand for one another, with their sewn lengths and the widest gaps between them; only one of them where
 * the other piece has none.
 */
export interface EdgePair {
  readonly one: { readonly edge: Edge; readonly length: number } | undefined;
  readonly other: { readonly edge: Edge; readonly length: number } | undefined;
  readonly gaps: Gaps | undefined;
}

/** How two pieces differ when one is laid over the other. Lengths mm, areas mm². */
export interface Differences {
  /** The widest of all, of no width where one lies exactly on the other. */
  readonly gap: Gap;
  /** The widest where the other lies outside, and where it lies inside. */
  readonly gaps: Gaps;
  readonly edges: readonly EdgePair[];
  /** The width of each at levels below the waist, where both have one. */
  readonly levels: readonly { readonly depth: number; readonly one: number; readonly other: number }[];
  readonly areas: readonly [number, number];
}

/**
 * One piece beside another laid over it by a motion. Edges stand for one another by their id, then by name, then by role
 * and place; `depths` are levels below the waist.
 */
export function differencesOf(one: Piece, other: Piece, motion: Affine, depths: readonly number[]): Differences {
  const mine = outlineOf(one).whole;
  const theirs = transformPath(motion, outlineOf(other).whole);
  const rings = { one: ringOf(mine), other: ringOf(theirs) };
  const gaps = gapsBetween({ run: mine, ring: rings.one }, { run: theirs, ring: rings.other });
  const start = pathStart(mine);
  const edgeGaps = (pair: Pair) => {
    const [run, otherRun] = [pathOf(one, pair.one?.edge), pathOf(other, pair.other?.edge)];
    if (!run || !otherRun) return undefined;
    return gapsBetween({ run, ring: rings.one }, { run: transformPath(motion, otherRun), ring: rings.other });
  };
  return {
    gap: wider(gaps.out, gaps.in) ?? { width: 0, from: start, to: start },
    gaps,
    edges: edgePairs(one, other, motion).map((pair) => ({ ...pair, gaps: edgeGaps(pair) })),
    levels: depths.flatMap((depth) => {
      const [mineAt, theirsAt] = [levelLine(one, depth), levelLine(other, depth)];
      return mineAt && theirsAt ? [{ depth, one: mineAt.length, other: theirsAt.length }] : [];
    }),
    areas: [Math.abs(signedArea(mine)), Math.abs(signedArea(outlineOf(other).whole))],
  };
}

type Pair = Omit<EdgePair, 'gaps'>;

function pathOf(piece: Piece, edge: Edge | undefined): Path | undefined {
  return edge && outlineOf(piece).edges[piece.edges.indexOf(edge)];
}

function edgePairs(one: Piece, other: Piece, motion: Affine): Pair[] {
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
  const path = pathOf(piece, edge) ?? [];
  return pathAtLength(path, pathLength(path) / 2).point;
}
