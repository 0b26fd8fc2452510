import { cutPieces } from './cut-pieces';
import type { Cutting } from './done-to-it';
import type { FindingBase } from './finding';
import type { Garment } from './garment';
import { markOf } from './version-mark';

/** Cloth was cut, and the draft is another since. */
export type CuttingSinceFinding = FindingBase & {
  readonly kind: 'changed-since-cut';
  readonly date: string;
  readonly version: number;
  readonly pieceIds: readonly string[];
  /** Tells two cuttings apart. */
  readonly at: string;
};

/** The garment with it noted that something was cut from a version of it. */
export function addCutting(
  garment: Garment,
  { id, date, version, from, of }: Omit<Cutting, 'pieces'> & { readonly of: Garment },
): Garment {
  const pieces = cutPieces(of).map((piece) => ({ pieceId: piece.id, mark: markOf(piece) }));
  return { ...garment, cuttings: [...(garment.cuttings ?? []), { id, date, version, from, pieces }] };
}

/** The garment without a cutting that was noted by mistake. */
export function removeCutting(garment: Garment, id: string): Garment {
  const left = (garment.cuttings ?? []).filter((cutting) => cutting.id !== id);
  if (left.length === garment.cuttings?.length) return garment;
  const { cuttings: _, ...rest } = garment;
  return left.length > 0 ? { ...rest, cuttings: left } : rest;
}

/** The pieces of a cutting that are no longer as they were cut, or are gone. */
export function changedSinceCut(garment: Garment, cutting: Cutting): string[] {
  const now = new Map(cutPieces(garment).map((piece) => [piece.id, piece]));
  return cutting.pieces
    .filter(({ pieceId, mark }) => {
      const piece = now.get(pieceId);
      return !piece || markOf(piece) !== mark;
    })
    .map(({ pieceId }) => pieceId);
}

/** What of the cloth that is cut already no longer agrees with the draft. A mock-up is cut to be changed. */
export function cuttingFindings(garment: Garment): CuttingSinceFinding[] {
  return (garment.cuttings ?? []).flatMap((cutting): CuttingSinceFinding[] => {
    const pieceIds = cutting.from === 'cloth' ? changedSinceCut(garment, cutting) : [];
    if (pieceIds.length === 0) return [];
    const { date, version, id } = cutting;
    const place = { kind: 'garment' } as const;
    return [{ kind: 'changed-since-cut', weight: 'warn', place, date, version, pieceIds, at: id }];
  });
}
