import { describe, expect, it } from 'vitest';
import { LINE_KINDS } from '../../core/drawing/drawing';
import { lineStyles, MM_PER_PT } from '../../core/drawing/line-styles';

describe('lineStyles', () => {
  it('draws nothing thinner than half a point, and cut lines unbroken and at least 3/4 pt', () => {
    for (const kind of LINE_KINDS) expect(lineStyles[kind].width).toBeGreaterThanOrEqual(0.5 * MM_PER_PT);
    expect(lineStyles.cut.width).toBeGreaterThanOrEqual(0.75 * MM_PER_PT);
    expect(lineStyles.cut.dash).toEqual([]);
  });

  it('tells cut, stitch, fold, dart, level and centre lines apart without colour', () => {
    const looks = (['cut', 'stitch', 'fold', 'dart', 'level', 'centre'] as const).map((kind) => lineStyles[kind].dash);
    expect(new Set(looks.map((dash) => dash.join(' '))).size).toBe(6);
    // Dashed for stitching, dash-dot for folds (common practice).
    expect(lineStyles.stitch.dash).toHaveLength(2);
    expect(lineStyles.fold.dash).toHaveLength(4);
  });

  it('makes the cut line the heaviest of the lines along edges', () => {
    for (const kind of ['stitch', 'grain', 'dart', 'notch', 'level', 'centre'] as const) {
      expect(lineStyles[kind].width).toBeLessThan(lineStyles.cut.width);
    }
  });
});
