import { changeBetween, type Json } from './change';
import { cutPieces } from './cut-pieces';
import type { Garment } from './garment';
import type { Piece } from './piece';

/**
 * So many steps are kept to be read. When there are more, the oldest go many at a time: what is stored of a step is what
 * changed, and a list that moved up by one would have changed throughout.
 */
const MOST = 1000;
const GO_AT_ONCE = 200;

/** The garment after a step that is named, where it did anything to the pieces that are cut. The steps before stay as they were. */
export function withNamedStep(
  before: Garment,
  after: Garment,
  { label, time }: { readonly label: string; readonly time: number },
): Garment {
  const pieceIds = touched(before, after);
  const had = before.steps ?? [];
  if (pieceIds.length === 0) {
    if (after.steps === before.steps) return after;
    const { steps: _, ...rest } = after;
    return before.steps ? { ...rest, steps: before.steps } : rest;
  }
  const kept = had.length < MOST ? had : had.slice(GO_AT_ONCE);
  return { ...after, steps: [...kept, { label, time, pieceIds: pieceIds.slice(0, 500) }] };
}

/** The pieces that came, went or are not as they were. */
function touched(before: Garment, after: Garment): string[] {
  if (before.pieces === after.pieces) return [];
  const was = new Map(cutPieces(before).map((piece) => [piece.id, piece]));
  const now = cutPieces(after);
  const there = new Set(now.map(({ id }) => id));
  return [
    ...now.filter((piece) => !isAlike(was.get(piece.id), piece)).map(({ id }) => id),
    ...[...was.keys()].filter((id) => !there.has(id)),
  ];
}

function isAlike(was: Piece | undefined, piece: Piece): boolean {
  if (!was || was === piece) return was === piece;
  return changeBetween(was as unknown as Json, piece as unknown as Json).length === 0;
}
