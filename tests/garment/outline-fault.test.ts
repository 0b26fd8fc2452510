import { describe, expect, it, vi } from 'vitest';
import { beforeYouCut } from '../../core/check/before-you-cut';
import { outlineOf } from '../../core/garment/outline';
import type * as Spline from '../../core/geometry/spline';
import { linden, lindenPanel } from './linden';

/** A fault of the program, made by hand: no spline goes through this place. */
const FAULTY = { x: 71.5, y: 333.25 };

vi.mock('../../core/geometry/spline', async (original) => {
  const real = await original<typeof Spline>();
  const splineThrough: typeof real.splineThrough = (points, options) => {
    if (points.some(({ x, y }) => x === FAULTY.x && y === FAULTY.y)) throw new RangeError('no spline');
    return real.splineThrough(points, options);
  };
  return { ...real, splineThrough };
});

function faultyPanel() {
  const panel = lindenPanel();
  const edges = panel.edges.map((edge, index) =>
    index === 1
      ? ({ ...edge, shape: { kind: 'curve', through: [FAULTY], leaves: 'free', meets: 'free' } } as const)
      : edge,
  );
  return { ...panel, edges } as typeof panel;
}

describe('a piece with an edge that cannot be worked out', () => {
  it('shows that edge from point to point and the others as they are', () => {
    const panel = faultyPanel();
    const { edges } = outlineOf(panel);
    const [first, second] = edges[1] ?? [];
    expect(edges[1]).toHaveLength(2);
    expect(first).toMatchObject({ p0: panel.corners[1]?.at, p1: FAULTY });
    expect(second).toMatchObject({ p0: FAULTY, p1: panel.corners[2]?.at });
    expect(edges[3]).toEqual(outlineOf(lindenPanel()).edges[3]);
    expect(outlineOf(panel).isWorkedOut).toBe(false);
    expect(outlineOf(lindenPanel()).isWorkedOut).toBe(true);
  });

  it('holds back cutting, and every other check goes on', () => {
    const garment = linden();
    const faulty = { ...garment, pieces: garment.pieces.with(0, faultyPanel()) };
    const kinds = beforeYouCut(faulty).map(({ kind }) => kind);
    expect(kinds).toContain('not-worked-out');
    expect(kinds.length).toBeGreaterThan(1);
    expect(beforeYouCut(garment).map(({ kind }) => kind)).not.toContain('not-worked-out');
  });
});
