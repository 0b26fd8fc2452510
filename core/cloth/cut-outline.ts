import { flattenPath } from '../geometry/flatten';
import { endTangent, startTangent } from '../geometry/path';
import { cross, dot, move, type Point, quarterTurn, scaleVector, type Vector, vectorBetween } from '../geometry/point';
import { ringArea } from '../geometry/polygon';
import type { Path } from '../geometry/segment';
import { fewerCorners } from './fewer-corners';

/**
 * A straight side and a chord that turn by less than this (its sine) are joined by a small step, for they would meet far
 * off; two chords that turn by less than the other are in line.
 */
const SMOOTH = 0.05;
const IN_LINE = 1e-9;

/** One straight side of the outline, already carried outward. */
interface Side {
  readonly from: Point;
  readonly to: Point;
  /** By how much. */
  readonly by: number;
}

/**
 * A closed path as a ring of straight sides that holds all of it: no part of the path lies outside, and between corners
 * no side further than `tolerance` from it. Straight stretches stay exactly where they are, so that a breadth as wide as
 * the cloth still fits; only the chords of curves are carried outward by what a chord may cut off, and corners that hardly matter are left out. Clockwise to the eye.
 */
export function cutOutline(path: Path, tolerance: number): Point[] {
  const reach = tolerance / 4;
  const flat = flattenPath(path, reach).slice(0, -1);
  const clockwise = ringArea(flat) >= 0;
  const sides: Side[] = path.flatMap((segment) => {
    const points = flattenPath([segment], reach);
    const by = segment.kind === 'line' || isStraight(segment) ? 0 : clockwise ? reach : -reach;
    return points.slice(1).flatMap((to, i) => {
      const from = points[i] as Point;
      const run = vectorBetween(from, to);
      const length = Math.hypot(run.dx, run.dy);
      if (length === 0) return [];
      const out = scaleVector(quarterTurn(run), -by / length);
      return [{ from: move(from, out), to: move(to, out), by }];
    });
  });
  const corners = sides.flatMap((side, i) =>
    joint(sides[(i + sides.length - 1) % sides.length] as Side, side, clockwise),
  );
  return fewerCorners(clockwise ? corners : corners.reverse(), tolerance / 2);
}

function isStraight(segment: Path[number]): boolean {
  const chord = vectorBetween(segment.p0, segment.kind === 'line' ? segment.p1 : segment.p3);
  const size = Math.hypot(chord.dx, chord.dy);
  return [startTangent([segment]), endTangent([segment])].every(
    (tangent) => Math.abs(cross(tangent, chord)) < 1e-9 * size && dot(tangent, chord) > 0,
  );
}

/** The corner or corners between two sides that followed one another before they were carried outward. */
function joint(before: Side, after: Side, clockwise: boolean): Point[] {
  const a = vectorBetween(before.from, before.to);
  const b = vectorBetween(after.from, after.to);
  const size = Math.hypot(a.dx, a.dy) * Math.hypot(b.dx, b.dy);
  const turn = (cross(a, b) / size) * (clockwise ? 1 : -1);
  if (before.to.x === after.from.x && before.to.y === after.from.y) return [after.from];
  const alike = before.by === after.by;
  if (alike && Math.abs(turn) < IN_LINE && dot(a, b) > 0) return [before.to];
  const sharpBack = dot(a, b) < 0 && Math.abs(turn) < 0.5;
  if ((!alike && Math.abs(turn) < SMOOTH) || sharpBack) return [before.to, after.from];
  return [meeting(before, a, after, b)];
}

function meeting(before: Side, a: Vector, after: Side, b: Vector): Point {
  const t = cross(vectorBetween(before.from, after.from), b) / cross(a, b);
  return move(before.from, a, t);
}
