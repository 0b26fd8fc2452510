/**
 * Where a piece is cut: each edge's stitch line carried out by its allowance, and the corners between.
 *
 * The line is made edge by edge from exact parallels (`allowance-strips.ts`) and then looked over: it must not cross
 * itself or the stitch line. Where it would, it is worked out anew as the boundary of areas (`strip-union.ts`), which
 * says what falls to it. A line that still crosses is never given: the allowance does not fit.
 */
import { outlineOf } from '../garment/outline';
import type { Piece } from '../garment/piece';
import { pathLength, pathStart } from '../geometry/path';
import type { Point } from '../geometry/point';
import type { Path } from '../geometry/segment';
import { selfCrossings } from '../geometry/self-crossing';
import { type AllowanceStrip, allowanceOf, allowanceStrips } from './allowance-strips';
import { goesSomewhere, windingOf } from './corner-angle';
import { partsOverDarts } from './cut-line-darts';
import { type CutPart, chained, isClear, stitchCrossing } from './cut-line-parts';
import { stripUnion } from './strip-union';

/** The line along which a piece is cut. */
export interface CutLine {
  readonly kind: 'cut-line';
  /** Closed, run the way the outline is. */
  readonly whole: Path;
  /** The part that belongs to each edge, in the order of the edges; empty where an edge has none, of several the longest. */
  readonly edges: readonly Path[];
  /** Corners whose mitre was cut off. */
  readonly blunted: readonly string[];
  /** Short edges that have no part of the cut line: their neighbours' allowances cover them. */
  readonly swallowed: readonly string[];
}

/** Some edges have no allowance said; a fold needs none. */
export interface NoAllowanceSaid {
  readonly kind: 'no-allowance-said';
  readonly edgeIds: readonly string[];
}

/** The stitch line crosses itself or encloses nothing, so nothing is outside it. */
export interface CrossedOutline {
  readonly kind: 'crossed-outline';
  readonly at: Point;
}

/** There is no room for the allowances of these edges: in a slot too narrow, or a hollow too tight. */
export interface AllowanceDoesNotFit {
  readonly kind: 'allowance-does-not-fit';
  readonly edgeIds: readonly string[];
  readonly at: Point;
}

export type CutLineSoFar = CutLine | CrossedOutline | AllowanceDoesNotFit;

/** How closely lines are flattened when they are looked over for crossings, in mm: at first, and after areas. */
const LOOK_FLATNESS = 0.05;
const FINE_FLATNESS = 0.005;

/** An edge longer than so many times the widest allowance about it cannot be swallowed silently. */
const SWALLOWED_AT_MOST = 2;

const remembered = new WeakMap<Piece, CutLineSoFar>();

/**
 * The cut line of a piece, or why there is none. A piece drawn with allowances included is cut along its outline. Every
 * allowance counts as set, whatever the shape; 0 is an allowance. Within 0.01 mm of the true parallel, and never across
 * the stitch line. Remembered for as long as the piece is.
 */
export function cutLine(piece: Piece): CutLineSoFar | NoAllowanceSaid {
  if (piece.drawnAs !== 'included') {
    const edgeIds = piece.edges.filter((edge) => allowanceOf(edge) === undefined).map(({ id }) => id);
    if (edgeIds.length > 0) return { kind: 'no-allowance-said', edgeIds };
  }
  return cutLineSoFar(piece);
}

/** The cut line with allowances not yet said counting as none, for showing while she works. */
export function cutLineSoFar(piece: Piece): CutLineSoFar {
  const known = remembered.get(piece);
  if (known) return known;
  const made = workedOut(piece);
  remembered.set(piece, made);
  return made;
}

