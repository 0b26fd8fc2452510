import { isSamePoint, type TablePoint } from '../geometry/point';
import type { Corner, Edge, EdgeShape, Piece } from './piece';

/** A corner as it was traced, with the points the edge after it passes; none for a straight edge. */
export interface TracedCorner {
  readonly at: TablePoint;
  readonly through: readonly TablePoint[];
}

export interface NewPieceOptions {
  readonly newId: () => string;
  readonly name: string;
  readonly diagramId?: string;
}

/** The ring without corners set twice on one place by a double press: an edge with no length is none. */
function withoutRepeats(ring: readonly TracedCorner[]): readonly TracedCorner[] {
  return ring.filter((corner, index) => {
    const next = ring[(index + 1) % ring.length] as TracedCorner;
    return ring.length === 1 || corner.through.length > 0 || !isSamePoint(corner.at, next.at);
  });
}

/** Fewer corners than this enclose nothing: two when an edge is curved, else three. */
function enough(ring: readonly TracedCorner[]): boolean {
  return ring.length >= 3 || (ring.length === 2 && ring.some(({ through }) => through.length > 0));
}

/**
 * A piece from the corners of a traced ring. Nothing is said yet of its edges, how it is cut or whether allowances are in
 * it. `undefined` when the corners enclose nothing.
 */
export function pieceFromTrace(traced: readonly TracedCorner[], options: NewPieceOptions): Piece | undefined {
  const ring = withoutRepeats(traced);
  if (!enough(ring)) return undefined;
  const { newId, name, diagramId } = options;
  const corners: Corner[] = ring.map(({ at }) => ({ id: newId(), at }));
  const edges = ring.map(({ through }) => plainEdge(newId(), shapeThrough(through)));
  const piece: Piece = {
    id: newId(),
    name,
    cut: { how: 'single', count: 1 },
    drawnAs: 'not-known',
    corners,
    edges,
    darts: [],
    notches: [],
    labels: [],
    remarks: '',
  };
  return diagramId === undefined ? piece : { ...piece, diagramId };
}

/** A rectangle, `across` by `down` mm, with its top left corner at `at`: a band or a strip by two numbers. */
export function rectanglePiece(
  at: TablePoint,
  size: { readonly across: number; readonly down: number },
  options: NewPieceOptions,
): Piece | undefined {
  if (!(size.across > 0 && size.down > 0)) return undefined;
  const { x, y } = at;
  const ring = [
    { x, y },
    { x: x + size.across, y },
    { x: x + size.across, y: y + size.down },
    { x, y: y + size.down },
  ];
  return pieceFromTrace(
    ring.map((corner) => ({ at: corner, through: [] })),
    options,
  );
}

/** A seam edge of which nothing more is known. */
export function plainEdge(id: string, shape: EdgeShape): Edge {
  return { id, name: '', role: 'seam', shape };
}

/** Straight for no points, else a free curve through them. */
export function shapeThrough(through: readonly TablePoint[]): EdgeShape {
  return through.length === 0 ? { kind: 'straight' } : { kind: 'curve', through, leaves: 'free', meets: 'free' };
}
