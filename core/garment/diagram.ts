import type { PhotoPoint, TablePoint } from '../geometry/point';
import type { SquaresMap } from '../picture/grid-map';
import type { MeasureName } from './measure';

/** Four corners of something rectangular in the picture: top left, top right, bottom right, bottom left as it reads. */
export type Quad = readonly [PhotoPoint, PhotoPoint, PhotoPoint, PhotoPoint];

/** What is known of the sides of that rectangle. */
export type RectangleSides =
  | { readonly kind: 'not-known' }
  /** Only the proportion, such as a page of A4 (210 to 297). */
  | { readonly kind: 'ratio'; readonly across: number; readonly down: number };

/** What is followed where the page bends, beyond its four corners. */
export type Followed =
  /**
   * Places that each side passes through between its corners, in order and clockwise: top, right, bottom, left. With none a
   * side is straight.
   */
  | { readonly kind: 'sides'; readonly through: SidePlaces }
  /** The crossings of a printed grid; the corners are its outermost ones. */
  | { readonly kind: 'squares'; readonly map: SquaresMap };

export type SidePlaces = readonly [
  top: readonly PhotoPoint[],
  right: readonly PhotoPoint[],
  bottom: readonly PhotoPoint[],
  left: readonly PhotoPoint[],
];

/** Something rectangular seen in the picture, and the places its sides pass through between its corners. */
export interface SeenRectangle {
  readonly corners: Quad;
  readonly through: SidePlaces;
}

/** How a picture is laid flat. */
export type SquareUp =
  /** A scan or screenshot that is flat already. */
  | { readonly kind: 'flat' }
  | {
      readonly kind: 'rectangle';
      readonly corners: Quad;
      readonly sides: RectangleSides;
      /** Nothing where the sides are straight. */
      readonly followed?: Followed;
    };

/** How long a line of the diagram is at full size. */
export type StatedLength =
  | { readonly kind: 'length'; readonly length: number }
  /** A share of a body measure with ease: a quarter of the waist and 12.7 mm. */
  | {
      readonly kind: 'share';
      readonly measure: MeasureName;
      readonly parts: number;
      readonly of: number;
      readonly ease: number;
    }
  /** A printed scale bar: so many intervals between its ends, each so long. */
  | { readonly kind: 'bar'; readonly intervals: number; readonly each: number };

/** A line on the picture whose full-size length the user knows. Its ends are kept in picture pixels. */
export interface KnownLength {
  readonly id: string;
  readonly from: PhotoPoint;
  readonly to: PhotoPoint;
  readonly says: StatedLength;
}

/** A printed line that she says is straight. */
export interface RuledLine {
  readonly id: string;
  /** Places along it, in order, two at least; with only two of them nothing but its direction is known. */
  readonly places: readonly PhotoPoint[];
  /** Another such line of the picture that it stands square to. */
  readonly squareTo?: string;
}

/**
 * Another picture whose scale this one has: pages of one book, told by the paper they are printed on (scans that know their
 * size), by rectangles of one size that both are squared up by, or by pixels of one size (screenshots at one zoom).
 */
export interface SharedScale {
  readonly diagramId: string;
  readonly by: 'paper' | 'rectangle' | 'pixel';
}

/** A place that is seen in this picture and in the one it is joined to, in the pixels of each. */
export interface MatchingPlace {
  readonly here: PhotoPoint;
  readonly there: PhotoPoint;
}

/** The half of a diagram that another picture goes on from, over the gutter of a book. */
export interface Joined {
  readonly diagramId: string;
  readonly pairs: readonly MatchingPlace[];
  /** Made to the size the matching places ask for, or kept at its own scale. */
  readonly size: 'fitted' | 'own';
}

/** One picture of a printed diagram and how it lies on the drafting table. */
export interface Diagram {
  readonly id: string;
  readonly name: string;
  readonly photoId: string;
  /** The upright picture, in pixels. */
  readonly widthPx: number;
  readonly heightPx: number;
  /** How large the upright picture is on paper (mm), where a scan or a page of a PDF says so. */
  readonly onPaper?: { readonly across: number; readonly down: number };
  /** The focal length in pixels of the upright picture, where the camera noted it. */
  readonly focalPx?: number;
  /** What was seen in it that is truly rectangular: a check on how true it lies. */
  readonly seen?: readonly SeenRectangle[];
  /** Printed lines that she says are straight, or square to one another: a check of the same kind. */
  readonly ruled?: readonly RuledLine[];
  readonly squareUp: SquareUp;
  /** Quarter turns clockwise, after squaring up. */
  readonly quarterTurns: 0 | 1 | 2 | 3;
  readonly knownLengths: readonly KnownLength[];
  /** Its scale is that of another picture; its own known lengths only check it. */
  readonly scaleFrom?: SharedScale;
  /** It is laid onto another picture by places that match. */
  readonly joined?: Joined;
  /** Where the top left corner of the squared picture lies on the table. */
  readonly placedAt: TablePoint;
}
