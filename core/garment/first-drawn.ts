import { cutPieces } from './cut-pieces';
import type { TracedLate } from './done-to-it';
import type { Garment } from './garment';
import type { Piece } from './piece';

/** More pieces than this are not kept as they were first drawn. */
const MOST = 500;

/** One step of what can be undone, the oldest first in a list. */
export interface EarlierStep {
  readonly before: Garment;
  readonly after: Garment;
  /** Milliseconds since 1970. */
  readonly time: number;
}

/** The pieces as they were first drawn. */
export interface FirstDrawn {
  readonly traced: readonly Piece[];
  readonly late: readonly TracedLate[];
}

/**
 * Every piece as it was first drawn: what the garment has kept, and for a piece of which it has kept nothing how it came
 * about in the steps before; where they do not reach back so far, the earliest that is known, and said to be late. Guides
 * are left out. `time` is now.
 */
export function firstDrawn(garment: Garment, past: readonly EarlierStep[], time: number): FirstDrawn {
  const { traced = [], tracedLate: late = [] } = garment;
  const there = new Set(traced.map(({ id }) => id));
  const missing = cutPieces(garment).filter(({ id }) => !there.has(id));
  if (missing.length === 0 || traced.length >= MOST) return { traced, late };
  const found = missing.slice(0, MOST - traced.length).map((piece) => ({ piece, ...earliest(piece, past, time) }));
  return {
    traced: [...traced, ...found.map(({ first }) => first)],
    late: [
      ...late,
      ...found.flatMap(({ piece, since }) => (since === undefined ? [] : [{ pieceId: piece.id, since }])),
    ],
  };
}

/** A piece in the first state that has it; `since` when it was there before all that is known. */
function earliest(piece: Piece, past: readonly EarlierStep[], time: number): { first: Piece; since?: number } {
  const cutIn = (garment: Garment | undefined) => garment && cutPieces(garment).find(({ id }) => id === piece.id);
  const oldest = past[0];
  if (!oldest) return { first: piece, since: time };
  const before = cutIn(oldest.before);
  if (before) return { first: before, since: oldest.time };
  for (const { after } of past) {
    const first = cutIn(after);
    if (first) return { first };
  }
  return { first: piece, since: time };
}

/**
 * A garment after a step, with every piece that the step drew kept as it is now, and everything kept before left as it
 * was: nothing a step does changes how a piece was first drawn. `past` are the steps up to `before`.
 */
export function withFirstDrawn(
  before: Garment,
  after: Garment,
  { past, time }: { readonly past: readonly EarlierStep[]; readonly time: number },
): Garment {
  const { traced: kept, late } = firstDrawn(before, past, time);
  const there = new Set(kept.map(({ id }) => id));
  const drawn = cutPieces(after).filter(({ id }) => !there.has(id));
  const traced = drawn.length > 0 && kept.length < MOST ? [...kept, ...drawn].slice(0, MOST) : kept;
  const same = traced.length === 0 ? !after.traced : traced === after.traced;
  if (same && (late.length === 0 ? !after.tracedLate : late === after.tracedLate)) return after;
  const { traced: _, tracedLate: __, ...rest } = after;
  return {
    ...rest,
    ...(traced.length > 0 && { traced }),
    ...(late.length > 0 && { tracedLate: late }),
  };
}
