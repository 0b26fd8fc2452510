import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type ArcRun,
  arcCentre,
  arcEnd,
  arcPath,
  arcPlace,
  reverseRun,
  squareEndedShape,
} from '../../core/blocks/arc-run';
import { pathEnd, pathLength } from '../../core/geometry/path';
import { distance } from '../../core/geometry/point';

const runs = fc.record({
  start: fc.record({
    x: fc.double({ min: -500, max: 500, noNaN: true }),
    y: fc.double({ min: -500, max: 500, noNaN: true }),
  }),
  angle: fc.double({ min: -3, max: 3, noNaN: true }),
  turn: fc.double({ min: -6, max: 6, noNaN: true }),
  length: fc.double({ min: 10, max: 3000, noNaN: true }),
});

function runOf({
  start,
  angle,
  turn,
  length,
}: {
  start: ArcRun['start'];
  angle: number;
  turn: number;
  length: number;
}) {
  return { start, direction: { dx: Math.cos(angle), dy: Math.sin(angle) }, turning: turn / length, length };
}

describe('an arc run', () => {
  it('is as long as it says and ends where its path does', () => {
    fc.assert(
      fc.property(runs, (given) => {
        const run = runOf(given);
        const path = arcPath(run, 1e-4);
        expect(Math.abs(pathLength(path) - run.length)).toBeLessThan(0.01);
        expect(distance(pathEnd(path), arcEnd(run))).toBeLessThan(1e-4);
      }),
      { seed: 7 },
    );
  });

  it('keeps the same distance from its centre all along', () => {
    const run = runOf({ start: { x: 12, y: -7 }, angle: 0.4, turn: 2.5, length: 800 });
    const centre = arcCentre(run) ?? { x: 0, y: 0 };
    for (const along of [0, 111, 420, 800]) {
      expect(distance(centre, arcPlace(run, along).point)).toBeCloseTo(800 / 2.5, 9);
    }
    expect(arcCentre(runOf({ start: { x: 1, y: 2 }, angle: 1, turn: 0, length: 30 }))).toBeUndefined();
  });

  it('run the other way comes back to its start', () => {
    fc.assert(
      fc.property(runs, (given) => {
        const run = runOf(given);
        expect(distance(arcEnd(reverseRun(run)), run.start)).toBeLessThan(1e-6);
      }),
      { seed: 7 },
    );
  });

  it('as an edge passes points on the circle, and is straight where it does not turn', () => {
    const run = runOf({ start: { x: 12, y: -7 }, angle: 0.4, turn: 1.1, length: 500 });
    const shape = squareEndedShape(run);
    const centre = arcCentre(run) ?? { x: 0, y: 0 };
    expect(shape.kind === 'curve' && shape.through.length).toBe(4);
    for (const point of shape.kind === 'curve' ? shape.through : []) {
      expect(distance(centre, point)).toBeCloseTo(500 / 1.1, 9);
    }
    expect(squareEndedShape({ ...run, turning: 0 })).toEqual({ kind: 'straight' });
  });
});
