import { describe, expect, it } from 'vitest';
import { lineCrossings, type Run } from '../../core/seams/line-crossings';
import { seededRandom } from '../geometry/shapes';
import { at } from './pieces';

const every = { counts: () => true, touch: 5e-4, most: 99 };
const run = (owner: number, ...points: readonly (readonly [number, number])[]): Run => ({
  owner,
  points: points.map(([x, y]) => at(x, y)),
});

describe('lineCrossings', () => {
  it('finds where two runs cross, and whose they are', () => {
    const [found, ...more] = lineCrossings([run(3, [0, 0], [60, 40]), run(8, [0, 30], [60, 0])], every);
    expect(more).toEqual([]);
    expect([found?.one, found?.other].toSorted()).toEqual([3, 8]);
    // 2x/3 = 30 - x/2.
    expect(found?.at.x).toBeCloseTo(180 / 7, 9);
    expect(found?.at.y).toBeCloseTo(120 / 7, 9);
  });

  it('passes over shared ends, ends that rest on a line, and pairs that do not count', () => {
    expect(lineCrossings([run(1, [0, 0], [50, 20], [90, 5])], every)).toEqual([]);
    expect(lineCrossings([run(1, [0, 0], [80, 0]), run(2, [30, 25], [30, 0.0004])], every)).toEqual([]);
    expect(lineCrossings([run(1, [0, 0], [80, 0]), run(2, [30, 25], [30, -0.0006])], every)).toHaveLength(1);
    const crossed = [run(1, [0, 0], [80, 10]), run(2, [30, 25], [35, -20])];
    expect(lineCrossings(crossed, { ...every, counts: (one, other) => one === other })).toEqual([]);
  });

  it('stops at as many as are enough', () => {
    const comb = run(1, [0, 0], [10, 50], [20, -5], [30, 50], [40, -5]);
    expect(lineCrossings([comb, run(2, [-5, 20], [60, 22])], every)).toHaveLength(4);
    expect(lineCrossings([comb, run(2, [-5, 20], [60, 22])], { ...every, most: 3 })).toHaveLength(3);
  });

  it('agrees with comparing every pair of 400 seeded lines', () => {
    const random = seededRandom(31);
    const lines = Array.from({ length: 400 }, (_, owner) => {
      const [x, y] = [random() * 500, random() * 400];
      return run(owner, [x, y], [x + random() * 90 - 40, y + random() * 80 - 45]);
    });
    const turn = (a: Run['points'][0], b: typeof a, c: typeof a) =>
      Math.sign((b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x));
    const plain = new Set<string>();
    lines.forEach(({ points: [a, b] }, i) => {
      lines.slice(0, i).forEach(({ points: [c, d] }, j) => {
        if (a && b && c && d && turn(a, b, c) !== turn(a, b, d) && turn(c, d, a) !== turn(c, d, b))
          plain.add(`${j} ${i}`);
      });
    });
    const found = lineCrossings(lines, { ...every, touch: 0, most: 1e6 });
    const swept = found.map(({ one, other }) => `${Math.min(one, other)} ${Math.max(one, other)}`);
    expect(plain.size).toBeGreaterThan(200);
    expect(new Set(swept)).toEqual(plain);
  });
});
