import type { Diagram, Quad, RectangleSides } from '../garment/diagram';
import { distance, type PhotoPoint, type Point } from '../geometry/point';
import { type Homography, homographyFrom, invertHomography } from '../geometry/projective';
import { rectangleAspect, rectangleAspectWithFocal } from '../geometry/rectangle-aspect';
import { bentRectangle, type LaidRectangle, type NotFollowed, squaresRectangle } from './followed-plane';
import { type LaidOut, laidPlace, seenPlace } from './laid-out';

/** A picture laid flat, before its scale is known. Its unit is about one pixel of the picture. */
export interface SquaredPlane {
  readonly kind: 'squared';
  /** How the picture is laid out, before it is brought to size and turned. */
  readonly laid: LaidOut;
  /** Units of the plane to one of what was laid out. */
  readonly stretch: { readonly across: number; readonly down: number };
  /** Quarter turns clockwise about the rectangle, whose top left corner comes back to zero. */
  readonly quarterTurns: Diagram['quarterTurns'];
  /** The rectangle, or the whole flat picture, on the plane: y down, its top left corner at zero. */
  readonly across: number;
  readonly down: number;
  /** Where the proportion of the rectangle came from. */
  readonly aspectFrom: 'said' | 'photo' | 'sides' | 'flat';
}

