import { exifFocalPx } from './exif-lens';
import type { PictureHeader, SizePx } from './header-said';
import { scannedAs, tiffTags } from './tiff-header';

/** The directory in which a camera writes how it took the picture. */
const TAKEN_BY_CAMERA = 0x8769;

/**
 * What an EXIF block says of a picture of this size as stored: how it is to be turned, how finely it was scanned and the
 * focal length. A camera has seen no paper: what it writes of dots to the inch is only a habit.
 */
export function exifSays(block: Uint8Array, size: SizePx): Pick<PictureHeader, 'fineness' | 'turned' | 'focalPx'> {
  const tags = tiffTags(block);
  if (!tags) return {};
  const { fineness, turned } = scannedAs(tags);
  const camera = tiffTags(block, TAKEN_BY_CAMERA);
  const focalPx = camera && exifFocalPx(camera, size);
  return {
    ...(fineness && !tags.has(TAKEN_BY_CAMERA) ? { fineness } : {}),
    ...(turned ? { turned } : {}),
    ...(focalPx === undefined ? {} : { focalPx }),
  };
}
