import { neighbourIndex } from '../../core/garment/outline';
import type { Piece } from '../../core/garment/piece';
import type { TablePoint } from '../../core/geometry/point';
import type { Chosen } from '../state/table-store';

/** A point of the outline, as it is met going round the piece. */
export type Stop =
  | { readonly kind: 'corner'; readonly cornerId: string; readonly number: number; readonly at: TablePoint }
  | { readonly kind: 'through'; readonly edgeId: string; readonly index: number; readonly at: TablePoint };

/** The points of the outline in order: each corner, then the points its edge passes. Corners are numbered from 1. */
export function stopsOf(piece: Piece): Stop[] {
  return piece.corners.flatMap((corner, index): Stop[] => {
    const edge = piece.edges[index];
    const through = edge?.shape.kind === 'curve' ? edge.shape.through : [];
    return [
      { kind: 'corner', cornerId: corner.id, number: index + 1, at: corner.at },
      ...through.map((at, n): Stop => ({ kind: 'through', edgeId: edge?.id ?? '', index: n, at })),
    ];
  });
}

/** The choice that a stop stands for. */
export function chosenAt(pieceId: string, stop: Stop): Chosen {
  return stop.kind === 'corner'
    ? { kind: 'corner', pieceId, cornerId: stop.cornerId }
    : { kind: 'through', pieceId, edgeId: stop.edgeId, index: stop.index };
}

/** The stop after or before what is chosen, going round; from an edge its own corner, from the piece its first. */
export function nextStop(piece: Piece, chosen: Chosen, step: 1 | -1): Stop | undefined {
  const stops = stopsOf(piece);
  const now = stops.findIndex((stop) => isChosen(stop, chosen));
  if (now >= 0) return stops[(now + step + stops.length) % stops.length];
  if (chosen.kind !== 'edge') return stops[step === 1 ? 0 : stops.length - 1];
  const edge = piece.edges.findIndex(({ id }) => id === chosen.edgeId);
  const corner = piece.corners[step === 1 ? neighbourIndex(piece, Math.max(0, edge), 1) : Math.max(0, edge)];
  return stops.find((stop) => stop.kind === 'corner' && stop.cornerId === corner?.id);
}

/** The point of the outline that is chosen, if one is. */
export function chosenStop(piece: Piece, chosen: Chosen): Stop | undefined {
  return stopsOf(piece).find((stop) => isChosen(stop, chosen));
}

function isChosen(stop: Stop, chosen: Chosen): boolean {
  return stop.kind === 'corner'
    ? chosen.kind === 'corner' && chosen.cornerId === stop.cornerId
    : chosen.kind === 'through' && chosen.edgeId === stop.edgeId && chosen.index === stop.index;
}

/** A key that leads over the pieces, with Shift or without. */
export interface WalkKey {
  readonly key: string;
  readonly shift: boolean;
}

/**
 * Where a key leads from what is chosen: Page Down and Page Up from point to point round a piece, with Shift from edge to
 * edge; End and Home to the next piece and the one before. `undefined` for any other key, and where there are no pieces.
 */
export function walked(pieces: readonly Piece[], chosen: Chosen, { key, shift }: WalkKey): Chosen | undefined {
  const at = 'pieceId' in chosen ? pieces.findIndex(({ id }) => id === chosen.pieceId) : -1;
  const piece = pieces[Math.max(0, at)];
  if (!piece) return undefined;
  if (key === 'End' || key === 'Home') {
    const step = key === 'End' ? 1 : -1;
    const next = at < 0 ? pieces.at(step === 1 ? 0 : -1) : pieces[(at + step + pieces.length) % pieces.length];
    return next && { kind: 'piece', pieceId: next.id };
  }
  if (key !== 'PageDown' && key !== 'PageUp') return undefined;
  const step = key === 'PageDown' ? 1 : -1;
  if (shift) return nextEdge(piece, chosen, step);
  const stop = nextStop(piece, chosen, step);
  return stop && chosenAt(piece.id, stop);
}

/** The edge after or before the one that is chosen, or that the chosen point lies on or begins. */
function nextEdge(piece: Piece, chosen: Chosen, step: 1 | -1): Chosen | undefined {
  const count = piece.edges.length;
  let index: number;
  if (chosen.kind === 'edge' || chosen.kind === 'through') {
    index = piece.edges.findIndex(({ id }) => id === chosen.edgeId) + step;
  } else if (chosen.kind === 'corner') {
    const corner = piece.corners.findIndex(({ id }) => id === chosen.cornerId);
    index = step === 1 ? corner : corner - 1;
  } else index = step === 1 ? 0 : -1;
  const edge = piece.edges[(index + count) % count];
  return edge && { kind: 'edge', pieceId: piece.id, edgeId: edge.id };
}
