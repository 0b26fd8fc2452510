import type { Random } from './place-search';

/**
 * Numbers from 0 up to but not 1 that are the same for the same seed (a whole number): a counter stirred by multiplying
 * and shifting over 32 bits. Even enough for a search, and not for secrets.
 */
export function seededRandom(seed: number): Random {
  let state = seed | 0;
  return () => {
    state = (state + 0x9e3779b9) | 0;
    let mixed = Math.imul(state ^ (state >>> 16), 0x21f0aaad);
    mixed = Math.imul(mixed ^ (mixed >>> 15), 0x735a2d97);
    return ((mixed ^ (mixed >>> 15)) >>> 0) / 2 ** 32;
  };
}
