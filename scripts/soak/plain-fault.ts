import type { Garment } from '../../core/garment/garment';

/**
 * The first thing wrong with a garment that was let in, looked for without the schema: a number that is none or absurd,
 * a text beyond any use, a corner without its edge, a name for what is not there. `undefined` when it is sound.
 */
export function plainFault(garment: Garment): string | undefined {
  if ('x' in {}) return 'every object has gained a key';
  const loose = looseValue(garment, '');
  if (loose) return loose;
  if (garment.schema !== 2) return 'schema';
  const pieceIds = new Map(garment.pieces.map((piece) => [piece.id, new Set(piece.edges.map(({ id }) => id))]));
  if (pieceIds.size < garment.pieces.length) return 'two pieces of one id';
  for (const piece of garment.pieces) {
    const edges = pieceIds.get(piece.id);
    if (piece.corners.length !== piece.edges.length || piece.corners.length < 2) return `corners of ${piece.id}`;
    if (edges?.size !== piece.edges.length) return `edges of ${piece.id}`;
    for (const { edgeId } of [...piece.darts, ...piece.notches, ...(piece.fullness ?? [])]) {
      if (!edges.has(edgeId)) return `a mark on ${edgeId}`;
    }
  }
  for (const { members } of garment.rings) {
    for (const { pieceId } of members) if (!pieceIds.has(pieceId)) return `${pieceId} in a ring`;
  }
  for (const { one, other } of garment.seams ?? []) {
    for (const ref of [...one, ...other]) if (!pieceIds.get(ref.pieceId)?.has(ref.edgeId)) return 'a seam of nothing';
  }
  if (!garment.wearer.sets.some(({ id }) => id === garment.wearer.currentSetId)) return 'no measures';
  return undefined;
}

function looseValue(value: unknown, where: string): string | undefined {
  if (typeof value === 'number')
    return Number.isFinite(value) && Math.abs(value) < 1e14 ? undefined : `${where} ${value}`;
  if (typeof value === 'string') return value.length > 10_000 ? `${where} too long` : undefined;
  if (value === undefined) return `${where} is nothing`;
  if (typeof value !== 'object' || value === null) return undefined;
  if (!Array.isArray(value) && Object.getPrototypeOf(value) !== Object.prototype)
    return `${where} has a foreign nature`;
  for (const [key, inner] of Object.entries(value)) {
    const fault = looseValue(inner, `${where}.${key}`);
    if (fault) return fault;
  }
  return undefined;
}
