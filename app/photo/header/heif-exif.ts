import { textAt, viewOf } from './header-bytes';
import { boxesIn } from './heif-boxes';

/**
 * The EXIF block of an AVIF or HEIC whose `meta` box holds these bytes. See: ISO/IEC 14496-12, 8.11.3 (`iloc`, where items
 * lie) and 8.11.6 (`iinf`, what they are); ISO/IEC 23008-12, A.2.1 (the block begins with how far on its own header is).
 */
export function heifExif(bytes: Uint8Array, meta: Uint8Array): Uint8Array | undefined {
  let id: number | undefined;
  let places: Uint8Array | undefined;
  for (const { name, from, end } of boxesIn(meta, 0, meta.length)) {
    if (name === 'iinf') id = exifItem(meta.subarray(from, end));
    if (name === 'iloc') places = meta.subarray(from, end);
  }
  const lies = id !== undefined && places ? itemPlace(places, id) : undefined;
  if (!lies || lies.length < 12 || lies.from + lies.length > bytes.length) return undefined;
  const item = bytes.subarray(lies.from, lies.from + lies.length);
  return item.subarray(4 + viewOf(item).getUint32(0));
}

/** The number of the item that is of the kind Exif. */
function exifItem(list: Uint8Array): number | undefined {
  const start = list[0] === 0 ? 6 : 8;
  for (const { name, from, end } of boxesIn(list, start, list.length)) {
    if (name !== 'infe' || end > list.length || end - from < 12) continue;
    const long = list[from] === 3;
    if (textAt(list, from + (long ? 10 : 8), 4) !== 'Exif') continue;
    return long ? viewOf(list).getUint32(from + 4) : viewOf(list).getUint16(from + 4);
  }
  return undefined;
}

/** Where in the file an item lies that is in one run; nothing for one that lies elsewhere or in several. */
function itemPlace(list: Uint8Array, wanted: number): { readonly from: number; readonly length: number } | undefined {
  const view = viewOf(list);
  let at = 4;
  const number = (size: number) => {
    let value = 0;
    for (let k = 0; k < size; k++) value = value * 256 + view.getUint8(at + k);
    at += size;
    return value;
  };
  try {
    const version = list[0] ?? 0;
    const sizes = number(2);
    const [offset, length, base] = [sizes >> 12, (sizes >> 8) & 15, (sizes >> 4) & 15];
    const index = version > 0 ? sizes & 15 : 0;
    const wide = version === 2 ? 4 : 2;
    const count = number(wide);
    for (let k = 0; k < count; k++) {
      const id = number(wide);
      const method = version > 0 ? number(2) & 15 : 0;
      number(2);
      const start = number(base);
      const runs = number(2);
      let [from, long] = [0, 0];
      for (let run = 0; run < runs; run++) {
        number(index);
        from = start + number(offset);
        long = number(length);
      }
      if (id === wanted) return method === 0 && runs === 1 ? { from, length: long } : undefined;
    }
  } catch {
    // The list ends within an item.
  }
  return undefined;
}
