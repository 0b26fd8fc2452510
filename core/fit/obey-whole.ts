import type { Garment } from '../garment/garment';
import type { PrintedWhole } from '../garment/printed-whole';
import { putWhole } from '../garment/printed-whole-edits';
import { pieceOf, withPiece } from '../garment/with-piece';
import { obeyFigures } from '../shaping/obey-figures';
import type { NotPulled } from '../shaping/pull-to-figures';
import { printedSum } from './printed-sums';

/**
 * The garment with the edges of a printed whole brought to it: what the single figures lack or have over is shared among
 * them in proportion, and each rules from then on. Refused, naming the piece, where its figures do not close.
 */
export function obeyWhole(garment: Garment, whole: PrintedWhole): Garment | (NotPulled & { readonly pieceId: string }) {
  const { parts, sum } = printedSum(garment, whole);
  if (!(sum > 0)) return garment;
  const factor = whole.length / sum;
  let obeyed = putWhole(garment, { ...whole, rules: 'whole' });
  for (const pieceId of new Set(parts.map(({ ref }) => ref.pieceId))) {
    const piece = pieceOf(garment, pieceId);
    const figures = parts
      .filter(({ ref }) => ref.pieceId === pieceId)
      .map(({ ref, length }) => ({ edgeId: ref.edgeId, length: length * factor }));
    const pulled = piece && obeyFigures(piece, figures);
    if (!pulled) continue;
    if ('kind' in pulled) return { ...pulled, pieceId };
    obeyed = withPiece(obeyed, pieceId, () => pulled);
  }
  return obeyed;
}
