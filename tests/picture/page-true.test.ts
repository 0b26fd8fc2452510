import { describe, expect, it } from 'vitest';
import type { Point } from '../../core/geometry/point';
import { offSquare, pageTruth, straightness } from '../../core/picture/page-true';

/** Places along a line from `from`, leaning by `angle`, bowed by `sagitta` in its middle. */
function line(from: Point, angle: number, length: number, sagitta = 0): Point[] {
  return Array.from({ length: 41 }, (_, k) => {
    const [t, bow] = [(k / 40) * length, sagitta * (1 - (k / 20 - 1) ** 2)];
    return {
      x: from.x + t * Math.cos(angle) - bow * Math.sin(angle),
      y: from.y + t * Math.sin(angle) + bow * Math.cos(angle),
    };
  });
}

describe('how true a page lies', () => {
  it('is the half width of the strip along a line, however it is turned', () => {
    for (const angle of [0, 0.7, 1.9, Math.PI / 2]) {
      const found = straightness(line({ x: 30, y: -8 }, angle, 660, 3));
      expect(found?.off).toBeCloseTo(1.5, 6);
      expect(found?.over).toBeCloseTo(660, 1);
    }
    expect(
      straightness([
        { x: 0, y: 0 },
        { x: 7, y: 7 },
      ]),
    ).toBeUndefined();
    expect(
      straightness([
        { x: 3, y: 3 },
        { x: 3, y: 3 },
        { x: 3, y: 3 },
      ]),
    ).toBeUndefined();
  });

  it('tells how far two lines stand off a right angle', () => {
    const level = line({ x: 0, y: 0 }, 0.2, 300);
    expect(offSquare(level, line({ x: 9, y: 4 }, 0.2 + Math.PI / 2 + 0.01, 200))?.turn).toBeCloseTo(0.01, 9);
    expect(offSquare(line({ x: 9, y: 4 }, 0.2 - Math.PI / 2 + 0.03, 200), level)?.turn).toBeCloseTo(0.03, 9);
    expect(offSquare(level, [{ x: 1, y: 1 }])).toBeUndefined();
  });

  it('brings the worst to the length asked for: 1/8 in over 26 in', () => {
    // A corner off by asin(1/8 / 26): over 330.2 mm (13 in) it is 1/16 in.
    const turn = Math.asin(0.125 / 26);
    const lines = [line({ x: 0, y: 0 }, 0, 330.2), line({ x: 0, y: 0 }, Math.PI / 2 + turn, 254, 0.2)];
    const found = pageTruth(lines, [[0, 1]], 660.4);
    expect(found?.worst.off).toBeCloseTo(3.175, 6);
    expect(found?.checks).toHaveLength(3);
    expect(found?.checks[2]).toMatchObject({ kind: 'square', lines: [0, 1] });
    expect(found?.checks[2]?.off).toBeCloseTo(1.5875, 6);
    expect(found?.checks[1]?.off).toBeCloseTo(0.1, 6);
    expect(pageTruth([], [], 660.4)).toBeUndefined();
  });
});
