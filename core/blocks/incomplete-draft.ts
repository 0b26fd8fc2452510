/**
 * Printed drafts that cannot be drawn as they stand, since a figure, a direction or a fraction was not to be had. Each
 * comes as the questions to put, with what its figures do say; nothing is guessed. Lengths in mm.
 */
import { inches } from '../units/inch';
import type { DraftQuestion } from './draft-question';

export type IncompleteDraft =
  | 'rosenfeld-circle-skirt'
  | 'rosenfeld-childs-skirt'
  | 'rosenfeld-stout-skirt'
  | 'browne-walking-skirt'
  | 'reprinted-gores'
  | 'baldt-night-gown';

/** The arc over a chord with a rise in its middle, and its radius (mm); `undefined` where the rise is none or past a half circle. */
export function arcOverChord(
  chord: number,
  rise: number,
): { readonly radius: number; readonly arc: number } | undefined {
  if (!(rise > 0 && rise <= chord / 2)) return undefined;
  const radius = (chord * chord) / (8 * rise) + rise / 2;
  return { radius, arc: 2 * radius * Math.asin(Math.min(1, chord / (2 * radius))) };
}

/**
 * What has to be asked before the draft can be drawn. `figure-missing` carries a figure of the draft and what it comes to
 * under the likeliest reading, where there is one.
 */
export function incompleteDraft(draft: IncompleteDraft): readonly DraftQuestion[] {
  switch (draft) {
    // I. Rosenfeld, The Practical Designer (1911), lesson 73: the waist curve over a chord as long as the half waist is longer.
    case 'rosenfeld-circle-skirt': {
      const halfWaist = inches(12.5);
      return [
        missing('direction'),
        { ...missing('waist-curve'), asked: halfWaist, drawn: arcOverChord(halfWaist, inches(1.5))?.arc ?? halfWaist },
      ];
    }
    // The same, lesson 106: if C-D stands at a right angle the waist is a slanting line.
    case 'rosenfeld-childs-skirt':
      return [{ ...missing('direction'), asked: inches(12.75), drawn: inches(Math.hypot(12.75, 3)) }];
    // The same, lesson 84: the plate's front and back lengths against the text's.
    case 'rosenfeld-stout-skirt':
      return [
        { kind: 'length-clash', from: 'front', to: 'back', stated: inches(44), drawn: inches(39) },
        missing('direction'),
      ];
    // M. Prince Browne, Every Woman's Encyclopaedia (1910-11), pages 637-638: sides cut by a curve that is not printed.
    case 'browne-walking-skirt':
      return [{ ...missing('waist-curve'), asked: inches(42.5), drawn: inches(Math.hypot(42.5, 2.5)) }];
    // Ladies Treasury reprints of drafts of 1912-14: the small fractions did not come through in the copy.
    case 'reprinted-gores':
      return [missing('fractions')];
    // Laura I. Baldt, Clothing for Women (1916): ranges where a figure is needed.
    case 'baldt-night-gown':
      return [missing('one-figure-of-a-range')];
  }
}

function missing(what: Extract<DraftQuestion, { kind: 'figure-missing' }>['what']) {
  return { kind: 'figure-missing', what } as const;
}
