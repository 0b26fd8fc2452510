import { describe, expect, it } from 'vitest';
import { layFaults } from '../../core/cloth/lay-check';
import { laidFor } from '../../core/cloth/lay-search';
import type { LayTask, Stance } from '../../core/cloth/lay-task';
import { joinedParts, joinLine, joinsForWidth } from '../../core/cloth/piecing';
import { seededRandom } from '../../core/cloth/seeded-random';
import { boxOfPoints } from '../../core/geometry/bounds';
import type { Point } from '../../core/geometry/point';
import { inches } from '../../core/units/inch';

// Waist 28, length 26 in: 2 πr = 28 gives r = 4.456, R = 30.456 in. Two half circles, their straight sides along the cloth.
const r = 28 / (2 * Math.PI);
const R = r + 26;

/** Half of it, the hem in so many chords. */
function halfRing(hemChords: number): Point[] {
  const arc = (radius: number, back: boolean, chords = hemChords) =>
    Array.from({ length: chords + 1 }, (_, i) => {
      const angle = Math.PI * (back ? 1 - i / chords : i / chords);
      return { x: inches(R - radius * Math.cos(angle)), y: inches(R - radius * Math.sin(angle)) };
    });
  return [...arc(R, false), ...arc(r, true, 6)];
}

function laid(stances: readonly Stance[]) {
  const outline = halfRing(24);
  const task: LayTask = {
    ground: { across: inches(R), kept: [] },
    toLay: [{ id: 'half', outline, count: 2, stances }],
  };
  const lay = laidFor(task, { steps: 4, random: seededRandom(3) });
  expect(lay && layFaults(task, lay)).toEqual([]);
  return (lay?.length ?? 0) / inches(1);
}

describe('a full circle in two halves on cloth just as wide as its radius (plane geometry)', () => {
  it('takes four radii, 121.8 in, where all must lie the same way', () => {
    expect(laid([{ turn: 0 }])).toBeCloseTo(121.8, 1);
  });

  it('takes (2 + √3) radii, 113.7 in, where one may lie end for end', () => {
    const found = laid([{ turn: 0 }, { turn: Math.PI }]);
    expect(Math.abs(found - (2 + Math.sqrt(3)) * R)).toBeLessThan(0.2);
  });

  it('on cloth of 27 in each half has a piece joined on at the hem, 33 1/4 in long at its seam: 2 √(R² - 25 1/2²)', () => {
    // Half an inch lost to each selvedge leaves 26; half an inch for the join leaves 25 1/2 in up to its seam.
    const outline = halfRing(120);
    const [join] = joinsForWidth({ id: 'half', outline }, inches(26), inches(0.5));
    expect(join).toBeDefined();
    const parts = joinedParts({ id: 'half', outline, count: 1, stances: [{ turn: 0 }] }, [
      { id: 'half', at: join?.at ?? 0, allowance: inches(0.5) },
    ]);
    const boxes = parts.map((part) => boxOfPoints(part.outline));
    for (const box of boxes) expect((box?.maxY ?? 0) - (box?.minY ?? 0)).toBeLessThan(inches(26) + 0.001);
    const seams = parts.map((part) => joinLine(part, [{ id: 'half', at: join?.at ?? 0, allowance: inches(0.5) }]));
    for (const seam of seams) {
      const long = ((seam?.[1].x ?? 0) - (seam?.[0].x ?? 0)) / inches(1);
      expect(Math.abs(long - 2 * Math.sqrt(R ** 2 - 25.5 ** 2))).toBeLessThan(0.05);
    }
  });
});
