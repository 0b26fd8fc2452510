import { expect, it } from 'vitest';
import { type CornerPlace, carriedOn, linesThrough, outwardOf } from '../../core/seams/corner-place';
import { at } from './pieces';

const place: CornerPlace = {
  at: at(40, 30),
  arriving: { dx: 1, dy: 0 },
  leaving: { dx: 0, dy: 1 },
  outward: 1,
  turn: Math.PI / 2,
};

it('outwardOf lies to the left of travel for an outline run clockwise, else to the right', () => {
  // y down: travelling right along the top edge, outside is up.
  expect(outwardOf(place, place.arriving)).toEqual({ dx: 0, dy: -1 });
  expect(outwardOf({ ...place, outward: -1 }, place.leaving)).toEqual({ dx: -1, dy: 0 });
});

it('linesThrough leaves out steps without length', () => {
  const [a, b, c] = [at(1, 2), at(5, 9), at(8, 3)];
  expect(linesThrough(a, a, b, b, c)).toEqual([
    { kind: 'line', p0: a, p1: b },
    { kind: 'line', p0: b, p1: c },
  ]);
  expect(linesThrough(a)).toEqual([]);
});

it('carriedOn lengthens a straight end and adds to a curved one', () => {
  const [a, b, c] = [at(0, 1), at(20, 1), at(35, 1)];
  expect(carriedOn(linesThrough(a, b), c)).toEqual(linesThrough(a, c));
  const curve = { kind: 'cubic', p0: a, p1: at(5, 9), p2: at(15, 1), p3: b } as const;
  expect(carriedOn([curve], c)).toEqual([curve, ...linesThrough(b, c)]);
  expect(carriedOn([], c)).toEqual([]);
});
