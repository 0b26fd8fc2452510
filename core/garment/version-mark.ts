import type { Garment } from './garment';
import type { Piece } from './piece';

/** Letters and figures that cannot be taken for one another, handwritten or printed small. */
const SIGNS = '23456789ABCDEFGHJKMNPQRSTUVWXYZ';
const LENGTH = 5;

/**
 * Five signs that stand for the pieces exactly as they are now: printed on every page, they tell whether two printings,
 * or a printing and the screen, are of one version. The same pieces always have the same mark, whichever way they were
 * come by; two that differ share one by chance in 28 million.
 */
export function versionMark({ pieces }: Pick<Garment, 'pieces'>): string {
  const known = marks.get(pieces);
  if (known !== undefined) return known;
  const mark = markOf(pieces);
  marks.set(pieces, mark);
  return mark;
}

const marks = new WeakMap<readonly Piece[], string>();

/**
 * The mark of any plain value. (Fowler-Noll-Vo hash, 32 bits, variant 1a, over the value written as JSON with its keys in
 * the order of the alphabet.)
 */
export function markOf(value: unknown): string {
  let hash = 0x811c9dc5;
  for (const sign of JSON.stringify(value, inOrder)) {
    hash = Math.imul(hash ^ (sign.codePointAt(0) ?? 0), 0x01000193) >>> 0;
  }
  let mark = '';
  for (let i = 0; i < LENGTH; i++) {
    mark += SIGNS[hash % SIGNS.length];
    hash = Math.floor(hash / SIGNS.length);
  }
  return mark;
}

/** What is read from storage has its keys in another order than what was just made; both are the same. */
function inOrder(_key: string, value: unknown): unknown {
  if (typeof value !== 'object' || value === null || Array.isArray(value)) return value;
  return Object.fromEntries(Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1)));
}
