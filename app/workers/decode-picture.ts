import type { Raster } from '../../core/diagram/warp';
import { readPictureHeader } from '../photo/picture-header';
import { MOST_WORKING_PX, type OpenedPicture, type PictureRefusal, type SmallCopy } from './photo-calls';

/** The upright picture on a white ground, small enough to work on. */
export interface WorkingCopy extends SmallCopy {
  readonly kind: 'decoded';
  readonly type: OpenedPicture['type'];
  /** The size of the whole upright picture, of which this may be a smaller copy. */
  readonly widthPx: number;
  readonly heightPx: number;
}

/**
 * Opens a file as a working copy of at most {@link MOST_WORKING_PX}. Phone photos come out upright: `createImageBitmap`
 * turns them as their EXIF entry asks, so nothing after it may turn them again.
 */
export async function decodePicture(file: Blob): Promise<WorkingCopy | PictureRefusal> {
  const header = readPictureHeader(new Uint8Array(await file.arrayBuffer()));
  if (header.kind !== 'picture') return header;
  const type = `image/${header.format}` as const;
  let bitmap: ImageBitmap;
  try {
    // What the file is called does not matter, only what it is.
    bitmap = await createImageBitmap(new Blob([file], { type }));
  } catch {
    return { kind: 'damaged' };
  }
  const { width: widthPx, height: heightPx } = bitmap;
  const raster = rasterOf(bitmap, Math.min(1, Math.sqrt(MOST_WORKING_PX / (widthPx * heightPx))));
  bitmap.close();
  if (isOneColour(raster)) return { kind: 'blank' };
  const pxToPx = { across: raster.width / widthPx, down: raster.height / heightPx };
  return { kind: 'decoded', type, widthPx, heightPx, raster, pxToPx };
}

/** The pixels of a picture at a share of its size, laid on white. */
function rasterOf(picture: ImageBitmap, share: number): Raster {
  // Rounded down, so that no copy is above its limit by a row.
  const width = Math.max(1, Math.floor(picture.width * share));
  const height = Math.max(1, Math.floor(picture.height * share));
  const canvas = new OffscreenCanvas(width, height);
  // Kept in plain memory, because it is read back.
  const context = canvas.getContext('2d', { willReadFrequently: true });
  if (!context) throw new Error('no canvas to draw on');
  context.fillStyle = '#fff';
  context.fillRect(0, 0, width, height);
  context.imageSmoothingQuality = 'high';
  context.drawImage(picture, 0, 0, width, height);
  const { data } = context.getImageData(0, 0, width, height);
  // Phones are slow to give the memory of a canvas back by themselves.
  canvas.width = 0;
  canvas.height = 0;
  return { pixels: data as Raster['pixels'], width, height };
}

/** Camera noise and print leave more than this between the darkest and the lightest pixel of any real page. */
const ONE_COLOUR = 3;

/** Whether every pixel has one colour, or next to one. Any real picture is told by its first few rows. */
export function isOneColour({ pixels }: Raster): boolean {
  const low = [255, 255, 255];
  const high = [0, 0, 0];
  for (let at = 0; at < pixels.length; at += 4) {
    for (let part = 0; part < 3; part++) {
      const value = pixels[at + part] as number;
      if (value < (low[part] as number)) low[part] = value;
      if (value > (high[part] as number)) high[part] = value;
      if ((high[part] as number) - (low[part] as number) > ONE_COLOUR) return false;
    }
  }
  return true;
}
