import type { Raster } from '../../core/picture/raster';
import type { PictureFormat, PictureHeader, SizePx } from '../photo/header/header-said';
import { readPictureHeader } from '../photo/header/picture-header';
import { browserTurnsWebp } from './browser-turns-webp';
import { MOST_WORKING_PX, type PictureRefusal, type SmallCopy } from './photo-calls';
import { turnedUpright } from './turned-upright';

/** The upright picture on a white ground, small enough to work on. */
export interface WorkingCopy extends SmallCopy {
  readonly kind: 'decoded';
  readonly format: PictureFormat;
  /** The size of the whole upright picture, of which this may be a smaller copy. */
  readonly widthPx: number;
  readonly heightPx: number;
  /** How large the upright picture is on paper (mm), where the file says how finely it was scanned. */
  readonly onPaper?: { readonly across: number; readonly down: number };
  /** The focal length in pixels of the whole upright picture, where the camera noted it. */
  readonly focalPx?: number;
}

/**
 * Opens a file as a working copy of at most {@link MOST_WORKING_PX}. Pictures come out upright, turned as their EXIF entry
 * asks, so nothing after it may turn them again.
 */
export async function decodePicture(file: Blob): Promise<WorkingCopy | PictureRefusal> {
  const header = readPictureHeader(new Uint8Array(await file.arrayBuffer()));
  if (header.kind !== 'picture') return header;
  let bitmap: ImageBitmap;
  try {
    bitmap = await bitmapOf(file, header);
  } catch {
    return { kind: 'damaged' };
  }
  const { widthPx, heightPx } = uprightSize(header, bitmap);
  const raster = rasterOf(bitmap, Math.min(1, Math.sqrt(MOST_WORKING_PX / (bitmap.width * bitmap.height))));
  bitmap.close();
  if (isOneColour(raster)) return { kind: 'blank' };
  const pxToPx = { across: raster.width / widthPx, down: raster.height / heightPx };
  const { format, focalPx } = header;
  const lens = focalPx === undefined ? {} : { focalPx };
  const paper = sizeOnPaper(header, { widthPx, heightPx });
  return { kind: 'decoded', format, widthPx, heightPx, raster, pxToPx, ...paper, ...lens };
}

/** Decoders that the browser lacks are fetched only when a file needs one, from the offline store if need be. */
async function bitmapOf(file: Blob, header: PictureHeader): Promise<ImageBitmap> {
  if (header.format === 'tiff') {
    const { decodeTiff } = await import('./decode-tiff');
    return turnedUpright(await createImageBitmap(await decodeTiff(file)), header.turned ?? 1);
  }
  // What the file is called does not matter, only what it is.
  const typed = new Blob([file], { type: `image/${header.format}` });
  if (header.format === 'heic') {
    // Some browsers read it by themselves.
    return createImageBitmap(typed).catch(async () => {
      const { decodeHeic } = await import('./decode-heic');
      return createImageBitmap(await decodeHeic(file));
    });
  }
  const { turned = 1 } = header;
  if (header.format === 'webp' && turned > 1 && !(await browserTurnsWebp())) {
    return turnedUpright(await smallEnough(typed, { ...header, turned: 1 }), turned);
  }
  return smallEnough(typed, header);
}

/** Made smaller while it is decoded, a large scan never lies in memory whole. */
async function smallEnough(typed: Blob, header: PictureHeader): Promise<ImageBitmap> {
  const share = Math.sqrt(MOST_WORKING_PX / (header.widthPx * header.heightPx));
  if (share >= 1) return createImageBitmap(typed);
  const { width } = uprightStored(header);
  return createImageBitmap(typed, { resizeWidth: Math.max(1, Math.floor(width * share)), resizeQuality: 'high' });
}

/** A file's own size as it stands upright; turned by a quarter its two sides change places. */
function uprightStored({ widthPx, heightPx, turned = 1 }: PictureHeader): { width: number; height: number } {
  return turned >= 5 ? { width: heightPx, height: widthPx } : { width: widthPx, height: heightPx };
}

/** The size of the whole upright picture, of which the bitmap may be a smaller copy. */
function uprightSize(header: PictureHeader, { width, height }: ImageBitmap): SizePx {
  const isSame = (one: { width: number; height: number }) => one.width === width && one.height === height;
  const stored = uprightStored(header);
  // What was decoded in full says best how it stands: a HEIC keeps its turn out of sight, and sizes may be cropped.
  if (isSame(stored) || width * height < header.widthPx * header.heightPx * 0.5)
    return { widthPx: stored.width, heightPx: stored.height };
  return { widthPx: width, heightPx: height };
}

function sizeOnPaper(
  { fineness, turned = 1 }: PictureHeader,
  { widthPx, heightPx }: SizePx,
): Pick<WorkingCopy, 'onPaper'> {
  if (!fineness) return {};
  const { across, down } = turned >= 5 ? { across: fineness.down, down: fineness.across } : fineness;
  return { onPaper: { across: widthPx / across, down: heightPx / down } };
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
