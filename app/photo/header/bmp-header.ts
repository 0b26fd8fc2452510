import { viewOf } from './header-bytes';
import { type HeaderRefusal, type PictureHeader, tooManyOrCut } from './header-said';

/** A Windows bitmap by its two headers (BITMAPFILEHEADER and BITMAPINFOHEADER, Microsoft, Win32 API). */
export function readBmp(bytes: Uint8Array): PictureHeader | HeaderRefusal {
  const view = viewOf(bytes);
  if (bytes.length < 54) return { kind: 'cut-short' };
  // Rows from the top down are told by a height below nothing.
  const size = { widthPx: view.getInt32(18, true), heightPx: Math.abs(view.getInt32(22, true)) };
  if (bytes.length < view.getUint32(2, true)) return tooManyOrCut(size);
  return { kind: 'picture', format: 'bmp', ...size };
}
