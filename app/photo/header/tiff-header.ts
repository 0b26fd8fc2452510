import { viewOf } from './header-bytes';
import { believed, type HeaderRefusal, type PictureHeader, perInch, tooManyOrCut } from './header-said';

/**
 * The tags of the first directory of a TIFF file, or of the block in which EXIF keeps what a camera knew; or of the one
 * that a tag of the first points `under` itself. `undefined` where it does not begin like one, or ends within it.
 *
 * See: Adobe, TIFF Revision 6.0 (1992), section 2; EXIF is laid out the same way (JEITA CP-3451, 4.6.2).
 */
export function tiffTags(bytes: Uint8Array, under?: number): ReadonlyMap<number, readonly number[]> | undefined {
  const view = viewOf(bytes);
  if (bytes.length < 8) return undefined;
  const little = view.getUint16(0) === 0x4949;
  if ((!little && view.getUint16(0) !== 0x4d4d) || view.getUint16(2, little) !== 42) return undefined;
  const first = directoryAt(view, view.getUint32(4, little), little);
  if (under === undefined) return first;
  const [at] = first?.get(under) ?? [];
  return at === undefined ? undefined : directoryAt(view, at, little);
}

/** Values beyond this many are never asked for: strips of a large scan. */
const MOST_VALUES = 100_000;

function directoryAt(view: DataView, at: number, little: boolean): ReadonlyMap<number, readonly number[]> | undefined {
  if (at + 2 > view.byteLength) return undefined;
  const count = view.getUint16(at, little);
  if (at + 2 + 12 * count > view.byteLength) return undefined;
  const tags = new Map<number, readonly number[]>();
  for (let i = 0, entry = at + 2; i < count; i++, entry += 12) {
    tags.set(view.getUint16(entry, little), valuesOf(view, entry, little));
  }
  return tags;
}

/** Bytes of a byte, a letter, a short, a long and a fraction. */
const SIZES: Readonly<Record<number, number>> = { 1: 1, 2: 1, 3: 2, 4: 4, 5: 8 };

function valuesOf(view: DataView, entry: number, little: boolean): number[] {
  const type = view.getUint16(entry + 2, little);
  const count = Math.min(view.getUint32(entry + 4, little), MOST_VALUES);
  const size = SIZES[type];
  if (!size) return [];
  const at = size * count <= 4 ? entry + 8 : view.getUint32(entry + 8, little);
  const values: number[] = [];
  for (let i = 0; i < count && at + size * (i + 1) <= view.byteLength; i++) {
    const from = at + size * i;
    if (size === 1) values.push(view.getUint8(from));
    else if (size === 2) values.push(view.getUint16(from, little));
    else if (size === 4) values.push(view.getUint32(from, little));
    else values.push(view.getUint32(from, little) / view.getUint32(from + 4, little));
  }
  return values;
}

const TAG = {
  width: 256,
  height: 257,
  stripsAt: 273,
  turned: 274,
  stripsLong: 279,
  across: 282,
  down: 283,
  unit: 296,
  tilesAt: 324,
  tilesLong: 325,
} as const;

/** How finely it was scanned and which way up it lies, as TIFF and EXIF say it alike. */
export function scannedAs(tags: ReadonlyMap<number, readonly number[]>): Pick<PictureHeader, 'fineness' | 'turned'> {
  const [across, down, unit = 2, turned] = [TAG.across, TAG.down, TAG.unit, TAG.turned].map(
    (tag) => tags.get(tag)?.[0],
  );
  const perUnit = across !== undefined && down !== undefined && perInch(across, down);
  // Unit 3 is a centimetre, 1 none at all.
  const perMm = !perUnit || unit === 1 ? undefined : unit === 3 ? perInch(across * 2.54, down * 2.54) : perUnit;
  return { ...believed(perMm), ...(turned && turned > 1 && turned <= 8 ? { turned } : {}) };
}

/** A TIFF file by its first directory; the strips and tiles it points to must lie within the file. */
export function readTiff(bytes: Uint8Array): PictureHeader | HeaderRefusal {
  const tags = tiffTags(bytes);
  const [widthPx] = tags?.get(TAG.width) ?? [];
  const [heightPx] = tags?.get(TAG.height) ?? [];
  // The directory often stands at the end of the file.
  if (!tags) return { kind: 'cut-short' };
  if (widthPx === undefined || heightPx === undefined) return { kind: 'not-a-picture' };
  const size = { widthPx, heightPx };
  const at = tags.get(TAG.stripsAt) ?? tags.get(TAG.tilesAt) ?? [];
  const long = tags.get(TAG.stripsLong) ?? tags.get(TAG.tilesLong) ?? [];
  const end = Math.max(0, ...at.map((from, i) => from + (long[i] ?? 0)));
  if (end > bytes.length) return tooManyOrCut(size);
  return { kind: 'picture', format: 'tiff', ...size, ...scannedAs(tags) };
}
