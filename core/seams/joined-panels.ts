/**
 * The waist of a ring with its panels laid side by side: darts closed, side seams together, each panel moved but not bent.
 *
 * Panels are named in their order round. When all are cut on the fold or in pairs, half of the garment is joined, from fold
 * to fold. Which sides meet is read from the seams of the garment; where no seam says so, panels follow one another
 * as they are drawn, and a last one with a fold ends on it. Limit: of a panel with two waists only the first is taken.
 */
import { isGuide } from '../garment/cut-pieces';
import type { Garment } from '../garment/garment';
import { neighbourIndex, outlineOf } from '../garment/outline';
import type { EdgeRole, Piece } from '../garment/piece';
import { type EdgeRef, isSameEdge } from '../garment/seam';
import { takenUp } from '../garment/taken-up';
import { type Affine, composeAffine, IDENTITY, rotationAbout, transformPath, translation } from '../geometry/affine';
import { joinPaths, pathAtLength, pathLength, pathStart, reversePath, subPath } from '../geometry/path';
import { between, distance, type Point, SAME_POINT, turnBetween, type Vector, vectorBetween } from '../geometry/point';
import { line, type Path } from '../geometry/segment';
import { windingOf } from './corner-angle';
import type { RoundPiece } from './proposed-seams';

/** One panel in its place: the runs of its waist between closed darts, from left to right. */
export interface JoinedPanel {
  readonly pieceId: string;
  readonly waist: readonly Path[];
}

/** The waist begins at (0, 0), its first side straight down, and runs to the right. */
export interface JoinedPanels {
  readonly kind: 'joined-panels';
  /** How often the joined part comes in the whole garment: 2 for a half. */
  readonly repeats: number;
  readonly panels: readonly JoinedPanel[];
  /** All runs one after another; where legs of a dart or seams do not quite meet, the gap is closed straight. */
  readonly line: Path;
  /** The sewn waist of the joined part, without such gaps (mm). */
  readonly length: number;
  readonly startsOn: EdgeRole;
  readonly endsOn: EdgeRole;
}

export interface NoJoinedPanels {
  readonly kind: 'no-joined-panels';
  readonly why: 'no-panel' | 'no-waist';
}

/** A panel that is to be laid: mirrored or as drawn, from the side it enters by to the one it is left by. */
interface LaidOut {
  readonly piece: Piece;
  readonly entry: Side;
  readonly exit: Side;
  readonly runs: readonly Path[];
}

/** A side of a panel, going down from the waist. */
interface Side extends EdgeRef {
  readonly role: EdgeRole;
  readonly path: Path;
}

/** Side seams, and so the panels, are laid together by their corner and by where they lie `over` mm further down. */
export function joinedPanels(
  garment: Garment,
  ring: readonly RoundPiece[],
  { over }: { readonly over: number },
): JoinedPanels | NoJoinedPanels {
  const members = ring.filter(({ piece, times }) => !isGuide(piece) && times > 0);
  if (members.length === 0) return { kind: 'no-joined-panels', why: 'no-panel' };
  const isHalf = members.every(({ piece, times }) => piece.cut.how !== 'single' && times % 2 === 0);
  const pieces = members.flatMap(({ piece, times }) =>
    Array<Piece>(Math.round(isHalf ? times / 2 : times)).fill(piece),
  );
  const laid: LaidOut[] = [];
  for (const [i, piece] of pieces.entries()) {
    const plain = laidOut(piece, 'as-drawn');
    const mirrored = laidOut(piece, 'mirrored');
    if (!plain || !mirrored) return { kind: 'no-joined-panels', why: 'no-waist' };
    laid.push(isBetterMirrored(garment, plain, laid[i - 1], i === pieces.length - 1) ? mirrored : plain);
  }
  const [first, last] = [laid[0], laid.at(-1)];
  if (!first || !last) return { kind: 'no-joined-panels', why: 'no-panel' };
  let place = onto(first.entry.path, over, { x: 0, y: 0 }, { dx: 0, dy: 1 });
  const panels = laid.map((panel, i): JoinedPanel => {
    const before = laid[i - 1];
    if (before) {
      const exit = transformPath(place, before.exit.path);
      place = onto(panel.entry.path, over, pathStart(exit), downward(exit, over));
    }
    return { pieceId: panel.piece.id, waist: panel.runs.map((run) => transformPath(place, run)) };
  });
  const runs = panels.flatMap(({ waist }) => waist);
  return {
    kind: 'joined-panels',
    repeats: isHalf ? 2 : 1,
    panels,
    line: joinPaths(runs),
    length: runs.reduce((sum, run) => sum + pathLength(run), 0),
    startsOn: first.entry.role,
    endsOn: last.exit.role,
  };
}

