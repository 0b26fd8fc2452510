/**
 * How a waist, a hip and a hem are shared out among the gores of half a skirt, by the proportions of printed drafts.
 * Lengths in mm. The front is half a gore on the fold, and so is the back where the rule has a half gore there.
 */
import { inches } from '../units/inch';
import type { DraftQuestion } from './draft-question';

/** One gore's part of each girth. A half gore gives half of its widths. */
export interface GoreShare {
  readonly place: 'front' | 'side' | 'back';
  readonly drawn: 'half' | 'whole';
  readonly waist: number;
  readonly hip: number;
  readonly hem: number;
}

export interface GoreGirths {
  readonly waist: number;
  readonly hip: number;
  readonly hem: number;
}

export interface GoreShares {
  readonly kind: 'gore-shares';
  readonly gores: readonly GoreShare[];
  readonly questions: readonly DraftQuestion[];
}

/** The printed rules. */
export type GoreRule = 'five-equal' | 'five-proportional' | 'nine' | 'four-panels' | 'six-panels';

export interface NoGoreShares {
  readonly kind: 'no-gore-shares';
  /** `share-left-over`: the fixed parts of the rule leave a gore no width at hip or waist, or too little for its seams. */
  readonly why: 'not-positive' | 'share-left-over';
}

/** How the hem is taken when the printed figures do not add up to what was asked. */
export type HemAnswer = 'as-asked' | 'as-printed';

/** A girth's sum is asked about when it is off by more than a sixteenth of an inch. */
const SUM_MATCH = inches(1 / 16);

const SHARES: Readonly<Record<GoreRule, (girths: GoreGirths) => readonly GoreShare[]>> = {
  'five-equal': fiveEqual,
  'five-proportional': fiveProportional,
  nine,
  'four-panels': (girths) => panels(girths, 1),
  'six-panels': (girths) => panels(girths, 2),
};

/**
 * The gores of half a skirt from front to back. The hem of `five-equal` is printed to half an inch below what the rule
 * gives, so that its sum falls short of what was asked: taken `as-printed` it stays so and is asked about.
 */
export function goreShares(rule: GoreRule, girths: GoreGirths, hem: HemAnswer = 'as-asked'): GoreShares | NoGoreShares {
  const { waist, hip } = girths;
  if (!(waist > 0 && hip > 0 && girths.hem > 0)) return { kind: 'no-gore-shares', why: 'not-positive' };
  const exact = SHARES[rule](girths);
  const gores = rule === 'five-equal' && hem === 'as-printed' ? exact.map(hemToHalfInch) : exact;
  if (gores.some((gore) => !(gore.waist > 0 && gore.hip > 0 && gore.hem > 0))) {
    return { kind: 'no-gore-shares', why: 'share-left-over' };
  }
  const sum = 2 * gores.reduce((all, gore) => all + gore.hem, 0);
  const clash = Math.abs(sum - girths.hem) > SUM_MATCH;
  const question = {
    kind: 'sum-clash',
    of: 'hem',
    asked: girths.hem,
    sum,
    answers: ['as-asked', 'as-printed'],
  } as const;
  return { kind: 'gore-shares', gores, questions: clash ? [question] : [] };
}

/**
 * Five gores, a fifth of waist and hip each, the front's hem twice its waist and the rest of the hem shared: Ella A.
 * Bennett, The Perfect Dressmaking System (1914).
 */
function fiveEqual({ waist, hip, hem }: GoreGirths): readonly GoreShare[] {
  const frontHem = (2 * waist) / 5;
  const side = { drawn: 'whole', waist: waist / 5, hip: hip / 5, hem: (hem - frontHem) / 4 } as const;
  return [
    { place: 'front', drawn: 'half', waist: waist / 10, hip: hip / 10, hem: frontHem / 2 },
    { place: 'side', ...side },
    { place: 'back', ...side },
  ];
}

function hemToHalfInch(gore: GoreShare): GoreShare {
  const half = inches(1 / 2);
  return { ...gore, hem: Math.floor(gore.hem / half + 1e-9) * half };
}

/**
 * Five gores: front an eighth of the waist on the half, side a sixth, back the rest; at the hip the front 1 in more and
 * the side half as much again, the back the balance. Carrie Crane Ingalls, Text-Book on Domestic Art (1911), five-gored
 * underskirt; her hem comes from producing the sides, so here it is shared as the hip is.
 */
function fiveProportional({ waist, hip, hem }: GoreGirths): readonly GoreShare[] {
  const front = waist / 8;
  const side = waist / 6;
  return sharedHem(hem, [
    { place: 'front', drawn: 'half', waist: front, hip: front + inches(1) },
    { place: 'side', drawn: 'whole', waist: side, hip: side * 1.5 },
    { place: 'back', drawn: 'whole', waist: waist / 2 - front - side, hip: hip / 2 - front - inches(1) - side * 1.5 },
  ]);
}

/**
 * Nine gores: front and back share a third of the half waist, the front 1 in narrower, three side gores the rest; at the
 * hip the front 3/4 in more, the sides half as much again, the back the balance. Ingalls 1911, nine-gored skirt.
 */
function nine({ waist, hip, hem }: GoreGirths): readonly GoreShare[] {
  const third = waist / 6;
  const front = (third - inches(1)) / 2;
  const side = waist / 9;
  const frontHip = front + inches(3 / 4);
  const sideGore = { place: 'side', drawn: 'whole', waist: side, hip: side * 1.5 } as const;
  return sharedHem(hem, [
    { place: 'front', drawn: 'half', waist: front, hip: frontHip },
    sideGore,
    sideGore,
    sideGore,
    { place: 'back', drawn: 'half', waist: third - front, hip: hip / 2 - frontHip - 4.5 * side },
  ]);
}

function sharedHem(hem: number, gores: readonly Omit<GoreShare, 'hem'>[]): readonly GoreShare[] {
  const hip = gores.reduce((sum, gore) => sum + gore.hip, 0);
  return gores.map((gore) => ({ ...gore, hem: ((hem / 2) * gore.hip) / hip }));
}

/**
 * A panel before and one behind, half of each a twelfth of the hip and at the hem twice that, and the rest shared among
 * the side gores of each half: Laura I. Baldt, Clothing for Women (1916). The waist is shared as the hip is.
 */
function panels({ waist, hip, hem }: GoreGirths, sides: number): readonly GoreShare[] {
  const panelHip = hip / 12;
  const share = (part: number) => ({ waist: (waist / 2) * part, hip: (hip / 2) * part });
  const part = panelHip / (hip / 2);
  const side = (1 - 2 * part) / sides;
  const sideHem = (hem / 2 - 4 * panelHip) / sides;
  return [
    { place: 'front', drawn: 'half', ...share(part), hem: 2 * panelHip },
    ...Array.from({ length: sides }, () => ({ place: 'side', drawn: 'whole', ...share(side), hem: sideHem }) as const),
    { place: 'back', drawn: 'half', ...share(part), hem: 2 * panelHip },
  ];
}
