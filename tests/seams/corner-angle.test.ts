import { describe, expect, it } from 'vitest';
import { cornerAngle, goesSomewhere, windingOf } from '../../core/seams/corner-angle';
import { at, pieceOf, runBackwards } from './pieces';

const degrees = (radians: number) => (radians * 180) / Math.PI;
/** A square of 100 with a corner pushed in to its middle: 90° out, 270° in, and two of 45°. */
const hollow = pieceOf([at(0, 0), at(100, 0), at(50, 50), at(100, 100), at(0, 100)], []);

describe('cornerAngle', () => {
  it('gives the angle inside, whichever way the piece is run', () => {
    expect([0, 1, 2, 3, 4].map((index) => Math.round(degrees(cornerAngle(hollow, index)) * 1e6) / 1e6)).toEqual([
      90, 45, 270, 45, 90,
    ]);
    const back = runBackwards(hollow);
    expect([windingOf(hollow), windingOf(back)]).toEqual([1, -1]);
    expect(degrees(cornerAngle(back, 3))).toBeCloseTo(270, 9);
    expect([0, 1, 2, 3, 4].reduce((sum, index) => sum + degrees(cornerAngle(back, index)), 0)).toBeCloseTo(540, 9);
  });

  it('passes over edges without length', () => {
    const doubled = pieceOf([at(0, 0), at(80, 0), at(80, 0), at(80, 60)], []);
    expect(degrees(cornerAngle(doubled, 1))).toBeCloseTo(90, 9);
    expect(degrees(cornerAngle(doubled, 2))).toBeCloseTo(90, 9);
    expect(cornerAngle(pieceOf([at(7, 9), at(7, 9), at(7, 9)], []), 1)).toBe(Math.PI);
  });
});

it('goesSomewhere tells a loop back to its start from no path at all', () => {
  const [a, b] = [at(3, 4), at(30, 9)];
  expect(goesSomewhere([{ kind: 'cubic', p0: a, p1: b, p2: at(2, 60), p3: a }])).toBe(true);
  expect(goesSomewhere([{ kind: 'line', p0: a, p1: a }])).toBe(false);
  expect(goesSomewhere([{ kind: 'line', p0: a, p1: b }])).toBe(true);
  expect(goesSomewhere([])).toBe(false);
});
