import { flatToPhoto, type SquaredPicturePlan } from '../../core/diagram/squared-picture';
import type { Point } from '../../core/geometry/point';
import { flatRows } from '../../core/picture/page-warp';
import { halveRaster, type Raster } from '../../core/picture/raster';
import type { SmallCopy } from './photo-calls';

/** Levels get no smaller than this many pixels: a thumbnail needs no more. */
const LEAST_LEVEL_PX = 0.3e6;

/** The picture and its halves, down to a size that is quick to draw however small it is shown. */
export function halvings(raster: Raster): Raster[] {
  const levels = [raster];
  for (let last = raster; last.width * last.height > LEAST_LEVEL_PX; ) {
    last = halveRaster(last);
    levels.push(last);
  }
  return levels;
}

/** The first of a picture's halvings with at most `mostPx` pixels. */
export function smallCopy({ raster, pxToPx }: SmallCopy, levels: readonly Raster[], mostPx: number): SmallCopy {
  const fits = levels.findIndex(({ width, height }) => width * height <= mostPx);
  const at = fits < 0 ? levels.length - 1 : fits;
  // Each halving covers exactly two pixels with one, whatever it leaves off at the far edge.
  const share = 0.5 ** at;
  return {
    raster: levels[at] ?? raster,
    pxToPx: { across: pxToPx.across * share, down: pxToPx.down * share },
  };
}

/** Rows made between two tellings of how far it is. */
const STRIP = 128;

/** A picture laid flat from a copy of the photo. */
export function laidFlat(
  { raster, pxToPx }: SmallCopy,
  plan: SquaredPicturePlan,
  onProgress?: (share: number) => void,
): Raster {
  const { width, height } = plan;
  const toPhoto = (flat: Point): Point => {
    const seen = flatToPhoto(plan, flat);
    return seen ? { x: seen.x * pxToPx.across, y: seen.y * pxToPx.down } : { x: Number.NaN, y: Number.NaN };
  };
  const pixels = new Uint8ClampedArray(width * height * 4);
  for (let from = 0; from < height; from += STRIP) {
    const to = Math.min(height, from + STRIP);
    pixels.set(flatRows(raster, { width, height, toPhoto }, { from, to }).pixels, from * width * 4);
    onProgress?.(to / height);
  }
  return { pixels, width, height };
}

/** The rasters as bitmaps for the screen. */
export function bitmapsOf(levels: readonly Raster[]): Promise<ImageBitmap[]> {
  return Promise.all(
    levels.map(({ pixels, width, height }) => createImageBitmap(new ImageData(pixels, width, height))),
  );
}
