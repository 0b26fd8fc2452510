import { describe, expect, it } from 'vitest';
import { arcOverChord, type IncompleteDraft, incompleteDraft } from '../../core/blocks/incomplete-draft';
import { inches } from '../../core/units/inch';
import { expectInches } from './in-inches';

describe('arcOverChord', () => {
  it('has a radius of 13.771 and an arc of 12.975 over 12 1/2 with a rise of 1 1/2', () => {
    const made = arcOverChord(inches(12.5), inches(1.5));
    expectInches(made?.radius, 13.771);
    expectInches(made?.arc, 12.975);
    expect(arcOverChord(100, 60)).toBeUndefined();
    expect(arcOverChord(100, 0)).toBeUndefined();
  });
});

/** Rosenfeld, The Practical Designer (1911), lessons 73, 84, 106; Browne, Every Woman's Encyclopaedia (1910-11), 637-638. */
describe('incompleteDraft', () => {
  it.each([
    ['rosenfeld-circle-skirt', 1, 12.5, 12.975],
    ['rosenfeld-childs-skirt', 0, 12.75, 13.098],
    ['browne-walking-skirt', 0, 42.5, 42.573],
  ] as const)('%s asks, and says what its figures come to', (draft, index, asked, drawn) => {
    const question = incompleteDraft(draft)[index];
    if (question?.kind !== 'figure-missing') throw new Error('no such question');
    expectInches(question.asked, asked);
    expectInches(question.drawn, drawn);
  });

  it('has a question for every draft that cannot be drawn', () => {
    const all: readonly IncompleteDraft[] = [
      'rosenfeld-circle-skirt',
      'rosenfeld-childs-skirt',
      'rosenfeld-stout-skirt',
      'browne-walking-skirt',
      'reprinted-gores',
      'baldt-night-gown',
    ];
    expect(all.flatMap((draft) => incompleteDraft(draft).map((question) => question.kind))).toHaveLength(8);
    expect(incompleteDraft('reprinted-gores')).toEqual([{ kind: 'figure-missing', what: 'fractions' }]);
  });
});
