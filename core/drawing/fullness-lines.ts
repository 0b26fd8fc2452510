/** Pleats and gathers as they are marked on a piece. */
import type { Gathers, Pleat } from '../garment/fullness';
import { outlineOf } from '../garment/outline';
import type { Piece } from '../garment/piece';
import { edgeIndex } from '../garment/with-piece';
import { intersectPaths } from '../geometry/intersect';
import { pathAtLength, pathLength } from '../geometry/path';
import { move, type Point, scaleVector, type Vector } from '../geometry/point';
import { line, type Path } from '../geometry/segment';
import { splineThrough } from '../geometry/spline';
import { windingOf } from '../seams/corner-angle';
import { arrow, stroke } from './arrows';
import type { LineKind, Mark, Stroke } from './drawing';
import { EDGE_SIZE, insideEdge } from './edge-words';

/** Lines of a pleat run so far in from the edge: 4 in, but never more than a third of the way across the piece. */
const PLEAT_LENGTH = 101.6;
const PLEAT_SHARE = 1 / 3;

/** The arrow of a pleat stands this share of its lines in from the edge. */
const ARROW_AT = 0.6;

/** The wavy line of gathers: its distance from the stitch line, half its height, and half a wave, in mm. */
const WAVE_INSIDE = 4;
const WAVE_HEIGHT = 1.2;
const HALF_WAVE = 5;

/** The ticks at both ends of gathers reach so far in (mm). */
const TICK = 8;

/** Words stand below the waves. */
const WORDS_ROW = 1;

/** Everything that marks the fullness of a piece: nothing for fullness on an edge that is not there. */
export function fullnessMarks(piece: Piece): Mark[] {
  return (piece.fullness ?? []).flatMap((one): Mark[] => {
    const path = outlineOf(piece).edges[edgeIndex(piece, one.edgeId)];
    if (!path) return [];
    return one.kind === 'pleat' ? pleatStrokes(piece, path, one) : gatherMarks(piece, path, one);
  });
}

/**
 * The lines of a pleat, square to its edge: each fold (dash-dot) is brought to its placement line (dashed), the way the
 * arrow points. A knife pleat has one fold; an inverted one two that meet; a box two that part.
 */
function pleatStrokes(piece: Piece, path: Path, { from, takes, laid }: Pleat): Stroke[] {
  const to = from + takes;
  const moves: Readonly<Record<Pleat['laid'], readonly (readonly [fold: number, placement: number])[]>> = {
    'to-start': [[to, from]],
    'to-end': [[from, to]],
    inverted: [
      [from, from + takes / 2],
      [to, from + takes / 2],
    ],
    box: [
      [from + takes / 4, from - takes / 4],
      [to - takes / 4, to + takes / 4],
    ],
  };
  const ways = moves[laid];
  const folds = ways.map(([fold]) => pleatLine(piece, path, 'pleat-fold', fold));
  const places = [...new Set(ways.map(([, place]) => place))].map((at) =>
    pleatLine(piece, path, 'pleat-placement', at),
  );
  const arrows = ways.flatMap(([fold, place]) =>
    arrow('grain', onLine(piece, path, fold), onLine(piece, path, place), 'one'),
  );
  return [...folds, ...places, ...arrows];
}

function pleatLine(piece: Piece, path: Path, kind: LineKind, along: number): Stroke {
  const { point, into } = placeInside(piece, path, along);
  return stroke(kind, point, move(point, into, reachAt(piece, point, into)));
}

function onLine(piece: Piece, path: Path, along: number): Point {
  const { point, into } = placeInside(piece, path, along);
  return move(point, into, reachAt(piece, point, into) * ARROW_AT);
}

/** How far the lines of a pleat run in from a place of the edge. */
function reachAt(piece: Piece, point: Point, into: Vector): number {
  const ray = [line(move(point, into, 1), move(point, into, PLEAT_LENGTH / PLEAT_SHARE))];
  const across = intersectPaths(ray, outlineOf(piece).whole)
    .map((meeting) => 1 + (meeting.kind === 'overlap' ? meeting.fromA : meeting.alongA))
    .reduce((least, each) => Math.min(least, each), PLEAT_LENGTH / PLEAT_SHARE);
  return across * PLEAT_SHARE;
}

/** A wavy line along the stretch, a tick at both ends, and how much is drawn up into how much. */
function gatherMarks(piece: Piece, path: Path, { from, to, into }: Gathers): Mark[] {
  const length = pathLength(path);
  const [begin, end] = [Math.max(0, from), Math.min(length, to)];
  if (!(end > begin)) return [];
  const waves = Math.max(2, Math.round((end - begin) / HALF_WAVE));
  const points = Array.from({ length: waves + 1 }, (_, i) => {
    const { point, into: inside } = placeInside(piece, path, begin + ((end - begin) * i) / waves);
    return move(point, inside, WAVE_INSIDE + (i % 2 === 0 ? WAVE_HEIGHT : -WAVE_HEIGHT));
  });
  const ticks = [begin, end].map((at) => {
    const { point, into: inside } = placeInside(piece, path, at);
    return stroke('gathers', point, move(point, inside, TICK));
  });
  return [
    { kind: 'stroke', line: 'gathers', path: splineThrough(points) },
    ...ticks,
    {
      kind: 'words',
      role: 'edge',
      content: { kind: 'gathers', length: end - begin, into },
      weight: 'plain',
      ...insideEdge(piece, path, begin + end, WORDS_ROW),
      size: EDGE_SIZE,
    },
  ];
}

/** A place of an edge and the unit direction into the piece there. */
function placeInside(piece: Piece, path: Path, along: number): { readonly point: Point; readonly into: Vector } {
  const { point, tangent } = pathAtLength(path, Math.min(pathLength(path), Math.max(0, along)));
  return { point, into: scaleVector({ dx: -tangent.dy, dy: tangent.dx }, windingOf(piece)) };
}
