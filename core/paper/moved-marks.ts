import type { Mark, Words } from '../drawing/drawing';
import { readable } from '../drawing/edge-words';
import type { Motion } from '../garment/printed';
import {
  type Affine,
  composeAffine,
  rotationAbout,
  transformPath,
  transformPoint,
  translation,
} from '../geometry/affine';
import type { Point } from '../geometry/point';

export const STAYS_PUT: Motion = { angle: 0, dx: 0, dy: 0 };

/** The map from the table to the sheets. */
export function motionMap({ angle, dx, dy }: Motion): Affine {
  return composeAffine(translation({ dx, dy }), rotationAbout({ x: 0, y: 0 }, angle));
}

/** Where a place of the table lies on the sheets. */
export function movedPoint(motion: Motion, point: Point): Point {
  return transformPoint(motionMap(motion), point);
}

/**
 * A drawing turned and moved; the very same one where nothing moves. Words turn with the piece, those along a line so that
 * they are never upside down.
 */
export function movedMarks(marks: readonly Mark[], motion: Motion): readonly Mark[] {
  const { angle, dx, dy } = motion;
  if (angle === 0 && dx === 0 && dy === 0) return marks;
  const map = motionMap(motion);
  return marks.map((mark) =>
    mark.kind === 'stroke'
      ? { ...mark, path: transformPath(map, mark.path) }
      : { ...mark, at: transformPoint(map, mark.at), angle: turnedWords(mark, angle) },
  );
}

function turnedWords({ role, angle }: Words, by: number): number {
  return role === 'edge' || role === 'grain' ? readable(angle + by) : angle + by;
}

/** The motion that follows when the piece itself was moved on the table by `by` before. */
export function motionAfter(motion: Motion, by: { readonly dx: number; readonly dy: number }): Motion {
  const back = movedPoint({ ...motion, dx: 0, dy: 0 }, { x: by.dx, y: by.dy });
  return { angle: motion.angle, dx: motion.dx - back.x, dy: motion.dy - back.y };
}
