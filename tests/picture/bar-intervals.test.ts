import { describe, expect, it } from 'vitest';
import { distance, type Point } from '../../core/geometry/point';
import { barIntervals } from '../../core/picture/bar-intervals';
import { type DrawnLine, drawnPage, letteringAt } from './drawn-page';
import { printedBars } from './printed-bars';

type Place = (along: number, beside: number) => Point;

/** A bar from one place in a direction: pixels along it and beside it to the page. */
function barAt(from: Point, angle: number): Place {
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  return (along, beside) => ({ x: from.x + cos * along - sin * beside, y: from.y + sin * along + cos * beside });
}

const page = (lines: readonly DrawnLine[]) => drawnPage({ width: 640, height: 560, lines, noise: 0.03 });

/** A line with strokes at places along it, from `low` to `high` beside it, and figures over them. */
function ticked(at: Place, places: readonly number[], high: (index: number) => number, low = 0): DrawnLine[] {
  const end = places.at(-1) ?? 0;
  return [
    { run: [at(0, 0), at(end, 0)], width: 2 },
    ...places.map((along, i) => ({ run: [at(along, low), at(along, -high(i))], width: 1.8 })),
  ];
}

const even = (intervals: number, length: number) =>
  Array.from({ length: intervals + 1 }, (_, i) => (i * length) / intervals);

/** Parts filled in turn, each `thick` across, within a fine line all round. */
function filled(at: Place, places: readonly number[], thick: number, rows: 1 | 2): DrawnLine[] {
  const lines: DrawnLine[] = [];
  const end = places.at(-1) ?? 0;
  for (let row = 0; row < rows; row++) {
    const middle = row * thick;
    for (const beside of [middle - thick / 2, middle + thick / 2]) {
      lines.push({ run: [at(0, beside), at(end, beside)], width: 1.5 });
    }
    places.slice(1).forEach((along, i) => {
      if ((i + row) % 2 === 1) return;
      // A wide run has round ends, which a part of a bar has not: rows of fine ones fill it.
      for (let beside = middle - thick / 2; beside <= middle + thick / 2; beside += 1) {
        lines.push({ run: [at((places[i] as number) + 0.5, beside), at(along - 0.5, beside)], width: 1.5 });
      }
    });
  }
  for (const along of [0, end])
    lines.push({ run: [at(along, -thick / 2), at(along, (rows - 0.5) * thick)], width: 1.5 });
  return lines;
}

const angles = [0, 0.03, -0.4, 1.1, Math.PI / 2, 2.9];
const from: Point = { x: 300, y: 270 };

describe('barIntervals', () => {
  it.each(printedBars)('counts $intervals intervals on the bar of $plate, not its strokes', (bar) => {
    const [best] = barIntervals(bar.grey, bar.from, bar.to);
    expect(best?.intervals).toBe(bar.intervals);
    expect(best?.tail).toBe(false);
    expect(distance(best?.from ?? bar.to, bar.from)).toBeLessThan(1);
    expect(distance(best?.to ?? bar.from, bar.to)).toBeLessThan(1);
  });

  it.each(printedBars.filter(({ tailTo }) => tailTo))('leaves the plain tail of $plate out', (bar) => {
    const [best] = barIntervals(bar.grey, bar.from, bar.tailTo ?? bar.to);
    expect(best).toMatchObject({ intervals: bar.intervals, tail: true });
    expect(distance(best?.to ?? bar.from, bar.to)).toBeLessThan(1);
  });

  it.each(angles)('counts a ticked bar with figures over it, at %d radians', (angle) => {
    const at = barAt(from, angle);
    const figures = even(7, 217).flatMap((along) => letteringAt(at(along - 3, -16), 9, 1));
    const grey = page([...ticked(at, even(7, 217), () => 9), ...figures]);
    const [best, ...others] = barIntervals(grey, at(2, 1), at(214, -2));
    expect(best?.intervals).toBe(7);
    expect(others).toEqual([]);
    expect(distance(best?.from ?? from, at(0, 0))).toBeLessThan(2.5);
    expect(Math.abs(distance(best?.from ?? from, best?.to ?? from) - 217)).toBeLessThan(1);
  });

  it.each(angles)('counts a bar with parts filled in turn, at %d radians', (angle) => {
    const at = barAt(from, angle);
    for (const rows of [1, 2] as const) {
      for (const intervals of [4, 5, 12]) {
        const grey = page(filled(at, even(intervals, 231), 9, rows));
        const [best] = barIntervals(grey, at(-2, 0), at(232, 1));
        expect(best?.intervals).toBe(intervals);
      }
    }
  });

  it('tells the long strokes of a rule from all of its strokes', () => {
    const at = barAt({ x: 60, y: 200 }, 0.05);
    const grey = page(ticked(at, even(24, 504), (i) => (i % 4 === 0 ? 26 : 9)));
    expect(
      barIntervals(grey, at(0, 0), at(504, 0))
        .map(({ intervals }) => intervals)
        .toSorted((a, b) => a - b),
    ).toEqual([6, 24]);
  });

  it('counts a bar in a photo taken aslant, whose intervals grow by a third from one end to the other', () => {
    const at = barAt({ x: 60, y: 300 }, -0.2);
    const aslant = 0.15;
    const places = even(9, 1).map((u) => (430 * u * (1 + aslant)) / (1 + aslant * u));
    const grey = page(ticked(at, places, () => 12, 12));
    expect(barIntervals(grey, at(0, 0), at(430, 0))[0]?.intervals).toBe(9);
  });

  it('says nothing of a plain line, of lettering and of bare paper', () => {
    const at = barAt({ x: 60, y: 300 }, 0.1);
    const plain = page([{ run: [at(0, 0), at(400, 0)], width: 2.5 }]);
    expect(barIntervals(plain, at(0, 0), at(400, 0))).toEqual([]);
    expect(barIntervals(page([]), at(0, 0), at(400, 0))).toEqual([]);
    expect(barIntervals(plain, at(0, 0), at(0, 0))).toEqual([]);
    const words = [3, 41, 66, 130, 151, 212, 260].flatMap((along, i) => letteringAt(at(along, 4), 10, 1 + (i % 3)));
    expect(barIntervals(page(words), at(0, 0), at(300, 0))).toEqual([]);
  });
});
