import { describe, expect, it } from 'vitest';
import { allParts, endsOfPart, type Kept, keptParts, sourcesOf } from '../../core/geometry/parallel-trim';
import { distance, type Point } from '../../core/geometry/point';
import { line } from '../../core/geometry/segment';
import { cubicOf } from './shapes';

const CORNER = [line({ x: 0, y: 0 }, { x: 60, y: 0 }), line({ x: 60, y: 0 }, { x: 60, y: 80 })];

describe('keptParts', () => {
  it('cut both sides of a hollow corner back to where they cross', () => {
    const sources = sourcesOf(CORNER, -10);
    const [one, other] = keptParts(sources, -10) as [Kept, Kept];
    expect(distance(endsOfPart(sources, -10, one)[1], { x: 50, y: 10 })).toBeLessThan(1e-6);
    expect(distance(endsOfPart(sources, -10, other)[0], { x: 50, y: 10 })).toBeLessThan(1e-6);
    expect([one.reachesStart, one.reachesEnd, other.reachesStart, other.reachesEnd]).toEqual([
      true,
      false,
      false,
      true,
    ]);
  });

  it('keep everything round the outside', () => {
    const sources = sourcesOf(CORNER, 10);
    expect(keptParts(sources, 10)).toEqual(allParts(sources));
  });

  it('end both arms of a swallowtail on one place, and keep nothing of a bend that is all too tight', () => {
    const parabola = [cubicOf([-120, 180], [-40, -60], [40, -60], [120, 180])];
    const sources = sourcesOf(parabola, -60);
    const [one, other] = keptParts(sources, -60) as [Kept, Kept];
    for (const end of [endsOfPart(sources, -60, one)[1], endsOfPart(sources, -60, other)[0]] as Point[]) {
      expect(distance(end, { x: 0, y: 65 })).toBeLessThan(1e-5);
    }
    const bend = [cubicOf([30, 0], [30, 16.6], [16.6, 30], [0, 30])];
    expect(keptParts(sourcesOf(bend, -45), -45)).toEqual([]);
  });
});
