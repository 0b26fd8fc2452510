/** From a photo to the page laid flat, and back, by whichever model its outline asks for. */
import type { Point } from '../geometry/point';
import { applyHomography, type Homography, homographyFrom, invertHomography } from '../geometry/projective';
import type { QuadCorners } from '../geometry/rectangle-aspect';
import { doubleArea } from './corners-hull';
import {
  type Cylinder,
  cylinderThrough,
  cylinderToPhoto,
  type PairedSides,
  pairedSides,
  photoToCylinder,
} from './curl-cylinder';
import { bowOf, type Side } from './curl-side';
import { type CoonsShift, coonsShift, shiftAt, unshifted } from './page-coons';
import { type Sides, straightSides } from './page-outline';

/**
 * A page laid flat: `across` by `down` of its own units, each about a pixel of the photo, from its top left corner. Its
 * proportion hangs on the focal length, and is near the truth where that was not said.
 */
export type PageMap = {
  readonly kind: 'page-map';
  readonly across: number;
  readonly down: number;
  readonly corners: QuadCorners;
  /** Whether the focal length was said, or guessed from the page's right angles and what is usual. */
  readonly focalFrom: 'said' | 'guessed';
  readonly focalPx: number;
} & (
  | { readonly model: 'flat'; readonly toFlat: Homography; readonly toPhoto: Homography }
  /** Two opposite sides bow: paper bent round lines that run `down` or `across` the page. */
  | { readonly model: 'cylinder'; readonly lines: 'down' | 'across'; readonly cylinder: Cylinder }
  /** All four bow, as far as their curves tell. */
  | { readonly model: 'coons'; readonly toFlat: Homography; readonly toPhoto: Homography; readonly shift: CoonsShift }
);

/** Sides that cross or run back, a page that folds over itself as it is seen, or no room between the corners. */
export interface NotFlattened {
  readonly kind: 'not-flattened';
  readonly why: 'sides-cross' | 'folds-over' | 'no-room';
}

export interface FlattenOptions {
  /** The middle of the whole picture, in its pixels. */
  readonly centre: Point;
  /** The longer side of the whole picture, in pixels. */
  readonly longSide: number;
  /** The focal length in pixels of this picture, where the camera told it. */
  readonly focalPx?: number;
}

/** A phone's main camera: about 26 mm on film of 36 by 24 mm (common practice), in lengths of the longer side. */
const USUAL_FOCAL = 0.78;

/** Sides that bow less than this share of their length, and less than half a pixel, are straight. */
const STRAIGHT = 0.0012;

/** The straighter pair bows less than this share of the other: the page is bent one way. */
const ONE_WAY = 0.35;

/** The page within these sides (top, right, bottom, left, clockwise) laid flat, or why it cannot be. */
export function flattenedPage(sides: Sides, options: FlattenOptions): PageMap | NotFlattened {
  const corners = sides.map(({ from }) => from) as unknown as QuadCorners;
  const [a, b, c, d] = corners;
  const turns = [doubleArea(a, b, c), doubleArea(b, c, d), doubleArea(c, d, a), doubleArea(d, a, b)];
  const largest = Math.max(...turns);
  if (!(largest > 100)) return { kind: 'not-flattened', why: 'no-room' };
  if (turns.some((turn) => !(turn > 1e-3 * largest))) return { kind: 'not-flattened', why: 'sides-cross' };
  const bows = sides.map((side) => {
    const length = Math.hypot(side.to.x - side.from.x, side.to.y - side.from.y);
    const bow = bowOf(side);
    return bow > Math.max(0.5, STRAIGHT * length) ? bow : 0;
  }) as [number, number, number, number];
  const [flatwise, upright] = [Math.max(bows[0], bows[2]), Math.max(bows[1], bows[3])];
  const isStraight = Math.max(flatwise, upright) === 0;
  const isOneWay = Math.min(flatwise, upright) <= ONE_WAY * Math.max(flatwise, upright);
  const lines = flatwise >= upright ? 'down' : 'across';
  const bowed = isOneWay && !isStraight ? sides : straightSides(corners);
  const pairs = pairsAlong(bowed, lines);
  const centre = lines === 'down' ? options.centre : swapped(options.centre);
  const cylinder = pairs && readCylinder(pairs, { ...options, centre });
  if (!cylinder) return { kind: 'not-flattened', why: isStraight ? 'no-room' : 'sides-cross' };
  const { focalPx } = cylinder.lens;
  const size = sizeWith(corners, lines === 'down' ? cylinder.across : 1 / cylinder.across);
  const focalFrom = options.focalPx === undefined ? 'guessed' : 'said';
  const common = { kind: 'page-map', corners, focalFrom, focalPx, ...size } as const;
  if (isOneWay && !isStraight) return unlessFolded({ ...common, model: 'cylinder', lines, cylinder });
  const maps = squared(corners, size);
  if (!maps) return { kind: 'not-flattened', why: 'no-room' };
  if (isStraight) return { ...common, model: 'flat', ...maps };
  const shift = coonsShift(sides, maps.toFlat, size);
  return shift
    ? unlessFolded({ ...common, model: 'coons', ...maps, shift })
    : { kind: 'not-flattened', why: 'sides-cross' };
}

