/** The lines of a piece along its edges: where it is cut, sewn and folded, and the notches across. */
import { outlineOf } from '../garment/outline';
import type { Notch, Piece } from '../garment/piece';
import { nearestOnPath, pathAtLength, pathEnd, pathLength, pathStart } from '../geometry/path';
import { distance, move, type Point, quarterTurn, scaleVector, unit, vectorBetween } from '../geometry/point';
import type { Path } from '../geometry/segment';
import { allowanceOf } from '../seams/allowance-strips';
import { windingOf } from '../seams/corner-angle';
import type { CutLineSoFar } from '../seams/cut-line';
import { head, stroke } from './arrows';
import type { Stroke } from './drawing';

/** A notch reaches from cut line to stitch line and is at least this long: 1/4 in (common practice). */
const NOTCH_LENGTH = 25.4 / 4;

/** Notches side by side stand this far apart, in mm: 1/4 in between two, so that pencil and scissors keep them apart. */
const NOTCH_STEP = 25.4 / 4;

/** How far inside a fold its bracket runs, in mm, but never more than a sixth of the fold. */
const BRACKET_DEPTH = 15;

/** The cut line: one closed stroke, or strokes between folds, for nobody cuts along a fold. */
export function cutStrokes(piece: Piece, cut: CutLineSoFar): Stroke[] {
  if (cut.kind !== 'cut-line') return [];
  const folds = piece.edges.flatMap(({ role }, index) => (role === 'fold' ? (cut.edges[index] ?? []) : []));
  if (folds.length === 0) return [{ kind: 'stroke', line: 'cut', path: cut.whole }];
  const isFold = new Set(folds);
  const first = cut.whole.findIndex((segment) => isFold.has(segment));
  const strokes: Stroke[] = [];
  let run: Path[number][] = [];
  for (let k = 0; k < cut.whole.length; k++) {
    const segment = cut.whole[(Math.max(0, first) + k) % cut.whole.length] as Path[number];
    if (!isFold.has(segment)) run.push(segment);
    else if (run.length > 0) {
      strokes.push({ kind: 'stroke', line: 'cut', path: run });
      run = [];
    }
  }
  if (run.length > 0) strokes.push({ kind: 'stroke', line: 'cut', path: run });
  return strokes;
}

/** The stitch line of every edge that is sewn inside the cut line. */
export function stitchStrokes(piece: Piece, cut: CutLineSoFar): Stroke[] {
  if (piece.drawnAs === 'included' && cut.kind === 'cut-line') return [];
  const { edges } = outlineOf(piece);
  return piece.edges.flatMap((edge, index): Stroke[] => {
    if (edge.role === 'fold') return [];
    if (cut.kind === 'cut-line' && (allowanceOf(edge) ?? 0) === 0) return [];
    return [{ kind: 'stroke', line: 'stitch', path: edges[index] as Path }];
  });
}

/** Each fold, carried on to where the cut line meets it, with a bracket inside that points at it. */
export function foldStrokes(piece: Piece, cut: CutLineSoFar): Stroke[] {
  const { edges } = outlineOf(piece);
  const inwards = -windingOf(piece);
  return piece.edges.flatMap((edge, index): Stroke[] => {
    if (edge.role !== 'fold') return [];
    const stitch = edges[index] as Path;
    const carried = cut.kind === 'cut-line' ? cut.edges[index] : undefined;
    const path = carried && carried.length > 0 ? carried : stitch;
    return [{ kind: 'stroke', line: 'fold', path }, ...bracket(stitch, inwards)];
  });
}

function bracket(fold: Path, inwards: number): Stroke[] {
  const [from, to] = [pathStart(fold), pathEnd(fold)];
  const along = unit(vectorBetween(from, to));
  if (!along) return [];
  const length = distance(from, to);
  const depth = Math.min(BRACKET_DEPTH, length / 6);
  const into = scaleVector(quarterTurn(along), -inwards * depth);
  const [a, b] = [move(from, along, length / 4), move(to, along, -length / 4)];
  const [inA, inB] = [move(a, into), move(b, into)];
  return [
    stroke('grain', inA, inB),
    stroke('grain', inA, a),
    ...head('grain', inA, a),
    stroke('grain', inB, b),
    ...head('grain', inB, b),
  ];
}

/** The cuts of a notch, side by side, each square to the stitch line and from there to the cut line. */
export function notchStrokes(piece: Piece, cut: CutLineSoFar, notch: Notch): Stroke[] {
  const index = piece.edges.findIndex(({ id }) => id === notch.edgeId);
  const edge = piece.edges[index];
  const stitch = outlineOf(piece).edges[index];
  if (!edge || !stitch) return [];
  const length = pathLength(stitch);
  const width = cut.kind === 'cut-line' && piece.drawnAs !== 'included' ? (allowanceOf(edge) ?? 0) : 0;
  const outward = windingOf(piece);
  return Array.from({ length: notch.count }, (_, i) => {
    const along = notch.along + (i - (notch.count - 1) / 2) * NOTCH_STEP;
    const { point, tangent } = pathAtLength(stitch, Math.min(length, Math.max(0, along)));
    const out = scaleVector({ dx: tangent.dy, dy: -tangent.dx }, outward);
    const outer = reach(cut, index, point, move(point, out, width));
    return stroke('notch', outer, move(outer, out, -Math.max(distance(point, outer), NOTCH_LENGTH)));
  });
}

/** Where a mark square to an edge meets the cut line; a neighbour's allowance may have cut it shorter than `outer`. */
export function reach(cut: CutLineSoFar, index: number, point: Point, outer: Point): Point {
  const edge = cut.kind === 'cut-line' ? cut.edges[index] : undefined;
  if (!edge || edge.length === 0) return point;
  const near = nearestOnPath(edge, outer);
  return near.distance < 0.05 ? outer : near.point;
}
