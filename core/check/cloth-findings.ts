import { layStanding } from '../cloth/lay-standing';
import type { FindingBase } from '../garment/finding';
import type { Garment } from '../garment/garment';

/** What is wrong with the lay of a cloth, or the cloth itself. */
export type ClothFinding = FindingBase &
  (
    | { readonly kind: 'cloth-short'; readonly short: number; readonly needed: number }
    | { readonly kind: 'lay-overlaps'; readonly count: number }
    /** The cloth, or these of what was laid, have changed since; ids of pieces and strips. */
    | { readonly kind: 'lay-stale'; readonly cloth: boolean; readonly ids: readonly string[] }
  );

/** Everything said against the lays that were made; a cloth on which nothing was laid yet is passed over. */
export function clothFindings(garment: Garment): ClothFinding[] {
  return (garment.cloths ?? []).flatMap((cloth): ClothFinding[] => {
    const place = { kind: 'cloth', clothId: cloth.id } as const;
    const standing = layStanding(garment, cloth);
    if (!standing) return [];
    const { changed, faults, atHand, needed } = standing;
    if (changed) return [{ kind: 'lay-stale', weight: 'warn', place, ...changed }];
    const found: ClothFinding[] = [];
    if (faults.length > 0) found.push({ kind: 'lay-overlaps', weight: 'stop', place, count: faults.length });
    if (atHand?.kind === 'short') found.push({ kind: 'cloth-short', weight: 'stop', place, short: atHand.by, needed });
    return found;
  });
}
