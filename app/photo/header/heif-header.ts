import { exifSays } from './exif-block';
import { viewOf } from './header-bytes';
import { type HeaderRefusal, type PictureHeader, type SizePx, tooManyOrCut } from './header-said';
import { boxesIn } from './heif-boxes';
import { heifExif } from './heif-exif';

/**
 * An AVIF or HEIC by its boxes: the largest of the sizes it tells of is that of the picture, the others are its tiles and
 * its thumbnail. How it is turned is said by a box that every decoder heeds, and the turn in EXIF is to be left alone
 * (ISO/IEC 23008-12, A.2.1). See: ISO/IEC 14496-12, 4.2 (boxes); ISO/IEC 23008-12, 6.5.3 (`ispe`, the size of an image).
 */
export function readHeif(bytes: Uint8Array, format: 'avif' | 'heic'): PictureHeader | HeaderRefusal {
  let size: SizePx | undefined;
  let meta: Uint8Array | undefined;
  let end = 0;
  for (const box of boxesIn(bytes, 0, bytes.length)) {
    end = box.end;
    if (box.name !== 'meta') continue;
    meta = bytes.subarray(box.from + 4, box.end);
    size = largestIn(bytes, box.from + 4, Math.min(box.end, bytes.length));
  }
  if (size && end > bytes.length) return tooManyOrCut(size);
  if (size) {
    const exif = meta && heifExif(bytes, meta);
    const { focalPx } = exif ? exifSays(exif, size) : {};
    return { kind: 'picture', format, ...size, ...(focalPx === undefined ? {} : { focalPx }) };
  }
  return end > bytes.length || end === 0 ? { kind: 'cut-short' } : { kind: 'not-a-picture' };
}

function largestIn(bytes: Uint8Array, from: number, to: number): SizePx | undefined {
  let largest: SizePx | undefined;
  for (const { name, from: inside, end } of boxesIn(bytes, from, to)) {
    const within = Math.min(end, to);
    if (name === 'iprp' || name === 'ipco') largest = larger(largest, largestIn(bytes, inside, within));
    if (name === 'ispe' && inside + 12 <= within) {
      const view = viewOf(bytes);
      largest = larger(largest, { widthPx: view.getUint32(inside + 4), heightPx: view.getUint32(inside + 8) });
    }
  }
  return largest;
}

function larger(one: SizePx | undefined, other: SizePx | undefined): SizePx | undefined {
  if (!one || !other) return one ?? other;
  return other.widthPx * other.heightPx > one.widthPx * one.heightPx ? other : one;
}