function workedOut(piece: Piece): CutLineSoFar {
  const outline = outlineOf(piece);
  if (!goesSomewhere(outline.whole)) return { kind: 'crossed-outline', at: pathStart(outline.whole) };
  const { strips, joined, blunted } = allowanceStrips(piece);
  const isAsDrawn = piece.drawnAs === 'included' || strips.every(({ width }) => width === 0);
  const cornerIds = blunted.map((index) => (piece.corners[index] as Piece['corners'][number]).id);
  if (!isAsDrawn && joined) {
    const parts = chained(strips.map(({ edgeIndex, cut }) => ({ edgeIndex, path: cut })));
    if (parts && isClear(piece, parts, LOOK_FLATNESS)) {
      return fromParts(piece, overDarts(piece, parts, LOOK_FLATNESS), cornerIds);
    }
  }
  const crossed = stitchCrossing(piece, LOOK_FLATNESS);
  if (crossed) return { kind: 'crossed-outline', at: crossed };
  if (!isAsDrawn) return fromUnion(piece, strips, cornerIds);
  return fromParts(
    piece,
    overDarts(
      piece,
      outline.edges.map((path, edgeIndex) => ({ edgeIndex, path })),
      LOOK_FLATNESS,
    ),
    [],
  );
}

/** The parts led over the caps of the darts, unless they would then cross; a piece drawn to be cut is cut as drawn. */
function overDarts(piece: Piece, parts: readonly CutPart[], flatness: number): readonly CutPart[] {
  if (piece.darts.length === 0 || piece.drawnAs === 'included') return parts;
  const led = chained(partsOverDarts(piece, parts));
  return led && isClear(piece, led, flatness) ? led : parts;
}

function fromUnion(piece: Piece, strips: readonly AllowanceStrip[], blunted: readonly string[]): CutLineSoFar {
  const crossed = selfCrossings(outlineOf(piece).whole)[0];
  if (crossed) return { kind: 'crossed-outline', at: crossed.point };
  const union = stripUnion(strips, windingOf(piece));
  if (union.kind === 'no-room') return doesNotFit(piece, [union.edgeIndex], union.at);
  for (const choice of [union.exact, union.flat]) {
    const parts = chained(choice);
    if (!parts || !isClear(piece, parts, FINE_FLATNESS)) continue;
    const lost = strips.filter((strip) => isTooLongToLose(strips, strip) && !hasPart(parts, strip.edgeIndex));
    const first = lost[0];
    if (!first) return fromParts(piece, overDarts(piece, parts, FINE_FLATNESS), blunted);
    const indexes = lost.map(({ edgeIndex }) => edgeIndex);
    return doesNotFit(piece, indexes, pathStart(first.stitch));
  }
  const widest = strips.reduce((a, b) => (b.width > a.width ? b : a));
  return doesNotFit(piece, [widest.edgeIndex], pathStart(widest.stitch));
}

function isTooLongToLose(strips: readonly AllowanceStrip[], strip: AllowanceStrip): boolean {
  const at = strips.indexOf(strip);
  const around = [strips.at(at - 1), strip, strips[(at + 1) % strips.length]];
  const widest = Math.max(...around.map((each) => each?.width ?? 0));
  return pathLength(strip.stitch) > SWALLOWED_AT_MOST * widest;
}

function hasPart(parts: readonly CutPart[], index: number): boolean {
  return parts.some(({ edgeIndex }) => edgeIndex === index);
}

function doesNotFit(piece: Piece, edgeIndexes: readonly number[], at: Point): AllowanceDoesNotFit {
  const edgeIds = edgeIndexes.map((index) => (piece.edges[index] as Piece['edges'][number]).id);
  return { kind: 'allowance-does-not-fit', edgeIds, at };
}

function fromParts(piece: Piece, parts: readonly CutPart[], blunted: readonly string[]): CutLine {
  const edges: Path[] = piece.edges.map(() => []);
  for (const { edgeIndex, path } of parts) {
    const before = edges[edgeIndex] as Path;
    if (before.length === 0 || pathLength(path) > pathLength(before)) edges[edgeIndex] = path;
  }
  const stitches = outlineOf(piece).edges;
  const swallowed = piece.edges
    .filter((_, index) => edges[index]?.length === 0 && goesSomewhere(stitches[index] as Path))
    .map(({ id }) => id);
  return { kind: 'cut-line', whole: parts.flatMap(({ path }) => path), edges, blunted, swallowed };
}
