import type { Piece } from '../garment/piece';
import { netAlong, takenUp } from '../garment/taken-up';
import { edgeLength } from './edge-length';

/** How near a sewn length is found again on the drawn line (mm): rounding size. */
const FOUND = 1e-9;

/** Where a place `along` an edge's drawn line (mm from its start) lies once what is folded out of it is sewn. */
export function sewnAlong(piece: Piece, edgeId: string, along: number): number | undefined {
  const full = edgeLength(piece, edgeId);
  if (full === undefined) return undefined;
  return netAlong(takenUp(piece, edgeId, full), Math.min(full, Math.max(0, along)));
}

/**
 * The other way: where on the drawn line of an edge the sewn length `sewn` from its start lies (mm). Where a dart closes
 * on that very length it is the nearer end of its mouth. Lengths outside the edge give its ends.
 */
export function drawnAlong(piece: Piece, edgeId: string, sewn: number): number | undefined {
  const full = edgeLength(piece, edgeId);
  if (full === undefined) return undefined;
  const mouths = takenUp(piece, edgeId, full);
  if (sewn >= netAlong(mouths, full)) return full;
  // What is sewn never shrinks along the line and never grows faster than it, so halving finds the place.
  let [low, high] = [Math.max(0, Math.min(sewn, full)), full];
  if (netAlong(mouths, low) >= sewn) return low;
  while (high - low > FOUND) {
    const middle = (low + high) / 2;
    if (middle === low || middle === high) break;
    if (netAlong(mouths, middle) < sewn - FOUND) low = middle;
    else high = middle;
  }
  return high;
}
