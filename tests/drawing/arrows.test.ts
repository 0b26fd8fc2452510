import { describe, expect, it } from 'vitest';
import { arrow, head, stroke } from '../../core/drawing/arrows';
import { pathLength } from '../../core/geometry/path';
import { distance } from '../../core/geometry/point';
import { at } from '../seams/pieces';

describe('arrow', () => {
  it('has its line and a head of two barbs 25 degrees off it at the end', () => {
    const [shaft, barbs, ...more] = arrow('grain', at(10, 20), at(10, 120), 'one');
    expect(more).toEqual([]);
    expect(shaft).toEqual(stroke('grain', at(10, 20), at(10, 120)));
    const angle = (25 * Math.PI) / 180;
    const [left, right] = barbs?.path ?? [];
    if (left?.kind !== 'line' || right?.kind !== 'line') throw new Error('no barbs');
    expect(left.p1).toEqual(at(10, 120));
    for (const tip of [left.p0, right.p1]) {
      expect(tip.y).toBeCloseTo(120 - 6 * Math.cos(angle), 9);
      expect(Math.abs(tip.x - 10)).toBeCloseTo(6 * Math.sin(angle), 9);
    }
    expect(distance(left.p0, right.p1)).toBeCloseTo(12 * Math.sin(angle), 9);
  });

  it('has heads at both ends when asked, and shorter barbs when it is short', () => {
    expect(arrow('grain', at(3, 4), at(3, 94), 'both')).toHaveLength(3);
    const [barbs] = head('upright', at(0, 0), at(9, 12));
    expect(pathLength(barbs?.path ?? [])).toBeCloseTo(10, 9);
  });

  it('is nothing without length', () => {
    expect(arrow('grain', at(5, 6), at(5, 6), 'both')).toEqual([]);
    expect(head('grain', at(5, 6), at(5, 6))).toEqual([]);
  });
});
