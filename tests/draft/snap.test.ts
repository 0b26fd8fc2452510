import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { onGrid, snapped } from '../../app/draft/snap';

const place = { x: 10.1, y: -7.3 };

describe('snapped', () => {
  it('meets a point within reach before anything else, the nearest of several', () => {
    const points = [
      { x: 11, y: -7 },
      { x: 10.2, y: -7.9 },
      { x: 40, y: 3 },
    ];
    expect(snapped(place, { step: 2, points, reach: 3 })).toEqual({ at: { x: 10.2, y: -7.9 }, to: 'point' });
  });

  it('goes to the crossing of the grid however far off it is, in millimetres and not in pixels', () => {
    const snap = { step: 25.4, points: [{ x: 90, y: 90 }] };
    expect(snapped(place, { ...snap, reach: 0.01 })).toEqual({ at: { x: 0, y: 0 }, to: 'grid' });
    expect(snapped({ x: 14, y: -13 }, { ...snap, reach: 5 })).toEqual({ at: { x: 25.4, y: -25.4 }, to: 'grid' });
  });

  it('keeps to the height or side of a neighbour when no grid holds it', () => {
    const inLineWith = [
      { x: 10, y: 500 },
      { x: -300, y: -7 },
    ];
    expect(snapped(place, { step: undefined, inLineWith, reach: 2 })).toEqual({ at: { x: 10, y: -7 }, to: 'line' });
    expect(snapped({ x: 60, y: -7.2 }, { step: undefined, inLineWith, reach: 2 })).toEqual({
      at: { x: 60, y: -7 },
      to: 'line',
    });
  });

  it('leaves a free place as it is', () => {
    expect(snapped(place, { step: undefined, reach: 5 })).toEqual({ at: place, to: 'nothing' });
  });
});

describe('onGrid', () => {
  it('is never further than half a step off, both ways, and stays put when done again', () => {
    const any = fc.double({ min: -5000, max: 5000, noNaN: true });
    fc.assert(
      fc.property(any, any, fc.constantFrom(1, 2, 3.175, 25.4), (x, y, step) => {
        const at = onGrid({ x, y }, step);
        expect(Math.abs(at.x - x)).toBeLessThanOrEqual(step / 2 + 1e-9);
        expect(Math.abs(at.y - y)).toBeLessThanOrEqual(step / 2 + 1e-9);
        expect(onGrid(at, step)).toEqual(at);
      }),
      { seed: 7 },
    );
  });

  it('has no negative zero', () => {
    expect(Object.is(onGrid({ x: -0.2, y: -0.1 }, 2).x, 0)).toBe(true);
  });
});
