import { describe, expect, it } from 'vitest';
import { cubicCrossings } from '../../core/geometry/cubic-crossings';
import { segmentAt } from '../../core/geometry/cubic-curve';
import { distance } from '../../core/geometry/point';
import { cubicOf, seededRandom } from './shapes';

const ARCH = cubicOf([0, 0], [0, 100], [100, 100], [100, 0]);

describe('cubicCrossings', () => {
  it('gives parameters at which both curves are at one place, to rounding', () => {
    const random = seededRandom(2);
    const place = () => [random() * 200, random() * 200] as const;
    let crossings = 0;
    for (let i = 0; i < 400; i++) {
      const [a, b] = [cubicOf(place(), place(), place(), place()), cubicOf(place(), place(), place(), place())];
      for (const { ta, tb, touching } of cubicCrossings(a, b)) {
        crossings++;
        expect(distance(segmentAt(a, ta), segmentAt(b, tb))).toBeLessThan(touching ? 1.1e-6 : 1e-9);
      }
    }
    expect(crossings).toBeGreaterThan(300);
  });

  it('tells touching tops, and two crossings where the tops overlap by a thousandth', () => {
    const hanging = (y: number) => cubicOf([0, y + 75], [0, y - 25], [100, y - 25], [100, y + 75]);
    expect(cubicCrossings(ARCH, hanging(75))).toMatchObject([{ touching: true }]);
    const overlapping = cubicCrossings(ARCH, hanging(74.999));
    expect(overlapping.map(({ touching }) => touching)).toEqual([false, false]);
    // Both tops have curvature 2/75: a gap of g spans 2·sqrt(g/k) across.
    const [p, q] = overlapping.map(({ ta }) => segmentAt(ARCH, ta).x).sort((a, b) => a - b) as [number, number];
    expect(Math.abs(q - p - 2 * Math.sqrt(0.001 / (2 / 75)))).toBeLessThan(1e-3);
    expect(cubicCrossings(ARCH, hanging(75.001))).toEqual([]);
  });

  it('finds a crossing with no angle: curves that touch and go over to the other side', () => {
    // y = x³ and y = 0 as a cubic, which meet three-fold at the middle.
    const wave = cubicOf([-30, -27], [-10, 27], [10, -27], [30, 27]);
    const flat = cubicOf([-33, 0], [-12, 0], [9, 0], [31, 0]);
    const found = cubicCrossings(wave, flat);
    expect(found.length).toBe(1);
    expect(Math.abs(segmentAt(wave, found[0]?.ta ?? 0).x)).toBeLessThan(0.1);
  });
});
