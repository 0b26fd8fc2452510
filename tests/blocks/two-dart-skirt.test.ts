import { describe, expect, it } from 'vitest';
import { type TwoDartSkirt, twoDartSkirt, twoDartSkirtPieces } from '../../core/blocks/two-dart-skirt';
import { outlineOf } from '../../core/garment/outline';
import { pathLength } from '../../core/geometry/path';
import { distance } from '../../core/geometry/point';
import { inches } from '../../core/units/inch';
import { numberedIds } from './in-inches';

/** WikiEducator, Handout for drafting skirt block; results worked out by hand for these sizes (mm). */
const sizes = { waist: 720, hip: 960, waistToHip: 200, length: 660 };

/** Straight constructions come out to a hundredth of an inch, anything with a curve led by eye to a sixteenth. */
const EXACT = inches(0.01);
const BY_EYE = inches(1 / 16);

function drawn(): TwoDartSkirt {
  const made = twoDartSkirt(sizes);
  if (made.kind !== 'two-dart-skirt') throw new Error(made.why);
  return made;
}

const near = (value: number, wanted: number, within: number) => {
  expect(Math.abs(value - wanted), `${value} for ${wanted}`).toBeLessThan(within);
};

describe('twoDartSkirt', () => {
  it('has the widths of the WikiEducator handout', () => {
    const { back, front } = drawn();
    near(distance(back.centreWaist, front.centreWaist), 505, EXACT);
    near(back.sideHip.x - back.centreWaist.x, 260, EXACT);
    near(front.centreWaist.x - front.sideHip.x, 245, EXACT);
    near(back.sideWaist.x - back.centreWaist.x, 212, EXACT);
    near(front.centreWaist.x - front.sideWaist.x, 200, EXACT);
    near(back.sideHip.x - back.sideWaist.x, 48, EXACT);
    near(front.sideWaist.x - front.sideHip.x, 45, EXACT);
    near(2 * distance(back.centreWaist, front.centreWaist), 1010, EXACT);
  });

  it('has side chords of 215.42 and 214.77 mm, which differ by less than a sixteenth', () => {
    const { back, front } = drawn();
    near(distance(back.sideWaist, back.sideHip), 215.42, EXACT);
    near(distance(front.sideWaist, front.sideHip), 214.77, EXACT);
    near(pathLength(back.hipCurve), pathLength(front.hipCurve), BY_EYE);
  });

  it('comes to W + 24 mm round the waist once its darts are closed', () => {
    const { back, front } = drawn();
    const backNet = pathLength(back.waist) - back.dart.width;
    const frontNet = pathLength(front.waist) - front.dart.width;
    near(backNet, 192, BY_EYE);
    near(frontNet, 180, BY_EYE);
    near(2 * (backNet + frontNet), 744, 4 * BY_EYE);
  });

  it('sets the darts 116 and 110 mm from the centres, 120 and 100 long', () => {
    const { back, front } = drawn();
    expect(back.dart).toEqual({ along: 116, width: 20, point: { x: 116, y: 120 } });
    expect(front.dart).toEqual({ along: 110, width: 20, point: { x: 395, y: 100 } });
  });

  it('refuses a figure it is not made for', () => {
    expect(twoDartSkirt({ ...sizes, waist: 990 })).toEqual({ kind: 'no-two-dart-skirt', why: 'waist-over-hip' });
    expect(twoDartSkirt({ ...sizes, length: 190 })).toEqual({ kind: 'no-two-dart-skirt', why: 'hip-below-hem' });
    expect(twoDartSkirt({ ...sizes, hip: 0 })).toEqual({ kind: 'no-two-dart-skirt', why: 'not-positive' });
  });
});

describe('twoDartSkirtPieces', () => {
  it('gives a back pair and a front on the fold with the waist, the darts and the hip curve of the draft', () => {
    const pieces = twoDartSkirtPieces(sizes, { newId: numberedIds(), names: { back: 'Back', front: 'Front' } });
    if (!Array.isArray(pieces)) throw new Error(pieces.why);
    const { back, front } = drawn();
    const [backPiece, frontPiece] = pieces;
    if (!backPiece || !frontPiece) throw new Error('two pieces');
    expect(backPiece.cut).toEqual({ how: 'pair', count: 2 });
    expect(frontPiece.cut).toEqual({ how: 'fold', count: 1 });
    const backEdges = outlineOf(backPiece).edges.map((path) => pathLength(path));
    const frontEdges = outlineOf(frontPiece).edges.map((path) => pathLength(path));
    expect(backEdges[0]).toBeCloseTo(pathLength(back.waist), 6);
    expect(backEdges[1]).toBeCloseTo(pathLength(back.hipCurve), 6);
    expect(frontEdges[0]).toBeCloseTo(pathLength(front.waist), 6);
    expect(frontEdges[4]).toBeCloseTo(pathLength(front.hipCurve), 6);
    expect(backPiece.darts[0]?.along).toBe(116);
    expect(frontPiece.darts[0]?.along).toBeCloseTo((frontEdges[0] ?? 0) - 110, 6);
  });
});
