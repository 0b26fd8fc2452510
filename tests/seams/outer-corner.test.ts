import { describe, expect, it } from 'vitest';
import { flattenPath } from '../../core/geometry/flatten';
import { distance } from '../../core/geometry/point';
import type { CornerPlace } from '../../core/seams/corner-place';
import { bluntPoints, roundedEnd, squaredPoints } from '../../core/seams/outer-corner';
import { at } from './pieces';

/** A square corner at (40, 30), arriving to the right and leaving downwards; allowances of 12 and 5. */
const square: CornerPlace = {
  at: at(40, 30),
  arriving: { dx: 1, dy: 0 },
  leaving: { dx: 0, dy: 1 },
  outward: 1,
  turn: Math.PI / 2,
};

describe('bluntPoints', () => {
  it('cut the tip off square to its line from the corner, at the reach asked for', () => {
    // Allowance 10 on both sides: tip 10 √2 away; cut at 12 it loses 10√2 - 12 along the diagonal.
    const [one, other] = bluntPoints(square, at(40, 20), at(50, 20), at(50, 30), 12);
    const lost = (10 * Math.SQRT2 - 12) * Math.SQRT2;
    expect(distance(one, at(50 - lost, 20))).toBeLessThan(1e-9);
    expect(distance(other, at(50, 20 + lost))).toBeLessThan(1e-9);
  });

  it('never lie behind the ends of the edges', () => {
    expect(bluntPoints(square, at(40, 20), at(50, 20), at(50, 30), 3)).toEqual([at(40, 20), at(50, 30)]);
  });
});

describe('roundedEnd', () => {
  it('is a circle about the corner where allowances are equal', () => {
    const arc = flattenPath(roundedEnd(square, 10, 10, at(40, 20), at(50, 20), at(50, 30)), 0.001);
    for (const point of arc) expect(Math.abs(distance(point, at(40, 30)) - 10)).toBeLessThan(0.006);
    expect([arc[0], arc.at(-1)]).toEqual([at(40, 20), at(50, 30)]);
  });

  it('runs from one cut line to the other where they differ, and is nothing without allowance', () => {
    const [curve, ...more] = roundedEnd(square, 12, 5, at(40, 18), at(45, 18), at(45, 30));
    expect(more).toEqual([]);
    // The handles of a quarter circle: 4/3 (√2 - 1) of the way to the tip.
    const share = (4 / 3) * (Math.SQRT2 - 1);
    expect(curve).toMatchObject({ kind: 'cubic', p0: at(40, 18), p3: at(45, 30) });
    expect(curve?.kind === 'cubic' && distance(curve.p1, at(40 + 5 * share, 18))).toBeLessThan(1e-9);
    expect(roundedEnd(square, 0, 0, at(40, 30), at(40, 30), at(40, 30))).toEqual([]);
  });
});

describe('squaredPoints', () => {
  it('are the mitre at a right angle, and two squares one over the other at a sharper corner', () => {
    expect(squaredPoints(square, 10, at(40, 20), at(50, 20), at(50, 30))).toEqual([at(50, 20)]);
    // 60° inside: it turns by 120°. The mitre reaches 2 × 9 from the corner and each edge runs on 9 √3.
    const turn = (2 * Math.PI) / 3;
    const leaving = { dx: Math.cos(turn), dy: Math.sin(turn) };
    const [start, tip] = [at(40 + 9 * leaving.dy, 30 - 9 * leaving.dx), at(40 + 9 * Math.sqrt(3), 21)];
    const points = squaredPoints({ ...square, leaving, turn }, 9, at(40, 21), tip, start);
    expect(points).toHaveLength(3);
    expect(distance(points[0] ?? tip, at(49, 21))).toBeLessThan(1e-9);
    // Where both ends cross: on the line through corner and tip, 9 beyond the corner along each edge.
    const inner = points[1] ?? tip;
    expect(inner.x - 40).toBeCloseTo(9, 9);
    expect(-((inner.x - 40) * leaving.dx + (inner.y - 30) * leaving.dy)).toBeCloseTo(9, 9);
  });
});
