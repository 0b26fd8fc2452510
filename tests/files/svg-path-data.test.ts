import { describe, expect, it } from 'vitest';
import { readPathData } from '../../core/files/svg-path-data';
import { segmentAt } from '../../core/geometry/cubic-curve';
import { pathEnd, pathStart, signedArea } from '../../core/geometry/path';
import type { Path } from '../../core/geometry/segment';

function only(data: string): Path {
  const { runs, isBroken } = readPathData(data);
  expect([runs.length, isBroken]).toEqual([1, false]);
  return runs[0] as Path;
}

describe('readPathData', () => {
  // SVG 2, 9.3.9: the grammar's own examples of numbers that run into one another.
  it('takes numbers as greedily as the grammar says', () => {
    expect(pathStart(only('M 100-200L1,1'))).toEqual({ x: 100, y: -200 });
    expect(pathStart(only('M 0.6.5L1,1'))).toEqual({ x: 0.6, y: 0.5 });
    expect(pathEnd(only('M1,2L3e1-2.5E-1'))).toEqual({ x: 30, y: -0.25 });
  });

  it('goes on with L after M, and with the same command after any other', () => {
    expect(pathEnd(only('m1,2 3,4 5,6'))).toEqual({ x: 9, y: 12 });
    expect(pathEnd(only('M1,2h3 4 5v-6'))).toEqual({ x: 13, y: -4 });
  });

  it('reads flags of arcs with nothing between them: a quarter circle of radius 10', () => {
    const area = signedArea(only('M0,0a10 10 0 0110 10L0,10Z'));
    expect(area).toBeCloseTo((Math.PI * 100) / 4, 3);
    expect(signedArea(only('M0,0A10,10 0 1 0 10 10L0,10Z'))).toBeCloseTo(-(Math.PI * 300) / 4 + 0, 3);
  });

  // SVG 2, B.2.5: radii too small are scaled up until the arc just reaches: half a circle over the chord.
  it('lets small radii grow, and draws a straight line for none', () => {
    expect(Math.abs(signedArea(only('M0,0A1,1 0 0 1 24 0Z')))).toBeCloseTo((Math.PI * 144) / 2, 3);
    expect(only('M0,0A0,5 0 0 1 24 7')).toHaveLength(1);
  });

  // A quadratic curve lies at (p0 + 2 p1 + p2) / 4 in the middle.
  it('raises quadratic curves exactly and mirrors handles for S and T', () => {
    expect(segmentAt(only('M0,0Q10,30 40,8')[0] as Path[number], 0.5)).toEqual({ x: 15, y: 17 });
    expect(only('M0,0Q10,30 40,8T90,3')[1]).toMatchObject({ p1: { x: 60, y: expect.closeTo(-6.6667, 3) } });
    expect(only('M0,0C1,2 3,9 10,10S20,5 30,7')[1]).toMatchObject({ p1: { x: 17, y: 11 } });
    expect(only('M0,0L5,5S20,5 30,7')[1]).toMatchObject({ p1: { x: 5, y: 5 } });
  });

  it('begins anew where Z ended, and keeps what came before an error', () => {
    const { runs } = readPathData('M5,6h10v20zl1,2');
    expect(runs.map(pathStart)).toEqual([
      { x: 5, y: 6 },
      { x: 5, y: 6 },
    ]);
    expect(readPathData('M1,2L3,4 5')).toMatchObject({ isBroken: true, runs: [[{ kind: 'line' }]] });
    expect(readPathData('L1,2')).toEqual({ runs: [], isBroken: true });
    expect(readPathData(' ')).toEqual({ runs: [], isBroken: false });
  });
});
