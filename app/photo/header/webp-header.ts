import { exifSays } from './exif-block';
import { textAt, viewOf } from './header-bytes';
import { type HeaderRefusal, type PictureHeader, type SizePx, tooManyOrCut } from './header-said';

/** A WebP by its chunks: the first has its size. See: RFC 9649, sections 2.3 and 2.5 to 2.7 (VP8, VP8L, VP8X, EXIF). */
export function readWebp(bytes: Uint8Array): PictureHeader | HeaderRefusal {
  if (bytes.length < 30) return { kind: 'cut-short' };
  const size = webpSize(bytes);
  if (!size) return { kind: 'not-a-picture' };
  const promised = 8 + viewOf(bytes).getUint32(4, true);
  if (bytes.length < promised) return tooManyOrCut(size);
  const exif = chunkOf(bytes, 'EXIF', promised);
  return { kind: 'picture', format: 'webp', ...size, ...(exif ? exifSays(exif, size) : {}) };
}

/** The contents of a chunk, without the mark that some programs copy along from JPEG. */
function chunkOf(bytes: Uint8Array, name: string, end: number): Uint8Array | undefined {
  const view = viewOf(bytes);
  for (let at = 12; at + 8 <= end; ) {
    const length = view.getUint32(at + 4, true);
    if (textAt(bytes, at, 4) === name) {
      const from = at + (textAt(bytes, at + 8, 4) === 'Exif' ? 14 : 8);
      return bytes.subarray(from, at + 8 + length);
    }
    // Chunks are filled up to an even length.
    at += 8 + length + (length % 2);
  }
  return undefined;
}

function webpSize(bytes: Uint8Array): SizePx | undefined {
  const view = viewOf(bytes);
  const chunk = textAt(bytes, 12, 4);
  if (chunk === 'VP8X') return { widthPx: 1 + threeBytes(bytes, 24), heightPx: 1 + threeBytes(bytes, 27) };
  if (chunk === 'VP8L' && bytes[20] === 0x2f) {
    const bits = view.getUint32(21, true);
    return { widthPx: 1 + (bits & 0x3fff), heightPx: 1 + ((bits >>> 14) & 0x3fff) };
  }
  if (chunk === 'VP8 ' && bytes[23] === 0x9d && bytes[24] === 0x01 && bytes[25] === 0x2a) {
    return { widthPx: view.getUint16(26, true) & 0x3fff, heightPx: view.getUint16(28, true) & 0x3fff };
  }
  return undefined;
}

function threeBytes(bytes: Uint8Array, at: number): number {
  return (bytes[at] as number) + ((bytes[at + 1] as number) << 8) + ((bytes[at + 2] as number) << 16);
}
