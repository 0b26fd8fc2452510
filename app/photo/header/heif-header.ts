import { textAt, viewOf } from './header-bytes';
import { type HeaderRefusal, type PictureHeader, type SizePx, tooManyOrCut } from './header-said';

/**
 * An AVIF or HEIC by its boxes: the largest of the sizes it tells of is that of the picture, the others are its tiles and
 * its thumbnail. See: ISO/IEC 14496-12, 4.2 (boxes); ISO/IEC 23008-12, 6.5.3 (`ispe`, the size of an image).
 */
export function readHeif(bytes: Uint8Array, format: 'avif' | 'heic'): PictureHeader | HeaderRefusal {
  let size: SizePx | undefined;
  let end = 0;
  for (const box of boxesIn(bytes, 0, bytes.length)) {
    end = box.end;
    if (box.name === 'meta') size = largestIn(bytes, box.from + 4, Math.min(box.end, bytes.length));
  }
  if (size && end > bytes.length) return tooManyOrCut(size);
  if (size) return { kind: 'picture', format, ...size };
  return end > bytes.length || end === 0 ? { kind: 'cut-short' } : { kind: 'not-a-picture' };
}

interface Box {
  readonly name: string;
  /** Where its contents begin and end; the end may lie beyond a file that was cut short. */
  readonly from: number;
  readonly end: number;
}

function* boxesIn(bytes: Uint8Array, from: number, to: number): Generator<Box> {
  const view = viewOf(bytes);
  let at = from;
  while (at + 8 <= to) {
    const short = view.getUint32(at);
    const long = short === 1 && at + 16 <= to;
    const length = long ? Number(view.getBigUint64(at + 8)) : short === 0 ? to - at : short;
    if (length < 8) return;
    yield { name: textAt(bytes, at + 4, 4), from: at + (long ? 16 : 8), end: at + length };
    at += length;
  }
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
