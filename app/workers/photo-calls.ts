import type { SquaredPicturePlan } from '../../core/diagram/squared-picture';
import type { Quad, SeenRectangle } from '../../core/garment/diagram';
import type { ProposedCorners } from '../../core/picture/corners';
import type { NotRefined } from '../../core/picture/corners-refined';
import type { NoGrid } from '../../core/picture/grid';
import type { SquaresMap } from '../../core/picture/grid-map';
import type { Raster } from '../../core/picture/raster';
import type { HeaderRefusal, PictureFormat } from '../photo/header/header-said';

/** Why a picture could not be opened. */
export type PictureRefusal =
  | HeaderRefusal
  /** It begins like a picture but does not decode. */
  | { readonly kind: 'damaged' }
  /** It decodes to a single colour. */
  | { readonly kind: 'blank' };

/** A smaller copy of a picture. */
export interface SmallCopy {
  readonly raster: Raster;
  /** Pixels of the copy to one of the whole upright picture, across and down. */
  readonly pxToPx: { readonly across: number; readonly down: number };
}

export interface OpenedPicture {
  readonly kind: 'opened';
  readonly type: `image/${PictureFormat}`;
  /** The upright picture, in its own pixels. */
  readonly widthPx: number;
  readonly heightPx: number;
  /** How large it is on paper (mm), where the file says how finely it was scanned. */
  readonly onPaper?: { readonly across: number; readonly down: number };
  /** The focal length in pixels of the whole upright picture, where the camera noted it. */
  readonly focalPx?: number;
  /** To be looked at: the first at most {@link MOST_WORKING_PX}, each further one half as wide. */
  readonly levels: readonly ImageBitmap[];
  /** To work out quick looks from: at most {@link MOST_SMALL_PX}. */
  readonly small: SmallCopy;
}

export interface FlatPicture {
  readonly kind: 'flat';
  readonly levels: readonly ImageBitmap[];
}

/** A stored photo. The worker keeps the last one it opened, so that the same key is not decoded again. */
export interface PhotoFile {
  readonly key: string;
  readonly file: Blob;
}

/** What the picture may be squared up by, best first, in pixels of the whole upright picture. */
export interface CornersProposed {
  readonly kind: 'proposed';
  readonly proposals: readonly CornerProposal[];
}

export interface CornerProposal extends Pick<ProposedCorners, 'kind' | 'sure'>, SidesFound {}

/** Corners, and the sides between them, in pixels of the whole upright picture. */
export interface SidesFound extends SeenRectangle {
  /** Whether a side bows more than a straight one can seem to. */
  readonly bowed: boolean;
}

/** Corners brought onto the edges between them. */
export interface CornersRefined extends SidesFound {
  readonly kind: 'refined';
}

/** A printed grid, in pixels of the whole upright picture. */
export interface SquaresFound {
  readonly kind: 'squares';
  readonly map: SquaresMap;
}

export type PhotoCalls = {
  open: { args: PhotoFile; answer: OpenedPicture | PictureRefusal };
  layFlat: { args: PhotoFile & { readonly plan: SquaredPicturePlan }; answer: FlatPicture | PictureRefusal };
  proposeCorners: { args: { readonly small: SmallCopy }; answer: CornersProposed };
  refineCorners: {
    args: PhotoFile & { readonly corners: Quad };
    answer: CornersRefined | NotRefined | PictureRefusal;
  };
  /** The printed squares within the corners. */
  findSquares: { args: PhotoFile & { readonly corners: Quad }; answer: SquaresFound | NoGrid | PictureRefusal };
  layFlatQuickly: { args: { readonly small: SmallCopy; readonly plan: SquaredPicturePlan }; answer: FlatPicture };
};

/** The largest copy that is worked on: what the canvas of every phone still holds. */
export const MOST_WORKING_PX = 16e6;

/** The largest copy that quick looks are worked out from: a quarter of a 12 megapixel photo each way fits. */
export const MOST_SMALL_PX = 1e6;

/** The largest quick look. */
export const MOST_QUICK_PX = 0.75e6;
