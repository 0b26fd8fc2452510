import { exifSays } from './exif-block';
import { textAt, viewOf } from './header-bytes';
import { believed, type HeaderRefusal, type PictureHeader, perInch, type SizePx, tooManyOrCut } from './header-said';

/** A JPEG by its markers. See: ITU-T T.81 annex B; density, ITU-T T.871 (JFIF) 10.1; JEITA CP-3451 (EXIF). */
export function readJpeg(bytes: Uint8Array): PictureHeader | HeaderRefusal {
  const view = viewOf(bytes);
  let size: SizePx | undefined;
  let said: Pick<PictureHeader, 'fineness'> = {};
  let exif: Uint8Array | undefined;
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
    if (marker === 0xe0) said = { ...said, ...jfifFineness(bytes, at) };
    if (marker === 0xe1 && textAt(bytes, at + 4, 4) === 'Exif') {
      exif ??= bytes.subarray(at + 10, at + 2 + length);
    }
    // From the start of the scan on only an end marker says that the picture is whole.
    if (marker === 0xda) {
      if (!size) return { kind: 'not-a-picture' };
      const taken = exif ? exifSays(exif, size) : {};
      return hasEnd(bytes, at) ? { kind: 'picture', format: 'jpeg', ...size, ...said, ...taken } : tooManyOrCut(size);
    }
    at += 2 + length;
  }
  return size ? tooManyOrCut(size) : { kind: 'cut-short' };
}

/** Start of frame markers C0 to CF, less the tables and the extension that share the row. */
function isFrame(marker: number): boolean {
  return marker >= 0xc0 && marker <= 0xcf && marker !== 0xc4 && marker !== 0xc8 && marker !== 0xcc;
}

/** Searched from the end, because it nearly always is the end. */
function hasEnd(bytes: Uint8Array, scanAt: number): boolean {
  for (let at = bytes.length - 2; at > scanAt; at--) {
    if (bytes[at] === 0xff && bytes[at + 1] === 0xd9) return true;
  }
  return false;
}

function jfifFineness(bytes: Uint8Array, at: number): Pick<PictureHeader, 'fineness'> {
  if (textAt(bytes, at + 4, 4) !== 'JFIF' || at + 16 > bytes.length) return {};
  const view = viewOf(bytes);
  const [unit, across, down] = [bytes[at + 11], view.getUint16(at + 12), view.getUint16(at + 14)];
  if (unit === 1) return believed(perInch(across, down));
  return unit === 2 ? believed({ across: across / 10, down: down / 10 }) : {};
}
