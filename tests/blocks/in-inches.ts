import { expect } from 'vitest';
import type { Point } from '../../core/geometry/point';
import { MM_PER_INCH } from '../../core/units/inch';

/** A place in inches with y upwards, as the drafts print it. */
export function printed({ x, y }: Point): readonly [number, number] {
  return [x / MM_PER_INCH, -y / MM_PER_INCH];
}

/** That a length is so many inches, within a hundredth: straight constructions of the old drafts. */
export function expectInches(length: number | undefined, wanted: number, within = 0.01): void {
  expect(Math.abs((length ?? Number.NaN) / MM_PER_INCH - wanted), `${wanted} in`).toBeLessThan(within);
}

/** That places are where a draft prints them, in inches with y upwards and `top` in as the level of y = 0; within a hundredth. */
export function expectPlaces(
  places: Readonly<Record<string, Point>>,
  wanted: Readonly<Record<string, readonly [number, number]>>,
  top = 0,
): void {
  for (const [name, [x, y]] of Object.entries(wanted)) {
    const at = places[name];
    expect(at, name).toBeDefined();
    if (!at) continue;
    expectInches(at.x, x);
    expectInches(-at.y, y - top);
  }
}

/** Ids one after another. */
export function numberedIds(): () => string {
  let count = 0;
  return () => `id${++count}`;
}
