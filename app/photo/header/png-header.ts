import { exifSays } from './exif-block';
import { textAt, viewOf } from './header-bytes';
import { believed, type HeaderRefusal, type PictureHeader, tooManyOrCut } from './header-said';

/** A PNG by its chunks. See: W3C, Portable Network Graphics (third edition), sections 5.3, 11.2.1, 11.3.4.3 (pHYs) and 11.3.5 (eXIf). */
export function readPng(bytes: Uint8Array): PictureHeader | HeaderRefusal {
  const view = viewOf(bytes);
  if (bytes.length < 33) return { kind: 'cut-short' };
  if (textAt(bytes, 12, 4) !== 'IHDR') return { kind: 'not-a-picture' };
  const size = { widthPx: view.getUint32(16), heightPx: view.getUint32(20) };
  let said: Pick<PictureHeader, 'fineness'> = {};
  let taken: ReturnType<typeof exifSays> = {};
  let at = 8;
  while (at + 12 <= bytes.length) {
    const name = textAt(bytes, at + 4, 4);
    if (name === 'IEND') return { kind: 'picture', format: 'png', ...size, ...taken, ...said };
    // Dots to the metre, where the unit byte says metre.
    if (name === 'pHYs' && at + 17 <= bytes.length && bytes[at + 16] === 1) {
      said = believed({ across: view.getUint32(at + 8) / 1000, down: view.getUint32(at + 12) / 1000 });
    }
    if (name === 'eXIf') taken = exifSays(bytes.subarray(at + 8, at + 8 + view.getUint32(at)), size);
    at += 12 + view.getUint32(at);
  }
  return tooManyOrCut(size);
}
