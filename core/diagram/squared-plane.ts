import type { Diagram, Quad, RectangleSides } from '../garment/diagram';
import { distance, type PhotoPoint, type Point } from '../geometry/point';
import { applyHomography, composeHomography, type Homography, homographyFrom } from '../geometry/projective';
import { rectangleAspect } from '../geometry/rectangle-aspect';

/** A picture laid flat, before its scale is known. Its unit is about one pixel of the picture. */
export interface SquaredPlane {
  readonly kind: 'squared';
  /** Picture pixels to the flat plane, y down, with the rectangle's (or picture's) top left corner at zero. */
  readonly fromPhoto: Homography;
  /** The rectangle, or the whole flat picture, on that plane. */
  readonly across: number;
  readonly down: number;
  /** A place that is surely in front of the camera: whatever is, lies on its side of the horizon. */
  readonly inFront: PhotoPoint;
  /** Where the proportion of the rectangle came from. */
  readonly aspectFrom: 'said' | 'photo' | 'sides' | 'flat';
}

export interface NotSquared {
  readonly kind: 'not-squared';
  readonly why: 'coincident' | 'three-in-line' | 'crossed' | 'concave' | 'too-small';
}

/** A rectangle smaller than this on the picture says too little: a finger's slip would be a tenth of it. */
const SMALLEST_SIDE_PX = 20;

/** A proportion read off the photo is believed only within this factor of the plain one from the lengths of the sides. */
const BELIEVABLE = 1.35;

/**
 * And only when corners a pixel off would change it by less than this share. A view tilted about two axes stays under a
 * third of it; one tilted about a single axis goes far beyond, and the reading there runs wild by tens of per cent.
 */
const STEADY = 0.01;

/**
 * Lays a picture flat by the four corners of something rectangular in it. The proportion of that rectangle is what was
 * said of it; else what the photo's own perspective tells (Zhang & He, Whiteboard scanning and image enhancement, 2007);
 * else the mean of its opposite sides, which known lengths across and down will correct.
 */
export function squaredPlane(
  diagram: Pick<Diagram, 'squareUp' | 'quarterTurns' | 'widthPx' | 'heightPx'>,
): SquaredPlane | NotSquared {
  const flat = diagram.squareUp.kind === 'flat' ? flatPlane(diagram.widthPx, diagram.heightPx) : undefined;
  const plane =
    diagram.squareUp.kind === 'rectangle'
      ? rectanglePlane(diagram.squareUp.corners, diagram.squareUp.sides, {
          x: diagram.widthPx / 2,
          y: diagram.heightPx / 2,
        })
      : flat;
  if (!plane || plane.kind === 'not-squared') return plane ?? { kind: 'not-squared', why: 'coincident' };
  return turned(plane, diagram.quarterTurns);
}

function flatPlane(widthPx: number, heightPx: number): SquaredPlane {
  return {
    kind: 'squared',
    fromPhoto: [1, 0, 0, 0, 1, 0, 0, 0, 1],
    across: widthPx,
    down: heightPx,
    inFront: { x: 0, y: 0 },
    aspectFrom: 'flat',
  };
}

function rectanglePlane(corners: Quad, sides: RectangleSides, centre: Point): SquaredPlane | NotSquared {
  const [tl, tr, br, bl] = corners;
  const lengths = [distance(tl, tr), distance(bl, br), distance(tl, bl), distance(tr, br)] as const;
  if (Math.min(...lengths) < SMALLEST_SIDE_PX) return { kind: 'not-squared', why: 'too-small' };
  const plain = (lengths[0] + lengths[1]) / (lengths[2] + lengths[3]);
  const { aspect, from } = aspectOf(corners, sides, plain, centre);
  // The area of the rectangle stays about what it was on the picture, whatever its proportion.
  const size = ((lengths[0] + lengths[1]) * (lengths[2] + lengths[3])) / 4;
  const across = Math.sqrt(size * aspect);
  const down = across / aspect;
  const onPlane = [
    { x: 0, y: 0 },
    { x: across, y: 0 },
    { x: across, y: down },
    { x: 0, y: down },
  ];
  const map = homographyFrom(corners.map((corner, i) => ({ from: corner, to: onPlane[i] as Point })));
  if (isRefused(map)) {
    return { kind: 'not-squared', why: map.why === 'fewer-than-four' ? 'coincident' : map.why };
  }
  return { kind: 'squared', fromPhoto: map, across, down, inFront: tl, aspectFrom: from };
}

function isRefused<Refusal extends { readonly kind: string }>(map: Homography | Refusal): map is Refusal {
  return 'kind' in map;
}

function aspectOf(corners: Quad, sides: RectangleSides, plain: number, centre: Point) {
  if (sides.kind === 'ratio') return { aspect: sides.across / sides.down, from: 'said' } as const;
  const read = steadyAspect(corners, centre);
  if (read !== undefined && read < plain * BELIEVABLE && read > plain / BELIEVABLE) {
    return { aspect: read, from: 'photo' } as const;
  }
  return { aspect: plain, from: 'sides' } as const;
}

/** The proportion the photo's perspective tells, when a pixel's slip at any corner leaves it about the same. */
function steadyAspect(corners: Quad, centre: Point): number | undefined {
  const read = rectangleAspect(corners, centre);
  if (!('aspect' in read)) return undefined;
  let spread = 0;
  for (const [index, { x, y }] of corners.entries()) {
    for (const slipped of [
      { x: x + 1, y },
      { x, y: y + 1 },
    ]) {
      const other = rectangleAspect(corners.with(index, slipped) as unknown as Quad, centre);
      if (!('aspect' in other)) return undefined;
      spread += (other.aspect / read.aspect - 1) ** 2;
    }
  }
  return Math.sqrt(spread) < STEADY ? read.aspect : undefined;
}

/** The plane turned by quarter turns clockwise about its rectangle, whose top left corner comes back to zero. */
function turned(plane: SquaredPlane, quarterTurns: number): SquaredPlane {
  let { fromPhoto, across, down } = plane;
  for (let turn = 0; turn < quarterTurns; turn++) {
    fromPhoto = composeHomography([0, -1, down, 1, 0, 0, 0, 0, 1], fromPhoto);
    [across, down] = [down, across];
  }
  return { ...plane, fromPhoto, across, down };
}

/** A place of the picture on the flat plane; `undefined` on the horizon or beyond it. */
export function onPlane(plane: SquaredPlane, point: PhotoPoint): Point | undefined {
  return inFrontOnly(plane.fromPhoto, point, plane.inFront);
}

/**
 * Where the map takes `point`; `undefined` when it does not lie on the same side of the horizon as `inFront`. Beyond the
 * horizon the plain map answers too, but with a place behind the camera.
 */
export function inFrontOnly(map: Homography, point: Point, inFront: Point): Point | undefined {
  const [g, h, i] = [map[6], map[7], map[8]];
  const isInFront = (g * point.x + h * point.y + i) * (g * inFront.x + h * inFront.y + i) > 0;
  return isInFront ? applyHomography(map, point) : undefined;
}
