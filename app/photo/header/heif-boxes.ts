import { textAt, viewOf } from './header-bytes';

interface Box {
  readonly name: string;
  /** Where its contents begin and end; the end may lie beyond a file that was cut short. */
  readonly from: number;
  readonly end: number;
}

/** The boxes between two places, in order. See: ISO/IEC 14496-12, 4.2. */
export function* boxesIn(bytes: Uint8Array, from: number, to: number): Generator<Box> {
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
