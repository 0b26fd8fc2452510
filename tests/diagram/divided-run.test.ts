import { describe, expect, it } from 'vitest';
import { diagramMap } from '../../core/diagram/diagram-map';
import { dividedRun } from '../../core/diagram/divided-run';
import { sampleDiagram, set } from './sample-diagram';

const run = { from: { x: 300, y: 500 }, to: { x: 1500, y: 800 } };

describe('dividedRun', () => {
  it('divides a flat picture evenly, without the ends', () => {
    const map = diagramMap(sampleDiagram(), set);
    expect(dividedRun(map, run, 3)).toEqual([
      { x: 700, y: 600 },
      { x: 1100, y: expect.closeTo(700, 9) },
    ]);
    expect(dividedRun(map, run, 1)).toEqual([]);
  });

  it('divides evenly on the page: where a side of the rectangle is halved, its diagonals meet over it', () => {
    const corners = [
      { x: 400, y: 300 },
      { x: 1600, y: 300 },
      { x: 1900, y: 2200 },
      { x: 100, y: 2200 },
    ] as const;
    const map = diagramMap(sampleDiagram({ corners }), set);
    const [middle] = dividedRun(map, { from: corners[0], to: corners[2] }, 2);
    // The diagonals of this trapezium cross at the share 1200 / (1200 + 1800) of the way down.
    expect(middle?.x).toBeCloseTo(1000, 6);
    expect(middle?.y).toBeCloseTo(300 + 0.4 * 1900, 6);
  });

  it('keeps to the picture while it is not squared up', () => {
    const flat = { x: 10, y: 10 };
    const map = diagramMap(sampleDiagram({ corners: [flat, flat, flat, flat] }), set);
    expect(map.kind).toBe('not-squared');
    expect(dividedRun(map, run, 2)).toEqual([{ x: 900, y: 650 }]);
  });
});
