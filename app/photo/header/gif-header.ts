import { viewOf } from './header-bytes';
import { type HeaderRefusal, type PictureHeader, tooManyOrCut } from './header-said';

/** Some programs leave a few bytes behind the trailer. */
const LOOKED_THROUGH = 16;

/** A GIF by its logical screen and its trailer. See: W3C copy of GIF89a (CompuServe, 1990), sections 18 and 27. */
export function readGif(bytes: Uint8Array): PictureHeader | HeaderRefusal {
  if (bytes.length < 13) return { kind: 'cut-short' };
  const view = viewOf(bytes);
  const size = { widthPx: view.getUint16(6, true), heightPx: view.getUint16(8, true) };
  return bytes.subarray(-LOOKED_THROUGH).includes(0x3b)
    ? { kind: 'picture', format: 'gif', ...size }
    : tooManyOrCut(size);
}
