/**
 * A fresh id: a random UUID, version 4 (RFC 9562, section 5.4). Made from random bytes, for `crypto.randomUUID` is missing
 * where the page is served over plain http by another machine of the house.
 */
export function newId(): string {
  const bytes = crypto.getRandomValues(new Uint8Array(16));
  const [version = 0, variant = 0] = [bytes[6], bytes[8]];
  bytes[6] = (version & 0x0f) | 0x40;
  bytes[8] = (variant & 0x3f) | 0x80;
  const hex = Array.from(bytes, (byte) => byte.toString(16).padStart(2, '0')).join('');
  return hex.replace(/^(.{8})(.{4})(.{4})(.{4})(.{12})$/, '$1-$2-$3-$4-$5');
}
