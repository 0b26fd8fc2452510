import type { Point } from '../../core/geometry/point';

/** A camera of our own that looks at a flat page: focal length and middle in pixels, tilts in degrees, distance in page units. */
export interface Camera {
  readonly focalPx: number;
  readonly centre: Point;
  readonly tilt: readonly [x: number, y: number, z: number];
  readonly distance: number;
  /** The place of the page the camera looks at. */
  readonly lookAt: Point;
}

/** Where a place of the page is seen in the photo, by the pinhole rule. */
export function seenBy({ focalPx, centre, tilt, distance, lookAt }: Camera): (page: Point) => Point {
  const [a, b, c] = tilt.map((degrees) => (degrees * Math.PI) / 180) as [number, number, number];
  const turn = (p: readonly number[]): number[] => {
    const [x, y, z] = p as [number, number, number];
    const [x1, y1, z1] = [x, y * Math.cos(a) - z * Math.sin(a), y * Math.sin(a) + z * Math.cos(a)];
    const [x2, y2, z2] = [x1 * Math.cos(b) + z1 * Math.sin(b), y1, -x1 * Math.sin(b) + z1 * Math.cos(b)];
    return [x2 * Math.cos(c) - y2 * Math.sin(c), x2 * Math.sin(c) + y2 * Math.cos(c), z2];
  };
  return ({ x, y }) => {
    const [u, v, w] = turn([x - lookAt.x, y - lookAt.y, 0]) as [number, number, number];
    return { x: centre.x + (focalPx * u) / (w + distance), y: centre.y + (focalPx * v) / (w + distance) };
  };
}
