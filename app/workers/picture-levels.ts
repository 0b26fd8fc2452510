import { halveRaster, type Raster, warpRaster } from '../../core/diagram/warp';
import { composeHomography } from '../../core/geometry/projective';
import type { FlatPlan, SmallCopy } from './photo-calls';

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

/** A picture laid flat from a copy of the photo. */
export function laidFlat(
  { raster, pxToPx }: SmallCopy,
  { width, height, toPhoto }: FlatPlan,
  onProgress?: (share: number) => void,
): Raster {
  const toSource = composeHomography([pxToPx.across, 0, 0, 0, pxToPx.down, 0, 0, 0, 1], toPhoto);
  return warpRaster(raster, { toSource, width, height, ...(onProgress ? { onProgress } : {}) });
}

/** The rasters as bitmaps for the screen. */
export function bitmapsOf(levels: readonly Raster[]): Promise<ImageBitmap[]> {
  return Promise.all(
    levels.map(({ pixels, width, height }) => createImageBitmap(new ImageData(pixels, width, height))),
  );
}
