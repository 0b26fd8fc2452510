import type { Diagram, Quad, RectangleSides } from '../garment/diagram';
import { distance, type Point } from '../geometry/point';
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
  /** Where the proportion of the rectangle came from. */
  readonly aspectFrom: 'said' | 'photo' | 'sides' | 'flat';
}

export interface NotSquared {
  readonly kind: 'not-squared';
  readonly why: 'coincident' | 'three-in-line' | 'crossed' | 'concave' | 'too-small';
}

/** A rectangle smaller than this on the picture says too little: a finger's slip would be a tenth of it. */
const SMALLEST_SIDE_PX = 20;

/**
 * A proportion read off one photo is believed only within this factor of the plain one from the lengths of the sides;
 * with weak perspective the reading runs wild (a few per cent of noise for a view tilted about one axis only).
 */
const BELIEVABLE = 1.35;

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
  return { kind: 'squared', fromPhoto: map, across, down, aspectFrom: from };
}

function isRefused<Refusal extends { readonly kind: string }>(map: Homography | Refusal): map is Refusal {
  return 'kind' in map;
}

function aspectOf(corners: Quad, sides: RectangleSides, plain: number, centre: Point) {
  if (sides.kind === 'ratio') return { aspect: sides.across / sides.down, from: 'said' } as const;
  const read = rectangleAspect(corners, centre);
  if ('aspect' in read && read.aspect < plain * BELIEVABLE && read.aspect > plain / BELIEVABLE) {
    return { aspect: read.aspect, from: 'photo' } as const;
  }
  return { aspect: plain, from: 'sides' } as const;
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

/** A place of the picture on the flat plane; `undefined` beyond the horizon. */
export function onPlane(plane: SquaredPlane, point: Point): Point | undefined {
  return applyHomography(plane.fromPhoto, point);
}
