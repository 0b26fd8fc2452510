/**
 * What the first bytes of a picture file say of it, read before any memory is spent on the picture itself.
 *
 * See: JPEG, ITU-T T.81 annex B (markers); PNG, W3C Portable Network Graphics (third edition), section 5 and 11.2.1;
 * WebP, RFC 9649 (RIFF chunks VP8, VP8L, VP8X).
 */

/** A file that can be read, with its size as stored: a phone photo may still have to be turned upright. */
export interface PictureHeader {
  readonly kind: 'picture';
  readonly format: 'jpeg' | 'png' | 'webp';
  readonly widthPx: number;
  readonly heightPx: number;
}

/** Kinds of file that are known but cannot be read here yet. */
export type OtherFormat = 'pdf' | 'heic' | 'avif' | 'gif' | 'tiff' | 'bmp' | 'jpeg-xl' | 'svg';

export type HeaderRefusal =
  | { readonly kind: 'empty-file' }
  | { readonly kind: 'not-a-picture' }
  | { readonly kind: 'other-format'; readonly format: OtherFormat }
  /** The file stops before the picture does: a copy or a download that was cut short. */
  | { readonly kind: 'cut-short' }
  | { readonly kind: 'too-many-pixels'; readonly widthPx: number; readonly heightPx: number };

/** The most pixels a picture may have: above it, opening alone takes over 400 MB. */
export const MOST_PIXELS = 100e6;

/**
 * The kind and size of a picture by its own bytes, whatever the file is called. Looks at the whole of the file for a
 * missing end, but decodes nothing.
 */
export function readPictureHeader(bytes: Uint8Array): PictureHeader | HeaderRefusal {
  if (bytes.length === 0) return { kind: 'empty-file' };
  const read = startsWith(bytes, [0xff, 0xd8, 0xff])
    ? readJpeg(bytes)
    : startsWith(bytes, [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a])
      ? readPng(bytes)
      : textAt(bytes, 0, 4) === 'RIFF' && textAt(bytes, 8, 4) === 'WEBP'
        ? readWebp(bytes)
        : otherKind(bytes);
  if (read.kind === 'picture' && !(read.widthPx > 0 && read.heightPx > 0)) return { kind: 'not-a-picture' };
  if (read.kind === 'picture' && read.widthPx * read.heightPx > MOST_PIXELS) {
    return { kind: 'too-many-pixels', widthPx: read.widthPx, heightPx: read.heightPx };
  }
  return read;
}

function readJpeg(bytes: Uint8Array): PictureHeader | HeaderRefusal {
  const view = viewOf(bytes);
  let size: { readonly widthPx: number; readonly heightPx: number } | undefined;
  let at = 2;
  while (at + 4 <= bytes.length) {
    const marker = bytes[at + 1] as number;
    // A marker may be led in by fill bytes, and cameras have been known to leave stray ones.
    if (bytes[at] !== 0xff || marker === 0xff || marker === 0) {
      at += 1;
      continue;
    }
    const length = view.getUint16(at + 2);
    if (length < 2) return { kind: 'not-a-picture' };
    if (isFrame(marker)) {
      if (at + 9 > bytes.length) return { kind: 'cut-short' };
      size = { heightPx: view.getUint16(at + 5), widthPx: view.getUint16(at + 7) };
    }
    // From the start of the scan on only an end marker says that the picture is whole.
    if (marker === 0xda) {
      if (!size) return { kind: 'not-a-picture' };
      return hasJpegEnd(bytes, at) ? { kind: 'picture', format: 'jpeg', ...size } : tooManyOr(size);
    }
    at += 2 + length;
  }
  return size ? tooManyOr(size) : { kind: 'cut-short' };
}

/** Start of frame markers C0 to CF, less the tables and the extension that share the row. */
function isFrame(marker: number): boolean {
  return marker >= 0xc0 && marker <= 0xcf && marker !== 0xc4 && marker !== 0xc8 && marker !== 0xcc;
}

/** Searched from the end, because it nearly always is the end. */
function hasJpegEnd(bytes: Uint8Array, scanAt: number): boolean {
  for (let at = bytes.length - 2; at > scanAt; at--) {
    if (bytes[at] === 0xff && bytes[at + 1] === 0xd9) return true;
  }
  return false;
}

function readPng(bytes: Uint8Array): PictureHeader | HeaderRefusal {
  const view = viewOf(bytes);
  if (bytes.length < 33) return { kind: 'cut-short' };
  if (textAt(bytes, 12, 4) !== 'IHDR') return { kind: 'not-a-picture' };
  const size = { widthPx: view.getUint32(16), heightPx: view.getUint32(20) };
  let at = 8;
  while (at + 12 <= bytes.length) {
    if (textAt(bytes, at + 4, 4) === 'IEND') return { kind: 'picture', format: 'png', ...size };
    at += 12 + view.getUint32(at);
  }
  return tooManyOr(size);
}

function readWebp(bytes: Uint8Array): PictureHeader | HeaderRefusal {
  if (bytes.length < 30) return { kind: 'cut-short' };
  const size = webpSize(bytes);
  if (!size) return { kind: 'not-a-picture' };
  const promised = 8 + viewOf(bytes).getUint32(4, true);
  return bytes.length >= promised ? { kind: 'picture', format: 'webp', ...size } : tooManyOr(size);
}

function webpSize(bytes: Uint8Array): { readonly widthPx: number; readonly heightPx: number } | undefined {
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

/** A file without its end: the size it claims is still worth saying when that alone is too much. */
function tooManyOr(size: { readonly widthPx: number; readonly heightPx: number }): HeaderRefusal {
  return size.widthPx * size.heightPx > MOST_PIXELS ? { kind: 'too-many-pixels', ...size } : { kind: 'cut-short' };
}

function otherKind(bytes: Uint8Array): HeaderRefusal {
  const format = otherFormat(bytes);
  return format ? { kind: 'other-format', format } : { kind: 'not-a-picture' };
}

function otherFormat(bytes: Uint8Array): OtherFormat | undefined {
  if (textAt(bytes, 0, 1024).includes('%PDF-')) return 'pdf';
  if (textAt(bytes, 4, 4) === 'ftyp') {
    const brands = textAt(bytes, 8, 56);
    if (/avif|avis/.test(brands)) return 'avif';
    if (/heic|heix|hevc|hevx|heim|heis|mif1|msf1/.test(brands)) return 'heic';
  }
  if (/^GIF8[79]a/.test(textAt(bytes, 0, 6))) return 'gif';
  if (/^(II\*\0|MM\0\*)/.test(textAt(bytes, 0, 4))) return 'tiff';
  if (textAt(bytes, 0, 2) === 'BM' && bytes.length > 54 && viewOf(bytes).getUint32(6, true) === 0) return 'bmp';
  if (startsWith(bytes, [0xff, 0x0a]) || textAt(bytes, 4, 4) === 'JXL ') return 'jpeg-xl';
  if (/^\s*(<\?xml[\s\S]*)?<svg[\s>]/.test(textAt(bytes, 0, 1024))) return 'svg';
  return undefined;
}

function startsWith(bytes: Uint8Array, start: readonly number[]): boolean {
  return start.every((byte, index) => bytes[index] === byte);
}

function textAt(bytes: Uint8Array, from: number, length: number): string {
  return String.fromCharCode(...bytes.subarray(from, from + length));
}

function threeBytes(bytes: Uint8Array, at: number): number {
  return (bytes[at] as number) + ((bytes[at + 1] as number) << 8) + ((bytes[at + 2] as number) << 16);
}

function viewOf(bytes: Uint8Array): DataView {
  return new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
}
