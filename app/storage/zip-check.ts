/**
 * The check sums of a zip file, which the unzipping library leaves unread: one wrong bit in a picture or a number would
 * pass. Layout: PKWARE, APPNOTE.TXT, .ZIP File Format Specification, sections 4.3.12 (central directory) and 4.3.16 (its
 * end); the sum is CRC-32 with the polynomial 0xEDB88320 (section 4.4.7).
 */

const END_OF_DIRECTORY = 0x06054b50;
const DIRECTORY_ENTRY = 0x02014b50;
const END_LENGTH = 22;
const LONGEST_REMARK = 0xffff;

/** The check sums that a zip file gives for its entries, by name. Throws when it has no directory to read. */
export function zipSums(file: Uint8Array): ReadonlyMap<string, number> {
  const view = new DataView(file.buffer, file.byteOffset, file.byteLength);
  const end = endOfDirectory(view);
  const count = view.getUint16(end + 10, true);
  let at = view.getUint32(end + 16, true);
  const sums = new Map<string, number>();
  for (let i = 0; i < count; i++) {
    if (view.getUint32(at, true) !== DIRECTORY_ENTRY) throw new RangeError('a zip directory entry is missing');
    const nameLength = view.getUint16(at + 28, true);
    const name = new TextDecoder().decode(file.subarray(at + 46, at + 46 + nameLength));
    sums.set(name, view.getUint32(at + 16, true));
    at += 46 + nameLength + view.getUint16(at + 30, true) + view.getUint16(at + 32, true);
  }
  return sums;
}

function endOfDirectory(view: DataView): number {
  const last = view.byteLength - END_LENGTH;
  for (let at = last; at >= Math.max(0, last - LONGEST_REMARK); at--) {
    if (view.getUint32(at, true) === END_OF_DIRECTORY) return at;
  }
  throw new RangeError('not a whole zip file');
}

const table = Uint32Array.from({ length: 256 }, (_, byte) => {
  let sum = byte;
  for (let bit = 0; bit < 8; bit++) sum = sum & 1 ? 0xedb88320 ^ (sum >>> 1) : sum >>> 1;
  return sum;
});

/** The CRC-32 of bytes, 0 to 2^32 - 1. */
export function crc32(bytes: Uint8Array): number {
  let sum = 0xffffffff;
  for (let i = 0; i < bytes.length; i++) {
    sum = (table[(sum ^ (bytes[i] as number)) & 0xff] as number) ^ (sum >>> 8);
  }
  return (sum ^ 0xffffffff) >>> 0;
}
