import type { Raster } from '../../core/picture/raster';
import type { CleanCalls } from './clean-calls';
import { cleanedRaster } from './cleaned-raster';
import { bitmapsOf, halvings } from './picture-levels';
import { serve, type WorkerPort } from './serve';

// The compiler takes `self` for a window; in a worker it is the port itself.
serve<CleanCalls>(self as unknown as WorkerPort, {
  async clean({ picture, how }, tell) {
    const levels = await bitmapsOf(halvings(cleanedRaster(rasterOf(picture), how, tell)));
    return { answer: { kind: 'cleaned', levels }, transfer: [...levels] };
  },
});

function rasterOf(picture: ImageBitmap): Raster {
  const { width, height } = picture;
  // Kept in plain memory, because it is read back.
  const context = new OffscreenCanvas(width, height).getContext('2d', { willReadFrequently: true });
  if (!context) throw new Error('no canvas to draw on');
  context.drawImage(picture, 0, 0);
  picture.close();
  return { pixels: context.getImageData(0, 0, width, height).data as Raster['pixels'], width, height };
}
