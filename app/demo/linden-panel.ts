import type { Point } from '../../core/geometry/point';
import { inches } from '../../core/units/inch';

/**
 * The demo's own drawing, "Linden petticoat": one panel, printed as half the front on a fold, with the straight waist
 * that so many plates have. Full-size inches from the waist at the fold; the picture in public/demo is drawn from these
 * same numbers by scripts/draw-demo.ts.
 */
const corners = { waistAtFold: [0, 0], waistAtSide: [7, 0], hemAtSide: [13, 27], hemAtFold: [0, 28] } as const;
const sideThrough = [
  [8.75, 4],
  [10, 8],
] as const;
const hemThrough = [[6.75, 27.75]] as const;

function place([x, y]: readonly [number, number]): Point {
  return { x: inches(x), y: inches(y) };
}

/** The true corners of the panel, in the order waist at fold, waist at side, hem at side, hem at fold. */
export const lindenCorners: readonly [Point, Point, Point, Point] = [
  place(corners.waistAtFold),
  place(corners.waistAtSide),
  place(corners.hemAtSide),
  place(corners.hemAtFold),
];

/** The points the side seam passes, from the waist down. */
export const lindenSideThrough: readonly Point[] = sideThrough.map(place);

/** The point the hem passes, from the side to the fold, which it meets squarely. */
export const lindenHemThrough: readonly Point[] = hemThrough.map(place);

/** The printed frame round the plate, in full-size inches on the same zero: the rectangle to square up by. */
export const lindenFrame: readonly [Point, Point, Point, Point] = [
  place([-4, -4]),
  place([20, -4]),
  place([20, 32]),
  place([-4, 32]),
];

/**
 * Where the corners of the frame lie in the picture public/demo/linden-plate.jpg, in its pixels: seen by a camera of
 * 2,400 px focal length tilted by 10, -7 and 2 degrees.
 */
export const lindenFrameInPhoto: readonly [Point, Point, Point, Point] = [
  { x: 311.06, y: 221.42 },
  { x: 1553.85, y: 323.98 },
  { x: 1388.56, y: 2011.79 },
  { x: 288.5, y: 2019.28 },
];

/** Where the four corners of the panel lie in the picture, in the order of {@link lindenCorners}, to a hundredth of a pixel. */
export const lindenCornersInPhoto: readonly [Point, Point, Point, Point] = [
  { x: 523.35, y: 460.95 },
  { x: 888.91, y: 487.04 },
  { x: 1096.16, y: 1799.81 },
  { x: 485.42, y: 1841.97 },
];

/** The size of that picture, in pixels. */
export const lindenPhotoSize = { widthPx: 1800, heightPx: 2400 } as const;
