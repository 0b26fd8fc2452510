import type { Garment } from './garment';

/** Letters and figures that cannot be taken for one another, handwritten or printed small. */
const SIGNS = '23456789ABCDEFGHJKMNPQRSTUVWXYZ';
const LENGTH = 5;

/**
 * Five signs that stand for the pieces exactly as they are now: printed on every page, they tell whether two printings,
 * or a printing and the screen, are of one version. The same pieces always have the same mark; two that differ share one
 * by chance in 28 million. (Fowler-Noll-Vo hash, 32 bits, variant 1a, over the pieces written as JSON.)
 */
export function versionMark(garment: Pick<Garment, 'pieces'>): string {
  let hash = 0x811c9dc5;
  for (const sign of JSON.stringify(garment.pieces)) {
    hash = Math.imul(hash ^ (sign.codePointAt(0) ?? 0), 0x01000193) >>> 0;
  }
  let mark = '';
  for (let i = 0; i < LENGTH; i++) {
    mark += SIGNS[hash % SIGNS.length];
    hash = Math.floor(hash / SIGNS.length);
  }
  return mark;
}