/** How far a page's corners may be from square for the focal length to be doubted, and how far lenses differ (as a logarithm). */
const SQUARE_WITHIN = 0.002;
const LENSES_WITHIN = 0.2;

/**
 * The cylinder seen through the lens that was said; else through the one that makes the page's corners square, drawn
 * towards the usual one as far as the view does not tell: a view straight on fits every lens.
 */
function readCylinder(pairs: PairedSides, options: FlattenOptions): Cylinder | undefined {
  const { centre, focalPx } = options;
  if (focalPx !== undefined) return cylinderThrough(pairs, { centre, focalPx });
  const tried = Array.from({ length: 61 }, (_, k) => (k - 30) / 50).flatMap((log) => {
    const cylinder = cylinderThrough(pairs, { centre, focalPx: USUAL_FOCAL * options.longSide * Math.exp(log) });
    if (!cylinder) return [];
    return [{ cylinder, doubt: (cylinder.leaning / SQUARE_WITHIN) ** 2 + (log / LENSES_WITHIN) ** 2 }];
  });
  return tried.sort((a, b) => a.doubt - b.doubt)[0]?.cylinder;
}

/** Sides of a proportion with about the area the page has in the photo. */
function sizeWith([a, b, c, d]: QuadCorners, proportion: number) {
  const area = (doubleArea(a, b, c) + doubleArea(c, d, a)) / 2;
  const down = Math.sqrt(area / proportion);
  return { across: proportion * down, down };
}

function squared(corners: QuadCorners, { across, down }: { readonly across: number; readonly down: number }) {
  const square = [
    { x: 0, y: 0 },
    { x: across, y: 0 },
    { x: across, y: down },
    { x: 0, y: down },
  ];
  const toFlat = homographyFrom(corners.map((from, k) => ({ from, to: square[k] as Point })));
  if ('kind' in toFlat) return undefined;
  const toPhoto = invertHomography(toFlat);
  return toPhoto && { toFlat, toPhoto };
}

/** Lines across the page are lines down it once the picture is mirrored in its diagonal. */
function pairsAlong([top, right, bottom, left]: Sides, lines: 'down' | 'across'): PairedSides | undefined {
  return lines === 'down' ? pairedSides(top, reversed(bottom)) : pairedSides(mirrored(reversed(left)), mirrored(right));
}

function reversed({ from, to, bow }: Side): Side {
  return { from: to, to: from, bow: bow.map((each, k) => (k % 2 === 0 ? -each : each)) };
}

function swapped({ x, y }: Point): Point {
  return { x: y, y: x };
}

function mirrored({ from, to, bow }: Side): Side {
  return { from: swapped(from), to: swapped(to), bow: bow.map((each) => -each) };
}

/** The map, unless a small square of the page is seen turned over somewhere. */
function unlessFolded(map: PageMap): PageMap | NotFlattened {
  const cells = 24;
  const at = (i: number, k: number) => pageToPhoto(map, { x: (map.across * i) / cells, y: (map.down * k) / cells });
  for (let i = 0; i < cells; i++) {
    for (let k = 0; k < cells; k++) {
      const [p, q, r] = [at(i, k), at(i + 1, k), at(i, k + 1)];
      if (!(doubleArea(p, q, r) > 0)) return { kind: 'not-flattened', why: 'folds-over' };
    }
  }
  return map;
}

/** Where a place of the flat page is seen in the photo; beyond its sides as the map goes on. */
export function pageToPhoto(map: PageMap, page: Point): Point {
  if (map.model === 'cylinder') {
    const [x, y] = [page.x / map.across, page.y / map.down];
    return map.lines === 'down'
      ? cylinderToPhoto(map.cylinder, x * map.cylinder.across, y)
      : swapped(cylinderToPhoto(map.cylinder, y * map.cylinder.across, x));
  }
  const shift = map.model === 'coons' ? shiftAt(map.shift, page) : { x: 0, y: 0 };
  const seen = applyHomography(map.toPhoto, { x: page.x + shift.x, y: page.y + shift.y });
  return seen ?? { x: Number.NaN, y: Number.NaN };
}

/** The place of the flat page seen at a place of the photo; `undefined` beyond the horizon. */
export function photoToPage(map: PageMap, photo: Point): Point | undefined {
  if (map.model === 'cylinder') {
    const found = photoToCylinder(map.cylinder, map.lines === 'down' ? photo : swapped(photo));
    if (!found) return undefined;
    const [along, run] = [found.x / map.cylinder.across, found.y];
    return map.lines === 'down'
      ? { x: along * map.across, y: run * map.down }
      : { x: run * map.across, y: along * map.down };
  }
  const flat = applyHomography(map.toFlat, photo);
  return flat && (map.model === 'coons' ? unshifted(map.shift, flat) : flat);
}
