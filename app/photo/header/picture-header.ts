/** What a file is by its own bytes, whatever it is called, read before any memory is spent on the picture itself. */

import { readBmp } from './bmp-header';
import { readGif } from './gif-header';
import { startsWith, textAt, viewOf } from './header-bytes';
import { type HeaderRefusal, MOST_PIXELS, type OtherFormat, type PictureHeader } from './header-said';
import { readHeif } from './heif-header';
import { readJpeg } from './jpeg-header';
import { readPng } from './png-header';
import { readTiff } from './tiff-header';
import { readWebp } from './webp-header';

/** The kind and size of a picture. Looks at the whole of the file for a missing end, but decodes nothing. */
export function readPictureHeader(bytes: Uint8Array): PictureHeader | HeaderRefusal {
  if (bytes.length === 0) return { kind: 'empty-file' };
  const read = readByKind(bytes);
  if (read.kind !== 'picture') return read;
  const { widthPx, heightPx } = read;
  if (!(widthPx > 0 && heightPx > 0)) return { kind: 'not-a-picture' };
  return widthPx * heightPx > MOST_PIXELS ? { kind: 'too-many-pixels', widthPx, heightPx } : read;
}

function readByKind(bytes: Uint8Array): PictureHeader | HeaderRefusal {
  if (startsWith(bytes, [0xff, 0xd8, 0xff])) return readJpeg(bytes);
  if (startsWith(bytes, [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a])) return readPng(bytes);
  if (textAt(bytes, 0, 4) === 'RIFF' && textAt(bytes, 8, 4) === 'WEBP') return readWebp(bytes);
  if (/^GIF8[79]a/.test(textAt(bytes, 0, 6))) return readGif(bytes);
  if (/^(II\*\0|MM\0\*)/.test(textAt(bytes, 0, 4))) return readTiff(bytes);
  if (textAt(bytes, 4, 4) === 'ftyp') {
    const brands = textAt(bytes, 8, 56);
    if (/avif|avis/.test(brands)) return readHeif(bytes, 'avif');
    if (/heic|heix|hevc|hevx|heim|heis|mif1|msf1/.test(brands)) return readHeif(bytes, 'heic');
  }
  if (textAt(bytes, 0, 2) === 'BM' && bytes.length > 10 && viewOf(bytes).getUint32(6, true) === 0)
    return readBmp(bytes);
  const format = otherFormat(bytes);
  return format ? { kind: 'other-format', format } : { kind: 'not-a-picture' };
}

function otherFormat(bytes: Uint8Array): OtherFormat | undefined {
  const start = textAt(bytes, 0, 1024);
  if (isPdf(bytes)) return 'pdf';
  if (/^(II\+\0|MM\0\+)/.test(start)) return 'big-tiff';
  if (startsWith(bytes, [0xff, 0x0a]) || textAt(bytes, 4, 4) === 'JXL ') return 'jpeg-xl';
  return /^\s*(<\?xml[\s\S]*)?<svg[\s>]/.test(start) ? 'svg' : undefined;
}

/** Whether a file is a PDF; readers allow a little before its mark (ISO 32000-2, annex I.2 of its forerunners). */
export function isPdf(bytes: Uint8Array): boolean {
  return textAt(bytes, 0, 1024).includes('%PDF-');
}
