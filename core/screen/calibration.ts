import { distance, type Point } from '../geometry/point';
import { applyHomography, type Homography, homographyFrom, invertHomography } from '../geometry/projective';

/** The four corners of a rectangle as they stand on the screen in CSS pixels: top left, top right, bottom right, bottom left. */
export type FourCorners = readonly [Point, Point, Point, Point];

/** A rectangle that was measured: where its corners stand on the screen, and how long its sides are in truth (mm). */
export interface Calibration {
  readonly corners: FourCorners;
  readonly across: number;
  readonly down: number;
}

/** The screen as a plane in millimetres, counted from the rectangle's top left corner, y down. */
export interface ScreenMap {
  readonly kind: 'screen-map';
  readonly toScreen: Homography;
  readonly toPlane: Homography;
}

export interface NoScreenMap {
  readonly kind: 'no-screen-map';
  /** Corners that cross over or lie in one line; or a side of no length. */
  readonly why: 'corners' | 'lengths';
}

/** No side of a rectangle is measured shorter than this (mm): a reading off by a pencil line would tell too much. */
export const SHORTEST_SIDE = 20;

/** The map of a measured rectangle; exact at its four corners. */
export function screenMap({ corners, across, down }: Calibration): ScreenMap | NoScreenMap {
  if (!(across >= SHORTEST_SIDE && down >= SHORTEST_SIDE)) return { kind: 'no-screen-map', why: 'lengths' };
  const plane = [
    { x: 0, y: 0 },
    { x: across, y: 0 },
    { x: across, y: down },
    { x: 0, y: down },
  ];
  const pairs = plane.map((from, index) => ({ from, to: corners[index] as Point }));
  const toScreen = homographyFrom(pairs);
  if ('kind' in toScreen) return { kind: 'no-screen-map', why: 'corners' };
  const toPlane = invertHomography(toScreen);
  return toPlane ? { kind: 'screen-map', toScreen, toPlane } : { kind: 'no-screen-map', why: 'corners' };
}

/** The rectangle two bars span, one across and one down from the same corner, as measured with a ruler. */
export function barsMeasured(
  bars: { readonly corner: Point; readonly acrossPx: number; readonly downPx: number },
  measured: { readonly across: number; readonly down: number },
): Calibration {
  const { corner, acrossPx, downPx } = bars;
  const [right, bottom] = [corner.x + acrossPx, corner.y + downPx];
  const corners: FourCorners = [corner, { x: right, y: corner.y }, { x: right, y: bottom }, { x: corner.x, y: bottom }];
  return { corners, ...measured };
}

/** The calibration mended by what a square of `side` mm measured on the screen: 101 for 100 makes everything 1 % smaller. */
export function mendedBy(
  calibration: Calibration,
  side: number,
  measured: { readonly across: number; readonly down: number },
): Calibration {
  return {
    ...calibration,
    across: (calibration.across * measured.across) / side,
    down: (calibration.down * measured.down) / side,
  };
}

/** What a calibration is like: how fine it can be, and what looks wrong with it. */
export interface CalibrationLook {
  /** How much of the plane one CSS pixel covers in the middle of the rectangle, across and down (mm). */
  readonly pixel: { readonly across: number; readonly down: number };
  /** The pixels of a plain screen are square; by so much they are not (a share), where that is more than a reading explains. */
  readonly unlike: number | undefined;
}

/** Of a plain screen across and down should agree within this share: 1/32 in on 2 in at each reading. */
const ALIKE = 0.03;

export function calibrationLook(
  map: ScreenMap,
  { across, down }: Calibration,
  kind: 'screen' | 'beam',
): CalibrationLook {
  const middle = { x: across / 2, y: down / 2 };
  const at = applyHomography(map.toScreen, middle) ?? { x: 0, y: 0 };
  const by = (dx: number, dy: number) => {
    const to = applyHomography(map.toPlane, { x: at.x + dx, y: at.y + dy });
    return to ? distance(middle, to) : Number.POSITIVE_INFINITY;
  };
  const pixel = { across: by(1, 0), down: by(0, 1) };
  const unlike = Math.abs(pixel.across / pixel.down - 1);
  return { pixel, unlike: kind === 'screen' && unlike > ALIKE ? unlike : undefined };
}
