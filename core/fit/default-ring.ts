import { cutPieces } from '../garment/cut-pieces';
import type { Garment, Level, Ring } from '../garment/garment';
import type { MeasureSet } from '../garment/measure';
import { measureOf } from '../garment/measure-value';
import { inches } from '../units/inch';

/**
 * Eases for woven cloth, all the way round: waist 1/2 in and hip 2 in (Central Washington University, costume text,
 * chapter 16, "Ease in clothing": skirt waist 1/2 to 3/4, hip 2 to 2 3/4); high hip 1 in is common practice.
 */
const EASE = { waist: inches(0.5), highHip: inches(1), hip: inches(2) } as const;

/** The levels a skirt is checked at. */
export function skirtLevels(newId: () => string): Level[] {
  return [
    { id: newId(), girth: 'waist', depth: { kind: 'length', length: 0 }, ease: EASE.waist },
    { id: newId(), girth: 'highHip', depth: { kind: 'measure', measure: 'waistToHighHip' }, ease: EASE.highHip },
    { id: newId(), girth: 'hip', depth: { kind: 'measure', measure: 'waistToHip' }, ease: EASE.hip },
  ];
}

/** Eases of a bodice (the same chapter): bust 1 1/2 to 2 in, dress waist 3/4 to 1. */
const BODICE_EASE = { bust: inches(2), waist: inches(1) } as const;

/**
 * The levels a bodice is checked at: its waist, and the bust as far above it as front length and bust depth, both from the
 * shoulder, lie apart. Without these two the bust is left out.
 */
export function bodiceLevels(newId: () => string, set: MeasureSet): Level[] {
  const waist: Level = { id: newId(), girth: 'waist', depth: { kind: 'length', length: 0 }, ease: BODICE_EASE.waist };
  const [whole, down] = [measureOf(set, 'frontWaistLength'), measureOf(set, 'bustDepth')];
  if (whole === undefined || down === undefined || down >= whole) return [waist];
  const depth = { kind: 'length', length: down - whole } as const;
  return [{ id: newId(), girth: 'bust', depth, ease: BODICE_EASE.bust }, waist];
}

/** A ring proposed from the garment as it is: every piece with an edge named as the waist. */
export function proposedRing(garment: Garment, options: { readonly newId: () => string; readonly name: string }): Ring {
  const { newId, name } = options;
  const members = cutPieces(garment)
    .filter((piece) => piece.edges.some((edge) => edge.role === 'waist'))
    .map((piece) => ({ pieceId: piece.id }));
  return { id: newId(), name, members, levels: skirtLevels(newId) };
}