export interface NotSquared {
  readonly kind: 'not-squared';
  readonly why: 'coincident' | 'three-in-line' | 'crossed' | 'concave' | NotFollowed['why'];
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

type Squarable = Pick<Diagram, 'squareUp' | 'quarterTurns' | 'widthPx' | 'heightPx' | 'focalPx'>;

/** A bent page takes many milliseconds to lay out, and is asked for again at every stroke of a trace. */
const remembered = new WeakMap<
  Diagram['squareUp'],
  { readonly of: Squarable; readonly plane: SquaredPlane | NotSquared }
>();

/**
 * Lays a picture flat by the four corners of something rectangular in it, and where its sides or a printed grid are
 * followed, by those. The proportion of that rectangle is what was
 * said of it; else what the photo's perspective tells (Zhang & He, Whiteboard scanning and image enhancement, 2007): by itself
 * where that is steady, or by the focal length the camera noted; else the mean of its opposite sides, which known lengths
 * across and down will correct.
 */
export function squaredPlane(diagram: Squarable): SquaredPlane | NotSquared {
  const { squareUp, quarterTurns, widthPx, heightPx, focalPx } = diagram;
  const known = remembered.get(squareUp);
  const isSame =
    known?.of.quarterTurns === quarterTurns &&
    known.of.widthPx === widthPx &&
    known.of.heightPx === heightPx &&
    known.of.focalPx === focalPx;
  if (known && isSame) return known.plane;
  const rectangle = squareUp.kind === 'flat' ? wholePicture(diagram) : rectangleOf(squareUp, diagram);
  const plane = rectangle.kind === 'laid' ? turned(rectangle, quarterTurns) : rectangle;
  remembered.set(squareUp, { of: diagram, plane });
  return plane;
}

type Rectangle = Omit<LaidRectangle, 'aspectFrom'> & Pick<SquaredPlane, 'aspectFrom'>;

function wholePicture({ widthPx, heightPx }: Squarable): Rectangle {
  const same: Homography = [1, 0, 0, 0, 1, 0, 0, 0, 1];
  const laid = { kind: 'plain', fromPhoto: same, toPhoto: same, inFront: { x: 0, y: 0 } } as const;
  return { kind: 'laid', laid, across: widthPx, down: heightPx, aspectFrom: 'flat' };
}

function rectangleOf(
  { corners, sides, followed }: Extract<Diagram['squareUp'], { kind: 'rectangle' }>,
  picture: Squarable,
): Rectangle | NotSquared {
  if (followed?.kind === 'squares') return squaresRectangle(followed.map);
  const plain = plainRectangle(corners, sides, picture);
  if (!followed || plain.kind === 'not-squared') return plain;
  const bent = bentRectangle(corners, followed.through, { said: sides, picture });
  return bent === 'straight' ? plain : bent;
}

function plainRectangle(corners: Quad, sides: RectangleSides, picture: Squarable): Rectangle | NotSquared {
  const [tl, tr, br, bl] = corners;
  const lengths = [distance(tl, tr), distance(bl, br), distance(tl, bl), distance(tr, br)] as const;
  if (Math.min(...lengths) < SMALLEST_SIDE_PX) return { kind: 'not-squared', why: 'too-small' };
  const plain = (lengths[0] + lengths[1]) / (lengths[2] + lengths[3]);
  const { aspect, from } = aspectOf(corners, sides, plain, picture);
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
  const toPhoto = invertHomography(map);
  if (!toPhoto) return { kind: 'not-squared', why: 'coincident' };
  const laid = { kind: 'plain', fromPhoto: map, toPhoto, inFront: tl } as const;
  return { kind: 'laid', laid, across, down, aspectFrom: from };
}

function isRefused<Refusal extends { readonly kind: string }>(map: Homography | Refusal): map is Refusal {
  return 'kind' in map;
}

function aspectOf(corners: Quad, sides: RectangleSides, plain: number, { widthPx, heightPx, focalPx }: Squarable) {
  if (sides.kind === 'ratio') return { aspect: sides.across / sides.down, from: 'said' } as const;
  const centre = { x: widthPx / 2, y: heightPx / 2 };
  // What a camera notes is a round number, good to some per cent: a steady reading is better.
  const read = steadyAspect(corners, centre) ?? (focalPx && aspectByLens(corners, centre, focalPx));
  if (read !== undefined && read < plain * BELIEVABLE && read > plain / BELIEVABLE) {
    return { aspect: read, from: 'photo' } as const;
  }
  return { aspect: plain, from: 'sides' } as const;
}

function aspectByLens(corners: Quad, centre: Point, focalPx: number): number | undefined {
  const read = rectangleAspectWithFocal(corners, centre, focalPx);
  return 'aspect' in read ? read.aspect : undefined;
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

/** How large what was laid out is in its own units. */
function ownSize({ laid, across, down }: Rectangle) {
  if (laid.kind === 'bent') return { across: laid.page.across, down: laid.page.down };
  return laid.kind === 'squares' ? { across: laid.map.columns, down: laid.map.rows } : { across, down };
}

function turned(rectangle: Rectangle, quarterTurns: Diagram['quarterTurns']): SquaredPlane {
  const own = ownSize(rectangle);
  const { laid, aspectFrom } = rectangle;
  const [across, down] =
    quarterTurns % 2 === 0 ? [rectangle.across, rectangle.down] : [rectangle.down, rectangle.across];
  const stretch = { across: rectangle.across / own.across, down: rectangle.down / own.down };
  return { kind: 'squared', laid, stretch, quarterTurns, across, down, aspectFrom };
}

/** A place of the picture on the flat plane; `undefined` on the horizon or beyond it. */
export function onPlane(
  { laid, stretch, quarterTurns, across, down }: SquaredPlane,
  photo: PhotoPoint,
): Point | undefined {
  const place = laidPlace(laid, photo);
  if (!place) return undefined;
  const [x, y] = [place.x * stretch.across, place.y * stretch.down];
  if (quarterTurns === 0) return { x, y };
  if (quarterTurns === 1) return { x: across - y, y: x };
  return quarterTurns === 2 ? { x: across - x, y: down - y } : { x: y, y: down - x };
}

/** Where a place of the flat plane is seen in the picture; `undefined` where it lies behind the camera. */
export function fromPlane(
  { laid, stretch, quarterTurns, across, down }: SquaredPlane,
  place: Point,
): PhotoPoint | undefined {
  const back = (x: number, y: number) => seenPlace(laid, { x: x / stretch.across, y: y / stretch.down });
  if (quarterTurns === 0) return back(place.x, place.y);
  if (quarterTurns === 1) return back(place.y, across - place.x);
  return quarterTurns === 2 ? back(across - place.x, down - place.y) : back(down - place.y, place.x);
}
