import { describe, expect, it } from 'vitest';
import { outlineOf } from '../../core/garment/outline';
import { flattenPath } from '../../core/geometry/flatten';
import { nearestOnPath, pathLength } from '../../core/geometry/path';
import { splineThrough } from '../../core/geometry/spline';
import { squaresSheet } from '../../core/paper/squares-sheet';
import { inches } from '../../core/units/inch';
import { curved, rectangle, straightPiece } from './pieces';

/** Inches to a thousandth, so that 7.249999 and 7.25 are one; a step is sixty times as much. */
const inInches = (mm: number) => Math.round((mm / 25.4) * 1000) / 1000 + 0;

const INCHES = { shownIn: 'in', step: 'sixteenth', most: { across: 40, down: 30 } } as const;

/** One quarter of a circle skirt of waist radius 5 in, in true circle points every 15 degrees. */
function quarterCircle() {
  const at = (radius: number, degrees: number) => ({
    x: inches(3) + radius * Math.cos((degrees * Math.PI) / 180),
    y: inches(2) + radius * Math.sin((degrees * Math.PI) / 180),
  });
  const [small, large] = [inches(5), inches(25)];
  const corners = [at(small, 90), at(small, 0), at(large, 0), at(large, 90)].map(({ x, y }) => [x, y] as const);
  const waist = [75, 60, 45, 30, 15].map((degrees) => at(small, degrees));
  const hem = [15, 30, 45, 60, 75].map((degrees) => at(large, degrees));
  return curved(curved(straightPiece(corners), 0, waist), 2, hem);
}

describe('squaresSheet', () => {
  it('counts from a crossing of the inch squares above and left of the piece, never below nothing', () => {
    const sheet = squaresSheet(rectangle(inches(2.25), -inches(0.75), inches(7), inches(11)), INCHES);
    expect([sheet.origin.x, sheet.origin.y]).toEqual([inches(2), -inches(1)].map((mm) => expect.closeTo(mm, 9)));
    expect(sheet.points.map(({ name, across, down }) => [name, inInches(across), inInches(down)])).toEqual([
      ['A', 0.25, 0.25],
      ['B', 7.25, 0.25],
      ['C', 7.25, 11.25],
      ['D', 0.25, 11.25],
    ]);
    expect([sheet.square, sheet.squaresAcross, sheet.squaresDown]).toEqual([inches(1), 8, 12]);
  });

  it('takes coarser squares when there are more than can be told apart', () => {
    const sheet = squaresSheet(rectangle(0, 0, inches(50), inches(70)), INCHES);
    expect([sheet.square, sheet.squaresAcross, sheet.squaresDown]).toEqual([inches(3), 17, 24]);
    const metric = squaresSheet(rectangle(0, 0, 500, 700), { ...INCHES, shownIn: 'cm', step: 'millimetre' });
    expect([metric.square, metric.squaresAcross, metric.squaresDown]).toEqual([50, 10, 14]);
  });

  it('rounds every point once, to its step', () => {
    for (const [step, mm] of [
      ['sixteenth', 25.4 / 16],
      ['eighth', 25.4 / 8],
      ['millimetre', 1],
    ] as const) {
      for (const { across, down } of squaresSheet(quarterCircle(), { ...INCHES, step }).points) {
        for (const length of [across, down]) expect(Math.abs(length / mm - Math.round(length / mm))).toBeLessThan(1e-9);
      }
    }
  });

  // Arcs of a quarter circle: 5 π/2 = 7.854 in and 25 π/2 = 39.270 in.
  it('gives the length along every edge', () => {
    const lengths = squaresSheet(quarterCircle(), INCHES).edges.map(({ length }) => length / 25.4);
    expect(lengths).toEqual([(5 * Math.PI) / 2, 20, (25 * Math.PI) / 2, 20].map((each) => expect.closeTo(each, 2)));
  });

  it('has a point on every curve at least each 2 in and each 20 degrees of turning', () => {
    const { points, edges } = squaresSheet(quarterCircle(), INCHES);
    const along = (corner: string) => points.filter(({ name }) => new RegExp(`^${corner}\\d`).test(name)).length;
    expect([along('A'), along('B'), along('C'), along('D')]).toEqual([4, 0, 19, 0]);
    expect((edges[2]?.length ?? 0) / 20).toBeLessThan(inches(2));
  });

  it('lets the curves be drawn again from the table alone, within its step', () => {
    const piece = quarterCircle();
    const { points, origin } = squaresSheet(piece, INCHES);
    const [waist, , hem] = outlineOf(piece).edges;
    for (const [from, to, edge] of [
      ['A', 'B', waist],
      ['C', 'D', hem],
    ] as const) {
      const run = points.slice(
        points.findIndex(({ name }) => name === from),
        points.findIndex(({ name }) => name === to) + 1,
      );
      const drawn = splineThrough(run.map(({ across, down }) => ({ x: origin.x + across, y: origin.y + down })));
      for (const point of flattenPath(drawn, 0.1)) {
        expect(nearestOnPath(edge ?? [], point).distance).toBeLessThan(inches(1 / 16));
      }
      expect(Math.abs(pathLength(drawn) - pathLength(edge ?? []))).toBeLessThan(inches(1 / 8));
    }
  });

  it('names no more than 1,000 points or so of a piece with a point gone astray, where every 2 in had made 28,000', () => {
    const { points } = squaresSheet(curved(rectangle(0, 0, 1e6, 700), 0, [{ x: 3e5, y: -4e5 }]), INCHES);
    expect(points.length).toBeGreaterThan(990);
    expect(points.length).toBeLessThanOrEqual(1004);
    expect(points.filter(({ kind }) => kind === 'corner')).toHaveLength(4);
  });

  it('proves a piece by two diagonals that end in four corners', () => {
    // 18 by 24 in: both are 30 in, the carpenter's right angle.
    const { diagonals } = squaresSheet(rectangle(0, 0, inches(18), inches(24)), INCHES);
    expect(diagonals.map(({ from, to, length }) => [from, to, length / 25.4])).toEqual([
      ['A', 'C', expect.closeTo(30, 9)],
      ['B', 'D', expect.closeTo(30, 9)],
    ]);
  });

  it('carries darts, notches, grain and labels in the same count', () => {
    const piece = rectangle(0, 0, inches(10), inches(20), {
      darts: [{ id: 'd', edgeId: 'e0', along: inches(4), width: inches(1), point: { x: inches(4), y: inches(5) } }],
      notches: [{ id: 'n', edgeId: 'e1', along: inches(7), count: 2 }],
      labels: [{ id: 'l', at: { x: inches(6), y: inches(9) }, text: 'pocket' }],
      grain: { from: { x: inches(2), y: inches(3) }, to: { x: inches(2), y: inches(15) } },
    });
    const { marks } = squaresSheet(piece, INCHES);
    expect(marks.map(({ kind, across, down }) => [kind, inInches(across), inInches(down)])).toEqual([
      ['dart-start', 3.5, 0],
      ['dart-point', 4, 5],
      ['dart-end', 4.5, 0],
      ['notch', 10, 7],
      ['grain-start', 2, 3],
      ['grain-end', 2, 15],
      ['label', 6, 9],
    ]);
  });
});
