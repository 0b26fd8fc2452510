import { describe, expect, it } from 'vitest';
import { printedPieces, printedPlaces } from '../../core/blocks/printed-draft';
import { smallModelDrawers, smallModelUnderwaist } from '../../core/blocks/small-models';
import { outlineOf } from '../../core/garment/outline';
import { distance } from '../../core/geometry/point';
import { selfCrossings } from '../../core/geometry/self-crossing';
import { inches } from '../../core/units/inch';
import { plainNames } from './body-checks';
import { expectInches } from './in-inches';

/** Idabelle McGlauflin, Handicraft for Girls (1910), the drawers of page 57 and the underwaist of page 53. */
describe('smallModelDrawers', () => {
  it.each([
    [10, 4],
    [19, 8],
    [20, 8],
    [22.5, 9],
    [25, 10],
    [30, 12],
  ])('for a side of %f is drawn %i times as large', (side, times) => {
    const model = smallModelDrawers({ side: inches(side) });
    expect(model.kind === 'small-model' && model.times).toBe(times);
  });

  it('has the lengths of the model four times as large, and asks for the front', () => {
    const model = smallModelDrawers({ side: inches(9.75) });
    if (model.kind !== 'small-model') throw new Error(model.why);
    const at = printedPlaces(model.draft);
    expectInches(distance(at.foldTop, at.foldHem), 9.75);
    expectInches(distance(at.foldTop, at.backTop), 6.374);
    expectInches(distance(at.backTop, at.crotch), 5.64);
    expect(model.questions.map(({ kind }) => kind)).toEqual(['source-ends']);
    const pieces = printedPieces(model.draft, plainNames());
    expect(pieces.map((piece) => selfCrossings(outlineOf(piece).whole).length)).toEqual([0]);
  });

  it('says that a side of 20 comes out as 19 1/2', () => {
    const model = smallModelDrawers({ side: inches(20) });
    const questions = model.kind === 'small-model' ? model.questions : [];
    const stepped = questions.find((question) => question.kind === 'size-stepped');
    if (stepped?.kind !== 'size-stepped') throw new Error('no question');
    expectInches(stepped.asked, 20);
    expectInches(stepped.made, 19.5);
    expect(smallModelDrawers({ side: inches(1) })).toEqual({ kind: 'no-small-model', why: 'too-small' });
  });
});

describe('smallModelUnderwaist', () => {
  it.each([
    [5, 4],
    [6, 5],
    [7, 6],
    [8, 6],
  ])('for an underarm of %f is drawn %i times as large', (underarm, times) => {
    const model = smallModelUnderwaist({ underarm: inches(underarm) });
    expect(model.kind === 'small-model' && model.times).toBe(times);
  });

  it('has sides of 5.025 each and asks about shoulders of 2.693 and 2.574', () => {
    const model = smallModelUnderwaist({ underarm: inches(5) });
    if (model.kind !== 'small-model') throw new Error(model.why);
    const at = printedPlaces(model.draft);
    expectInches(distance(at.frontUnderarm, at.frontSide), 5.025);
    expectInches(distance(at.backUnderarm, at.backSide), 5.025);
    const [question, ...more] = model.questions;
    expect(more).toEqual([]);
    if (question?.kind !== 'edges-differ') throw new Error('no question');
    expectInches(question.lengths[0], 2.693);
    expectInches(question.lengths[1], 2.574);
    expect(printedPieces(model.draft, plainNames()).map(({ cut }) => cut.how)).toEqual(['fold', 'pair']);
    expect(smallModelUnderwaist({ underarm: 0 })).toEqual({ kind: 'no-small-model', why: 'too-small' });
  });
});
