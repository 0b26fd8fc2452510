import { describe, expect, it } from 'vitest';
import { pathEnd } from '../../core/geometry/path';
import { distance } from '../../core/geometry/point';
import { jointAt } from '../../core/seams/corner-joint';
import { type CornerPlace, linesThrough, outwardOf, type Strip } from '../../core/seams/corner-place';
import { at } from './pieces';

/** A corner at (70, 50) of two straight edges of 200, turning by `degrees`, with the widths given. */
function cornerOf(degrees: number, before: number, after: number) {
  const turn = (degrees * Math.PI) / 180;
  const [arriving, leaving] = [
    { dx: 1, dy: 0 },
    { dx: Math.cos(turn), dy: Math.sin(turn) },
  ];
  const place: CornerPlace = { at: at(70, 50), arriving, leaving, outward: 1, turn };
  const strip = (width: number, along: typeof arriving, from: number, to: number): Strip => {
    const out = outwardOf(place, along);
    const point = (l: number) => at(70 + along.dx * l + out.dx * width, 50 + along.dy * l + out.dy * width);
    return { path: linesThrough(point(from), point(to)), width, isHem: false };
  };
  return [place, strip(before, arriving, -200, 0), strip(after, leaving, 0, 200)] as const;
}

describe('jointAt', () => {
  it('mitres a square corner of unequal allowances where both lines meet', () => {
    const joint = jointAt(...cornerOf(90, 12, 7), 'mitred');
    expect(joint?.before.extra).toHaveLength(1);
    const tip = pathEnd(joint?.before.extra ?? []);
    expect(distance(tip, at(77, 38))).toBeLessThan(1e-9);
    expect([joint?.before.taken, joint?.after.taken]).toEqual([0, 0]);
  });

  it('cuts both lines back to where they cross in a hollow', () => {
    // Turning left by 60°: each of two equal strips loses w tan 30°.
    const joint = jointAt(...cornerOf(-60, 9, 9), 'mitred');
    expect(joint?.before.taken).toBeCloseTo(9 * Math.tan(Math.PI / 6), 6);
    expect(joint?.after.taken).toBeCloseTo(9 * Math.tan(Math.PI / 6), 6);
    expect(joint?.meet?.y).toBeCloseTo(41, 6);
  });

  it('takes off a sharp mitre at twice the allowance when it is to be blunt', () => {
    const [place, before, after] = cornerOf(150, 8, 8);
    const joint = jointAt(place, before, after, 'blunt');
    expect(joint?.blunted).toBe(true);
    const [first, second] = [joint?.before.extra.at(-2), joint?.before.extra.at(-1)];
    // The cut lies 16 from the corner, along the line from corner to tip.
    const half = Math.PI / 12;
    const reach = (point: { x: number; y: number }) =>
      (point.x - 70) * Math.cos(half) - (point.y - 50) * Math.sin(half);
    if (first?.kind !== 'line' || second?.kind !== 'line') throw new Error('no cut');
    expect(reach(second.p0)).toBeCloseTo(16, 6);
    expect(reach(second.p1)).toBeCloseTo(16, 6);
  });

  it('steps square from one allowance to another where there is no corner', () => {
    const joint = jointAt(...cornerOf(0, 11, 4), 'mitred');
    expect(joint?.before.extra).toEqual([]);
    expect(joint?.after.extra).toEqual(linesThrough(at(70, 39), at(70, 46)));
  });

  it('is none where a strip was cut back before it got there', () => {
    const [place, before, after] = cornerOf(90, 12, 7);
    expect(
      jointAt(place, { ...before, path: linesThrough(at(-130, 38), at(60, 38)) }, after, 'mitred'),
    ).toBeUndefined();
  });
});
