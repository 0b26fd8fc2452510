/** How a picture is laid out flat: where each of its places comes to lie, and back. Plain data, so that a worker can be told. */
import type { PhotoPoint, Point } from '../geometry/point';
import { applyHomography, type Homography } from '../geometry/projective';
import { photoToSquares, type SquaresMap, squaresToPhoto } from '../picture/grid-map';
import { type PageMap, pageToPhoto, photoToPage } from '../picture/page-map';

export type LaidOut =
  /** As it is, or by four corners; whatever is in front of the camera lies on this place's side of the horizon. */
  | {
      readonly kind: 'plain';
      readonly fromPhoto: Homography;
      readonly toPhoto: Homography;
      readonly inFront: PhotoPoint;
    }
  /** By the curves of a bent page's sides. */
  | { readonly kind: 'bent'; readonly page: PageMap }
  /** By the crossings of a printed grid, in squares. */
  | { readonly kind: 'squares'; readonly map: SquaresMap };

/** A place of the picture laid out; `undefined` on the horizon or beyond it. */
export function laidPlace(laid: LaidOut, photo: PhotoPoint): Point | undefined {
  switch (laid.kind) {
    case 'plain':
      return inFrontOnly(laid.fromPhoto, photo, laid.inFront);
    case 'bent': {
      const { page } = laid;
      const isSeen = page.model === 'cylinder' || inFrontOnly(page.toFlat, photo, page.corners[0]);
      return isSeen ? photoToPage(page, photo) : undefined;
    }
    case 'squares': {
      const corner = squaresToPhoto(laid.map, { x: 0, y: 0 });
      return inFrontOnly(laid.map.toSquares, photo, corner) && photoToSquares(laid.map, photo);
    }
  }
}

/** Where a place that was laid out is seen in the picture; `undefined` where it lies behind the camera. */
export function seenPlace(laid: LaidOut, place: Point): PhotoPoint | undefined {
  switch (laid.kind) {
    case 'plain': {
      const inFront = applyHomography(laid.fromPhoto, laid.inFront);
      return inFront && inFrontOnly(laid.toPhoto, place, inFront);
    }
    case 'bent': {
      const { page } = laid;
      const isSeen = page.model === 'cylinder' || inFrontOnly(page.toPhoto, place, { x: 0, y: 0 });
      const seen = isSeen ? pageToPhoto(page, place) : undefined;
      return seen && Number.isFinite(seen.x) ? seen : undefined;
    }
    case 'squares':
      return inFrontOnly(laid.map.toPhoto, place, { x: 0, y: 0 }) && squaresToPhoto(laid.map, place);
  }
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
