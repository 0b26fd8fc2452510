import { outlineOf } from '../garment/outline';
import type { Piece } from '../garment/piece';
import { reflectionIn, transformPoint } from '../geometry/affine';
import { distanceToChord, flattenPath } from '../geometry/flatten';
import { move, type Point } from '../geometry/point';
import { ringArea } from '../geometry/polygon';

/** A piece is its own mirror image when no part of it lies further off than this, in mm: the careful seam tolerance. */
const ALIKE = 25.4 / 16;

/** How closely the outline is flattened for the comparison, in mm. */
const FLATNESS = 0.3;

/**
 * Whether a piece has a line in which it is its own mirror image, so that it can be cut either side up. Marks do not
 * count. Tried are the lines through the middle of its area and a corner or the middle between two: every mirror
 * line of a piece is one of these, except on pieces that are one smooth curve.
 */
export function hasMirrorAxis(piece: Piece): boolean {
  const { whole } = outlineOf(piece);
  const ring = flattenPath(whole, FLATNESS).slice(0, -1);
  const centre = centreOf(ring);
  if (!centre) return true;
  const corners = piece.corners.map(({ at }) => at);
  const angles = corners.map(({ x, y }) => Math.atan2(y - centre.y, x - centre.x));
  return angles.some((a, i) =>
    angles.slice(i).some((b) => [0, Math.PI / 2].some((turn) => isAxis(ring, centre, (a + b) / 2 + turn))),
  );
}

function isAxis(ring: readonly Point[], centre: Point, angle: number): boolean {
  const along = move(centre, { dx: Math.cos(angle), dy: Math.sin(angle) });
  const mirror = reflectionIn(centre, along);
  if (!mirror) return false;
  // A mirror image runs round the other way, so the next place is near a side just before the one found last.
  let from = 0;
  return ring.every((point) => {
    const side = sideNear(ring, transformPoint(mirror, point), from);
    from = side ?? from;
    return side !== undefined;
  });
}

/** A side of the ring that a place lies on, sought both ways from one of them. */
function sideNear(ring: readonly Point[], place: Point, from: number): number | undefined {
  const count = ring.length;
  const isNear = (i: number) => distanceToChord(place, ring[i] as Point, ring[(i + 1) % count] as Point) <= ALIKE;
  for (let away = 0; away <= count / 2; away++) {
    const [before, after] = [(from - away + count) % count, (from + away) % count];
    if (isNear(before)) return before;
    if (isNear(after)) return after;
  }
  return undefined;
}

/** The centre of area of a ring; `undefined` when it encloses nothing. */
function centreOf(ring: readonly Point[]): Point | undefined {
  const area = ringArea(ring);
  const origin = ring[0];
  if (!origin || area === 0) return undefined;
  let sumX = 0;
  let sumY = 0;
  ring.forEach((a, i) => {
    const b = ring[(i + 1) % ring.length] as Point;
    const [ax, ay, bx, by] = [a.x - origin.x, a.y - origin.y, b.x - origin.x, b.y - origin.y];
    const twice = ax * by - bx * ay;
    sumX += (ax + bx) * twice;
    sumY += (ay + by) * twice;
  });
  return { x: origin.x + sumX / (6 * area), y: origin.y + sumY / (6 * area) };
}
