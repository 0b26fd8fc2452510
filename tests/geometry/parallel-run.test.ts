import { describe, expect, it } from 'vitest';
import { type Course, followsOn, pivotBetween, runOfParts } from '../../core/geometry/parallel-run';
import { allParts, type Kept, keptParts, sourcesOf } from '../../core/geometry/parallel-trim';
import { line, type Path } from '../../core/geometry/segment';
import { ROOMS } from './shapes';

const courseOf = (path: Path, offset: number, turns: readonly number[], closed: boolean): Course => ({
  sources: sourcesOf(path, offset),
  offset,
  accuracy: 0.01,
  turns,
  slight: 1e-4,
  closed,
});

describe('followsOn', () => {
  it('holds round the outside of a corner and not across its inside', () => {
    const corner = [line({ x: 0, y: 0 }, { x: 60, y: 0 }), line({ x: 60, y: 0 }, { x: 60, y: 80 })];
    for (const [offset, follows] of [
      [10, true],
      [-10, false],
    ] as const) {
      const course = courseOf(corner, offset, [Math.PI / 2], false);
      const [one, other] = allParts(course.sources) as [Kept, Kept];
      expect(followsOn(course, one, other)).toBe(follows);
      expect(followsOn(course, other, one)).toBe(false);
    }
  });
});

describe('pivotBetween', () => {
  it('turns the way of the offset round the corner both parts stop short of', () => {
    const spike = [line({ x: 0, y: 0 }, { x: 100, y: 0 }), line({ x: 100, y: 0 }, { x: 0, y: 8 })];
    const course = courseOf(spike, 10, [Math.PI - Math.atan2(8, 100)], false);
    const [one, other] = allParts(course.sources) as [Kept, Kept];
    const pivot = pivotBetween(course, one, other);
    expect(pivot?.corner).toEqual({ x: 100, y: 0 });
    expect(pivot?.sweep).toBeCloseTo(Math.PI - Math.atan2(8, 100), 9);
    expect(pivotBetween(course, other, one)).toBeUndefined();
  });
});

describe('runOfParts', () => {
  it('passes over an island and keeps the larger ring', () => {
    const quarter = Math.PI / 2;
    const turns = [1, 1, -1, -1, 1, 1, 1, 1, -1, -1, 1, 1].map((each) => each * quarter);
    const around = [...turns.slice(1), turns[0] as number];
    const course = courseOf(ROOMS, -6, around, true);
    const run = runOfParts(course, keptParts(course.sources, -6));
    expect(run.map(({ index }) => index).sort((a, b) => a - b)).toEqual([0, 1, 9, 10, 11]);
  });
});
