import type { Trace, TracedPoint } from './trace';

/**
 * A piece in the making is no part of the garment yet, but it is work on the screen: it is kept beside the garment, so
 * that a closed tab does not lose it. The browser's small store writes at once, which the journal's cannot.
 */
const KEY = 'inchsquare unfinished trace';

/** Keeps the points traced so far for a garment; an empty trace clears what was kept. */
export function keepTrace(garmentId: string, trace: Trace): void {
  try {
    if (trace.length === 0) localStorage.removeItem(KEY);
    else localStorage.setItem(KEY, JSON.stringify({ garmentId, trace }));
  } catch {
    // A browser that keeps nothing keeps no trace either; the notice about that stands on the shelf.
  }
}

/** The points kept for a garment; none when there are none, or what is kept cannot be read. */
export function keptTrace(garmentId: string): Trace {
  try {
    const kept: unknown = JSON.parse(localStorage.getItem(KEY) ?? 'null');
    if (typeof kept !== 'object' || kept === null || !('garmentId' in kept) || !('trace' in kept)) return [];
    if (kept.garmentId !== garmentId || !Array.isArray(kept.trace)) return [];
    return kept.trace.every(isTracedPoint) ? kept.trace : [];
  } catch {
    return [];
  }
}

function isTracedPoint(value: unknown): value is TracedPoint {
  if (typeof value !== 'object' || value === null || !('at' in value) || !('kind' in value)) return false;
  const { at, kind } = value as { readonly at: { readonly x?: unknown; readonly y?: unknown } | null; kind: unknown };
  return (kind === 'corner' || kind === 'curve') && Number.isFinite(at?.x) && Number.isFinite(at?.y);
}
