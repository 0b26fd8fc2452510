import type { Garment } from '../garment/garment';
import type { GirthName } from '../garment/measure';
import { setEase } from '../garment/ring-edits';
import { inches } from '../units/inch';

/** Garments an ease is suggested for, and how their cloth is cut. Knitted cloth is not covered. */
export const EASED_GARMENTS = ['skirt', 'period-skirt', 'underskirt', 'slip', 'bodice', 'dress'] as const;
export type EasedGarment = (typeof EASED_GARMENTS)[number];
export type EasedCloth = 'straight' | 'bias';

/** Room beyond the body, all the way round (mm). `usual` is what a level is given; the range is what the sources span. */
export interface EaseRange {
  readonly low: number;
  readonly usual: number;
  readonly high: number;
}

type EaseTable = Readonly<Partial<Record<GirthName, EaseRange>>>;

function range(low: number, usual: number, high: number): EaseRange {
  return { low: inches(low), usual: inches(usual), high: inches(high) };
}

/** Hip of every woven garment, 2 to 2 3/4 in: Central Washington University, costume text, chapter 16, "Ease in clothing". */
const HIP = range(2, 2, 2.75);
/** Common practice: half of what the hip has. */
const HIGH_HIP = range(0.75, 1, 1.375);

const straight: Readonly<Record<EasedGarment, EaseTable>> = {
  /** Waist 1/2 to 3/4 in: the same chapter. */
  skirt: { waist: range(0.5, 0.5, 0.75), highHip: HIGH_HIP, hip: HIP },
  /**
   * None at the waist; the hip is itself measured easily, and a narrow hem wants 2 in: Burton, School Sewing Based on Home
   * Problems; The Perfect Dressmaking System (1914); Butterick, The New Dressmaker (1921).
   */
  'period-skirt': { waist: range(0, 0, 0), highHip: range(0, 0.5, 1), hip: range(0, 1, 2) },
  /** Common practice: waist 0 where it is gathered, 1 to 2 in where not; bust and hip 2 to 3. */
  underskirt: { waist: range(0, 1, 2), highHip: range(1, 1.25, 1.5), hip: range(2, 2.5, 3) },
  slip: {
    bust: range(2, 2.5, 3),
    underbust: range(1, 1.5, 2),
    waist: range(1, 1.5, 2),
    highHip: range(1, 1.25, 1.5),
    hip: range(2, 2.5, 3),
  },
  /** Bust 1 1/2 to 2 in, dress waist 3/4 to 1 in: the same chapter. */
  bodice: { bust: range(1.5, 2, 2), chest: range(1, 1.5, 2), waist: range(0.75, 1, 1), hip: HIP },
  dress: { bust: range(1.5, 2, 2), chest: range(1, 1.5, 2), waist: range(0.75, 1, 1), highHip: HIGH_HIP, hip: HIP },
};

/** Bias gives of itself: 0 to 1 in at bust, waist and hip before it has hung (common practice). */
const BIAS = range(0, 0.5, 1);

/**
 * The ease usual at a girth of such a garment; `undefined` where the sources say nothing of it. What she writes herself at
 * a level goes before all of it.
 */
export function suggestedEase(garment: EasedGarment, cloth: EasedCloth, girth: GirthName): EaseRange | undefined {
  const found = straight[garment][girth];
  return found && cloth === 'bias' && garment !== 'period-skirt' ? BIAS : found;
}

/** The garment with the usual ease written at every level of a ring that there is one for; the others stay. */
export function withSuggestedEase(
  garment: Garment,
  ringId: string,
  { kind, cloth }: { readonly kind: EasedGarment; readonly cloth: EasedCloth },
): Garment {
  const levels = garment.rings.find(({ id }) => id === ringId)?.levels ?? [];
  return levels.reduce((eased, level) => {
    const ease = suggestedEase(kind, cloth, level.girth);
    return ease ? setEase(eased, ringId, level.id, ease.usual) : eased;
  }, garment);
}
