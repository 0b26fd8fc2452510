import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  angleOf,
  between,
  cross,
  distance,
  dot,
  isSamePoint,
  move,
  quarterTurn,
  scaleVector,
  turnBetween,
  turnVector,
  unit,
  vectorBetween,
  vectorLength,
} from '../../core/geometry/point';

describe('points and vectors', () => {
  it('lead from one place to another and part of the way', () => {
    expect(vectorBetween({ x: 1, y: 7 }, { x: 4, y: 11 })).toEqual({ dx: 3, dy: 4 });
    expect(distance({ x: 1, y: 7 }, { x: 4, y: 11 })).toBe(5);
    expect(move({ x: 1, y: 7 }, { dx: 3, dy: 4 })).toEqual({ x: 4, y: 11 });
    expect(move({ x: 1, y: 7 }, { dx: 3, dy: 4 }, -2)).toEqual({ x: -5, y: -1 });
    expect(between({ x: 1, y: 7 }, { x: 5, y: 17 }, 0.25)).toEqual({ x: 2, y: 9.5 });
  });

  it('are one place within a ten-thousandth of a millimetre', () => {
    expect(isSamePoint({ x: 2, y: 3 }, { x: 2.00006, y: 3.00007 })).toBe(true);
    expect(isSamePoint({ x: 2, y: 3 }, { x: 2.00008, y: 3.00008 })).toBe(false);
  });

  it('have length and direction, and no direction without length', () => {
    expect(vectorLength({ dx: -6, dy: 8 })).toBe(10);
    expect(unit({ dx: -6, dy: 8 })).toEqual({ dx: -0.6, dy: 0.8 });
    expect(unit({ dx: 0, dy: 0 })).toBeUndefined();
    expect(scaleVector({ dx: -6, dy: 8 }, 1.5)).toEqual({ dx: -9, dy: 12 });
    expect(angleOf({ dx: 0, dy: 0 })).toBe(0);
    expect(angleOf({ dx: 0, dy: 5 })).toBe(Math.PI / 2);
  });

  it('turn clockwise to the eye for positive angles: right goes to down', () => {
    const down = turnVector({ dx: 3, dy: 0 }, Math.PI / 2);
    expect(down.dy).toBeCloseTo(3, 15);
    expect(quarterTurn({ dx: 3, dy: 1 })).toEqual({ dx: -1, dy: 3 });
    expect(cross({ dx: 3, dy: 0 }, { dx: 1, dy: 2 })).toBe(6);
    expect(dot({ dx: 3, dy: 4 }, { dx: 5, dy: -2 })).toBe(7);
  });

  it('turnBetween is what turnVector undoes', () => {
    const angle = fc.double({ min: -3.1, max: 3.1, noNaN: true });
    fc.assert(
      fc.property(angle, angle, (start, turn) => {
        const from = turnVector({ dx: 7, dy: 2 }, start);
        expect(turnBetween(from, turnVector(from, turn))).toBeCloseTo(turn, 12);
      }),
      { seed: 7 },
    );
    expect(turnBetween({ dx: 0, dy: 0 }, { dx: 1, dy: 2 })).toBe(0);
  });
});
