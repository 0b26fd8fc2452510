import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { View } from '../../app/state/table-store';
import {
  beginPinch,
  fittedView,
  panned,
  pinchedView,
  seenBox,
  steppedScale,
  toScreen,
  toWorld,
  widthView,
  zoomedTo,
} from '../../app/table/view';

const wide = { min: 0.05, max: 32 };
const view: View = { scale: 2.5, x: 31, y: -17 };

const anyView = fc.record({
  scale: fc.double({ min: 0.05, max: 32, noNaN: true }),
  x: fc.double({ min: -5000, max: 5000, noNaN: true }),
  y: fc.double({ min: -5000, max: 5000, noNaN: true }),
});
const anyScreen = fc.record({
  x: fc.double({ min: 0, max: 2000, noNaN: true }),
  y: fc.double({ min: 0, max: 1500, noNaN: true }),
});

describe('toScreen and toWorld', () => {
  it('place the zero of the world at the offset and undo one another', () => {
    expect(toScreen(view, { x: 0, y: 0 })).toEqual({ x: 31, y: -17 });
    expect(toScreen(view, { x: 10, y: 4 })).toEqual({ x: 56, y: -7 });
    expect(toWorld(view, { x: 56, y: -7 })).toEqual({ x: 10, y: 4 });
  });
});

describe('zoomedTo', () => {
  it('keeps the world under the anchor within a hundredth of a pixel, from 5 % to 3200 %', () => {
    fc.assert(
      fc.property(anyView, anyScreen, fc.double({ min: 0.05, max: 32, noNaN: true }), (from, anchor, scale) => {
        const under = toWorld(from, anchor);
        const after = toScreen(zoomedTo(from, scale, anchor, wide), under);
        expect(Math.hypot(after.x - anchor.x, after.y - anchor.y)).toBeLessThan(0.01);
      }),
      { seed: 7 },
    );
  });

  it('gives the very same view at a limit, so that nothing creeps', () => {
    const least = { ...view, scale: wide.min };
    expect(zoomedTo(least, 0.001, { x: 12, y: 900 }, wide)).toBe(least);
    const most = { ...view, scale: wide.max };
    expect(zoomedTo(most, 64, { x: 12, y: 900 }, wide)).toBe(most);
  });

  it('passes over a scale that is no number', () => {
    expect(zoomedTo(view, Number.NaN, { x: 3, y: 4 }, wide)).toBe(view);
  });
});

describe('steppedScale', () => {
  it('comes back to exactly where it began after 500 steps in and 500 out', () => {
    const start = steppedScale(1.37, 0);
    let scale = start;
    for (let i = 0; i < 500; i++) scale = steppedScale(scale, 1);
    expect(scale).toBeGreaterThan(start * 200);
    for (let i = 0; i < 500; i++) scale = steppedScale(scale, -1);
    expect(scale).toBe(start);
  });

  it('doubles in 64 steps', () => {
    expect(steppedScale(4, 64)).toBe(8);
    expect(steppedScale(4, -128)).toBe(1);
  });
});

describe('pinchedView', () => {
  it('keeps the world under the middle of the fingers within a pixel, also at the limits', () => {
    fc.assert(
      fc.property(anyView, anyScreen, anyScreen, anyScreen, anyScreen, (from, a, b, a2, b2) => {
        const pinch = beginPinch(from, a, b);
        const after = toScreen(pinchedView(pinch, a2, b2, wide), pinch.world);
        expect(Math.hypot(after.x - (a2.x + b2.x) / 2, after.y - (a2.y + b2.y) / 2)).toBeLessThan(0.01);
      }),
      { seed: 7 },
    );
  });

  it('lives through both fingers on one spot', () => {
    const pinch = beginPinch(view, { x: 40, y: 70 }, { x: 40, y: 70 });
    const after = pinchedView(pinch, { x: 41, y: 71 }, { x: 41, y: 71 }, wide);
    expect(after.scale).toBe(view.scale);
    expect(after).toEqual(panned(view, 1, 1));
  });

  it('is twice as near when the fingers are twice as far apart', () => {
    const pinch = beginPinch(view, { x: 100, y: 50 }, { x: 160, y: 130 });
    expect(pinchedView(pinch, { x: 70, y: 10 }, { x: 190, y: 170 }, wide).scale).toBeCloseTo(5, 12);
  });
});

describe('fittedView', () => {
  it('shows the whole box in the middle', () => {
    const fit = { minX: -50, minY: 20, maxX: 350, maxY: 820 };
    const fitted = fittedView(fit, { width: 900, height: 700 }, wide);
    const seen = seenBox(fitted, { width: 900, height: 700 });
    expect(seen.minX).toBeLessThan(fit.minX);
    expect(seen.maxY).toBeGreaterThan(fit.maxY);
    expect(toScreen(fitted, { x: 150, y: 420 })).toEqual({ x: 463, y: 363 });
    expect(fitted.scale * 800).toBeCloseTo(700 - 66, 9);
  });

  it('keeps inside the limits for a box of no size', () => {
    expect(fittedView({ minX: 4, minY: 5, maxX: 4, maxY: 5 }, { width: 300, height: 200 }, wide).scale).toBe(32);
  });
});

describe('widthView', () => {
  const size = { width: 566, height: 300 };

  it('fills the width beside the numbers, and begins at the top of what is too high', () => {
    const seen = widthView({ minX: 10, minY: 20, maxX: 260, maxY: 1020 }, size, wide);
    expect(seen.scale).toBeCloseTo(2, 12);
    expect(toScreen(seen, { x: 10, y: 20 })).toEqual({ x: 46, y: 46 });
  });

  it('puts what is low in the middle of the height', () => {
    const seen = widthView({ minX: 10, minY: 20, maxX: 260, maxY: 40 }, size, wide);
    expect(toScreen(seen, { x: 10, y: 30 }).y).toBeCloseTo((46 + 280) / 2, 9);
  });
});
