/**
 * The shape of a rectangle from one photo of it.
 *
 * See: Z. Zhang & L. He, Whiteboard scanning and image enhancement, Digital Signal Processing 17 (2007); also
 * MSR-TR-2003-39. Square pixels, and a photo that was not cropped off centre.
 *
 * A guess to be offered, never a measure: corners clicked a pixel off put it wrong by up to 1 % in a good view, and by far
 * more when the camera was tilted about one axis only.
 */
import type { Point } from './point';

/** The corners of the rectangle in the photo: top left, top right, bottom right, bottom left. */
export type QuadCorners = readonly [Point, Point, Point, Point];

/** Width over height, and the focal length in pixels that goes with it. */
export interface RectangleAspect {
  readonly kind: 'aspect';
  readonly aspect: number;
  readonly focalPx: number;
}

/**
 * Why there is no answer: a pair of opposite sides stays parallel, so that any focal length would do; no real camera
 * sees a rectangle so; or the corners make no quadrilateral with room inside.
 */
export interface UndeterminedAspect {
  readonly kind: 'undetermined';
  readonly why: 'parallel-sides' | 'no-real-camera' | 'not-a-quad';
}

/** How near to 1 the two depth ratios may come before sides count as parallel: below what clicking could tell. */
const PARALLEL_SIDES = 1e-5;

/** The aspect of a rectangle seen by a camera of unknown focal length, with `imageCentre` the middle of the whole photo. */
export function rectangleAspect(corners: QuadCorners, imageCentre: Point): RectangleAspect | UndeterminedAspect {
  const sides = sidesInSpace(corners, imageCentre);
  if (!sides) return { kind: 'undetermined', why: 'not-a-quad' };
  const { across, down } = sides;
  // The third coordinates are the depth ratios less 1.
  if (Math.abs(across.z) < PARALLEL_SIDES || Math.abs(down.z) < PARALLEL_SIDES) {
    return { kind: 'undetermined', why: 'parallel-sides' };
  }
  const focalSq = -(across.x * down.x + across.y * down.y) / (across.z * down.z);
  if (!(focalSq > 0)) return { kind: 'undetermined', why: 'no-real-camera' };
  return withFocal(across, down, Math.sqrt(focalSq));
}

/** The aspect when the focal length is known (in pixels of this photo, above 0): right for every view, head-on too. */
export function rectangleAspectWithFocal(
  corners: QuadCorners,
  imageCentre: Point,
  focalPx: number,
): RectangleAspect | UndeterminedAspect {
  const sides = sidesInSpace(corners, imageCentre);
  if (!sides || !(focalPx > 0)) return { kind: 'undetermined', why: 'not-a-quad' };
  return withFocal(sides.across, sides.down, focalPx);
}

interface Triple {
  readonly x: number;
  readonly y: number;
  readonly z: number;
}

function withFocal(across: Triple, down: Triple, focalPx: number): RectangleAspect {
  const length = ({ x, y, z }: Triple) => Math.hypot(x / focalPx, y / focalPx, z);
  return { kind: 'aspect', aspect: length(across) / length(down), focalPx };
}

/** The sides from the top left corner as directions in space, up to the focal length: n2 and n3 of the paper. */
function sidesInSpace(
  [topLeft, topRight, bottomRight, bottomLeft]: QuadCorners,
  centre: Point,
): { readonly across: Triple; readonly down: Triple } | undefined {
  const ray = ({ x, y }: Point): Triple => ({ x: x - centre.x, y: y - centre.y, z: 1 });
  const [m1, m2, m3, m4] = [ray(topLeft), ray(topRight), ray(bottomLeft), ray(bottomRight)];
  const k2 = volume(m1, m4, m3) / volume(m2, m4, m3);
  const k3 = volume(m1, m4, m2) / volume(m3, m4, m2);
  if (!(Number.isFinite(k2) && Number.isFinite(k3) && k2 > 0 && k3 > 0)) return undefined;
  const across = { x: k2 * m2.x - m1.x, y: k2 * m2.y - m1.y, z: k2 - 1 };
  const down = { x: k3 * m3.x - m1.x, y: k3 * m3.y - m1.y, z: k3 - 1 };
  return { across, down };
}

/** (a × b) · c: for three image points, twice the area of their triangle. */
function volume(a: Triple, b: Triple, c: Triple): number {
  return (a.y * b.z - a.z * b.y) * c.x + (a.z * b.x - a.x * b.z) * c.y + (a.x * b.y - a.y * b.x) * c.z;
}