/** The move that brings the top of a side to `at`, and the side below it into the direction `down`. */
function onto(side: Path, over: number, at: Point, down: Vector): Affine {
  const top = pathStart(side);
  const turn = rotationAbout(top, turnBetween(downward(side, over), down));
  return composeAffine(translation(vectorBetween(top, at)), turn);
}

function downward(side: Path, over: number): Vector {
  return vectorBetween(pathStart(side), pathAtLength(side, Math.min(Math.max(over, 1), pathLength(side))).point);
}

/** The first panel begins on its fold, the next where its seam is, and the last ends on its fold. */
function isBetterMirrored(garment: Garment, plain: LaidOut, before: LaidOut | undefined, isLast: boolean): boolean {
  const { entry, exit } = plain;
  if (!before) return exit.role === 'fold' && entry.role !== 'fold';
  const isSewn = (side: EdgeRef) => isPaired(garment, before.exit, side);
  if (isSewn(entry)) return false;
  if (isSewn(exit)) return true;
  return isLast && entry.role === 'fold' && exit.role !== 'fold';
}

function isPaired({ seams = [] }: Garment, a: EdgeRef, b: EdgeRef): boolean {
  const has = (side: readonly EdgeRef[], edge: EdgeRef) => side.some((each) => isSameEdge(each, edge));
  return seams.some(({ one, other }) => (has(one, a) && has(other, b)) || (has(one, b) && has(other, a)));
}

/** A panel with its waist from left to right above it; `undefined` without a waist. */
function laidOut(piece: Piece, as: 'as-drawn' | 'mirrored'): LaidOut | undefined {
  const { edges } = outlineOf(piece);
  const count = edges.length;
  const isWaist = (i: number) => piece.edges[(i + count) % count]?.role === 'waist';
  const first = edges.findIndex((_, i) => isWaist(i) && !isWaist(i - 1));
  if (first < 0) return undefined;
  const waist: number[] = [];
  for (let i = first; isWaist(i) && waist.length < count; i++) waist.push(i % count);
  const last = waist.at(-1) ?? first;
  const runs = closedRuns(piece, waist);
  // Run clockwise, a piece has its inside on the right: its waist goes from left to right above it.
  const isLeftwards = windingOf(piece) < 0 !== (as === 'mirrored');
  const map: Affine = as === 'mirrored' ? { ...IDENTITY, a: -1 } : IDENTITY;
  const [a, b] = [neighbourIndex(piece, first, -1), neighbourIndex(piece, last, 1)];
  // Closing the darts has turned whatever lies beyond them.
  const start = sideOf(piece, a, transformPath(map, reversePath(edges[a] ?? [])));
  const end = sideOf(piece, b, transformPath(map, transformPath(runs.turned, edges[b] ?? [])));
  const placed = runs.paths.map((path) => transformPath(map, path));
  return isLeftwards
    ? { piece, entry: end, exit: start, runs: placed.map(reversePath).reverse() }
    : { piece, entry: start, exit: end, runs: placed };
}

function sideOf(piece: Piece, index: number, path: Path): Side {
  const { id = '', role = 'seam' } = piece.edges[index] ?? {};
  return { pieceId: piece.id, edgeId: id, role, path };
}

/** The waist between its darts, each run turned round the points of the darts before it until the legs meet. */
function closedRuns(
  piece: Piece,
  waist: readonly number[],
): { readonly paths: readonly Path[]; readonly turned: Affine } {
  const { edges } = outlineOf(piece);
  let turned = IDENTITY;
  const paths: Path[] = [];
  for (const index of waist) {
    const path = edges[index] ?? [];
    const [id, length] = [piece.edges[index]?.id ?? '', pathLength(path)];
    let from = 0;
    for (const mouth of takenUp(piece, id, length)) {
      const run = subPath(path, from, mouth.from);
      if (run) paths.push(transformPath(turned, run));
      const dart = piece.darts.find(({ edgeId, along }) => edgeId === id && along >= mouth.from && along <= mouth.to);
      const [near, far] = [pathAtLength(path, mouth.from).point, pathAtLength(path, mouth.to).point];
      if (dart) {
        const turn = turnBetween(vectorBetween(dart.point, far), vectorBetween(dart.point, near));
        turned = composeAffine(turned, rotationAbout(dart.point, turn));
      } else {
        // A pleat closes straight along the edge; gathers are drawn up to a straight stretch.
        const left = between(near, far, (mouth.into ?? 0) / Math.max(distance(near, far), SAME_POINT));
        if (mouth.into) paths.push(transformPath(turned, [line(near, left)]));
        turned = composeAffine(turned, translation(vectorBetween(far, left)));
      }
      from = mouth.to;
    }
    const rest = subPath(path, from, length);
    if (rest) paths.push(transformPath(turned, rest));
  }
  return { paths, turned };
}
