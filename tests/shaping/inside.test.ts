import { describe, expect, it } from 'vitest';
import { isInside } from '../../core/shaping/inside';

describe('isInside', () => {
  it('tells inside from outside, in a hollow too', () => {
    const hollow = [
      { x: 0, y: 0 },
      { x: 10, y: 0 },
      { x: 10, y: 9 },
      { x: 5, y: 3 },
      { x: 0, y: 9 },
    ];
    expect(isInside(hollow, { x: 2, y: 4 })).toBe(true);
    expect(isInside(hollow, { x: 5, y: 2 })).toBe(true);
    expect(isInside(hollow, { x: 5, y: 6 })).toBe(false);
    expect(isInside(hollow, { x: 12, y: 1 })).toBe(false);
  });
});
