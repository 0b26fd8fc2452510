import { type Point, scaleVector, type Vector } from '../geometry/point';
import { line, type Path, type Segment } from '../geometry/segment';

/** One edge at a corner: its line at the width of its allowance, in the direction the outline is run. */
export interface Strip {
  readonly path: Path;
  /** The allowance; 0 where `path` is the stitch line itself. */
  readonly width: number;
  readonly isHem: boolean;
}

/** A corner of the stitch line and the two directions there, both in the direction the outline is run. */
export interface CornerPlace {
  readonly at: Point;
  readonly arriving: Vector;
  readonly leaving: Vector;
  /** 1 when outward is to the left of travel, -1 when to the right. */
  readonly outward: 1 | -1;
  /** The turn, positive where the piece juts out and negative where it is hollow. */
  readonly turn: number;
}

/** What becomes of one end of a strip: so much of its length is taken off, then `extra` follows (or, at a start, leads in). */
export interface StripEnd {
  readonly taken: number;
  readonly extra: Path;
}

/** How two strips are joined at a corner. */
export interface Joint {
  readonly before: StripEnd;
  readonly after: StripEnd;
  /** Where both ends are brought together when they miss one another by less than a hair. */
  readonly meet?: Point;
  /** The mitre was cut off. */
  readonly blunted?: true;
}

/** The unit direction out of the piece, square to `direction`. */
export function outwardOf({ outward }: CornerPlace, direction: Vector): Vector {
  return scaleVector({ dx: direction.dy, dy: -direction.dx }, outward);
}

/** Straight lines from point to point, none for steps without length. */
export function linesThrough(...points: readonly Point[]): Path {
  const path: Segment[] = [];
  for (let i = 1; i < points.length; i++) {
    const [from, to] = [points[i - 1] as Point, points[i] as Point];
    if (from.x !== to.x || from.y !== to.y) path.push(line(from, to));
  }
  return path;
}

/** A path carried straight on to `to`, which lies ahead of its end: a straight last stretch is simply made longer. */
export function carriedOn(path: Path, to: Point): Path {
  const last = path[path.length - 1];
  if (last?.kind === 'line') return [...path.slice(0, -1), line(last.p0, to)];
  return last ? [...path, line(last.p3, to)] : path;
}
