import { expect, it } from 'vitest';
import { afterShrinking, beforeShrinking, grownForShrinking } from '../../core/cloth/shrinkage';
import { boxOfPoints } from '../../core/geometry/bounds';

// A test square of 20 in lost 1 in along the warp and 1/4 in across (a dressmaker's record, notenoughthursdays, 2008).
const ALONG = 1 / 20;
const ACROSS = 1 / 80;

it('beforeShrinking(length, share) is what must be bought so that so much is left', () => {
  expect(beforeShrinking(19, ALONG)).toBeCloseTo(20, 12);
  expect(afterShrinking(beforeShrinking(1234, ACROSS), ACROSS)).toBeCloseTo(1234, 9);
});

it('grownForShrinking(outline) comes out as drawn', () => {
  const outline = [
    { x: 0, y: 0 },
    { x: 190, y: 0 },
    { x: 190, y: 79 },
  ];
  const box = boxOfPoints(grownForShrinking(outline, { along: ALONG, across: ACROSS }));
  expect(box?.maxX).toBeCloseTo(200, 9);
  expect(box?.maxY).toBeCloseTo(80, 9);
});
