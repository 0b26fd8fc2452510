import { describe, expect, it } from 'vitest';
import { arcEnd, arcPath } from '../../core/blocks/arc-run';
import { type Gore, type GoredSkirtSizes, gore, goredSkirtPieces } from '../../core/blocks/gored-skirt';
import { outlineOf } from '../../core/garment/outline';
import type { Piece } from '../../core/garment/piece';
import { endTangent, pathLength, signedArea, startTangent } from '../../core/geometry/path';
import { distance, turnBetween } from '../../core/geometry/point';
import { inches, MM_PER_INCH } from '../../core/units/inch';
import { numberedIds, printed } from './in-inches';

/** A six-gored slip skirt from two cones, every figure computed from the cone's formulas (Baldt 1916 for the rule). */
const slip: GoredSkirtSizes = {
  waist: inches(28),
  hip: inches(38),
  hipDepth: inches(7),
  hem: inches(66),
  length: inches(26),
  gores: 6,
};

function drawn(sizes: GoredSkirtSizes): Gore {
  const made = gore(sizes);
  if (made.kind === 'no-gore') throw new Error(made.why);
  return made;
}

function pieceOf(sizes: GoredSkirtSizes): Piece {
  const made = goredSkirtPieces(sizes, { newId: numberedIds(), name: 'Gore' });
  if (!Array.isArray(made)) throw new Error(made.why);
  return made[0] as Piece;
}

describe('gore', () => {
  it('has its points where two cones put them, in inches from the middle of the waist', () => {
    const { waistCorner, hipPoint, hemCorner } = drawn(slip);
    const expected = [
      [waistCorner, 2.3278, 0.1387],
      [hipPoint, 3.1592, -6.8117],
      [hemCorner, 5.4862, -25.6627],
    ] as const;
    for (const [point, across, up] of expected) {
      expect(printed(point)[0]).toBeCloseTo(across, 4);
      expect(printed(point)[1]).toBeCloseTo(up, 4);
    }
  });

  it('has side edges of 7.000 and 18.994 in, dips of 0.139 and 0.337 and arcs of half a gore', () => {
    const { waist, hem, waistCorner, hipPoint, hemCorner } = drawn(slip);
    expect(distance(waistCorner, hipPoint) / MM_PER_INCH).toBeCloseTo(7, 3);
    expect(distance(hipPoint, hemCorner) / MM_PER_INCH).toBeCloseTo(18.994, 3);
    expect((waist.start.y - arcEnd(waist).y) / MM_PER_INCH).toBeCloseTo(0.139, 3);
    expect((hem.start.y - arcEnd(hem).y) / MM_PER_INCH).toBeCloseTo(0.337, 3);
    expect(pathLength(arcPath(waist, 1e-6)) / MM_PER_INCH).toBeCloseTo(4.6667 / 2, 4);
    expect(pathLength(arcPath(hem, 1e-6)) / MM_PER_INCH).toBeCloseTo(11 / 2, 6);
  });

  it('refuses a hip below the hem and sizes that are none', () => {
    expect(gore({ ...slip, length: slip.hipDepth })).toEqual({ kind: 'no-gore', why: 'hip-below-hem' });
    expect(gore({ ...slip, gores: 0 })).toEqual({ kind: 'no-gore', why: 'not-positive' });
  });
});

describe('goredSkirtPieces', () => {
  it('is one whole gore cut six times, with the lengths of the draft', () => {
    const piece = pieceOf(slip);
    expect(piece.cut).toEqual({ how: 'single', count: 6 });
    expect(piece.edges.map(({ role }) => role)).toEqual(['waist', 'seam', 'hem', 'seam']);
    const [waist, right, hem, left] = outlineOf(piece).edges.map((path) => pathLength(path) / MM_PER_INCH);
    expect(waist).toBeCloseTo(28 / 6, 3);
    expect(hem).toBeCloseTo(11, 3);
    expect(right).toBeCloseTo(25.994, 2);
    expect(left).toBeCloseTo(right ?? 0, 9);
    // The two parts of cones: (26.6² - 19.6²)/2 × 0.23810 and (44.786² - 25.786²)/2 × 0.24561 sq in.
    const area = signedArea(outlineOf(piece).whole) / MM_PER_INCH ** 2;
    expect(Math.abs(area / 203.17 - 1)).toBeLessThan(0.001);
  });

  it('meets the waist squarely at both seams, within a quarter of a degree', () => {
    for (const hip of [inches(38), inches(42), inches(27)]) {
      const [waist, right] = outlineOf(pieceOf({ ...slip, hip })).edges;
      const angle = turnBetween(endTangent(waist ?? []), startTangent(right ?? []));
      expect(Math.abs(angle - Math.PI / 2)).toBeLessThan((0.25 * Math.PI) / 180);
    }
  });

  it('rounds a marked bend at the hip and still passes the hip point', () => {
    const straightHem = { ...slip, hem: slip.hip, hip: slip.hip };
    const { hipPoint } = drawn(straightHem);
    const side = pieceOf(straightHem).edges[1]?.shape;
    expect(side?.kind === 'curve' && side.through.length).toBe(9);
    expect(side?.kind === 'curve' && side.through[4]).toEqual(hipPoint);
  });
});
