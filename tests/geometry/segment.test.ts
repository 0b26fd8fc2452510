import { describe, expect, it } from 'vitest';
import { cubic, line, segmentEnd, segmentStart } from '../../core/geometry/segment';

describe('line and cubic', () => {
  it('begin and end where they say', () => {
    const [a, b, c, d] = [
      { x: 1, y: 2 },
      { x: 3, y: 5 },
      { x: 8, y: 13 },
      { x: 21, y: 34 },
    ] as const;
    expect([segmentStart(line(a, b)), segmentEnd(line(a, b))]).toEqual([a, b]);
    expect([segmentStart(cubic(a, b, c, d)), segmentEnd(cubic(a, b, c, d))]).toEqual([a, d]);
  });
});
