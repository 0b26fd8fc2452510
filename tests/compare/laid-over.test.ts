import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { laidOver } from '../../core/compare/laid-over';
import { mapPiece } from '../../core/garment/move-piece';
import { outlineOf } from '../../core/garment/outline';
import { composeAffine, rotationAbout, transformPoint, translation } from '../../core/geometry/affine';
import { nearestOnPath } from '../../core/geometry/path';
import { distance } from '../../core/geometry/point';
import { lindenPanel } from '../garment/linden';

const panel = lindenPanel();
const moved = (angle: number, dx: number, dy: number) => {
  const motion = composeAffine(translation({ dx, dy }), rotationAbout({ x: 31, y: 17 }, angle));
  return mapPiece(panel, (point) => transformPoint(motion, point));
};

/** How far the corners of the laid piece are off those of the piece beneath. */
function off(over: ReturnType<typeof moved>, motion: ReturnType<typeof laidOver>): number {
  if (!motion) return Infinity;
  const { corners } = over;
  return Math.max(
    ...corners.map(({ at }, i) => distance(transformPoint(motion, at), panel.corners[i]?.at ?? { x: 0, y: 0 })),
  );
}

describe('laidOver', () => {
  it('by best fit finds a piece again that was turned and moved, within 0.05 mm', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -3, max: 3, noNaN: true }),
        fc.double({ min: -900, max: 900, noNaN: true }),
        (angle, dx) => {
          const over = moved(angle, dx, dx / 3 - 70);
          expect(off(over, laidOver(panel, over, { kind: 'best', mirrored: 'never' }))).toBeLessThan(0.05);
        },
      ),
      { seed: 7, numRuns: 12 },
    );
  });

  it('by best fit finds its mirror image only where mirroring is allowed', () => {
    const over = mapPiece(moved(0.4, 250, -30), ({ x, y }) => ({ x: -x, y }));
    expect(off(over, laidOver(panel, over, { kind: 'best', mirrored: 'allowed' }))).toBeLessThan(0.05);
    expect(off(over, laidOver(panel, over, { kind: 'best', mirrored: 'never' }))).toBeGreaterThan(5);
  });

  it('by a corner moves it there and does not turn it', () => {
    const over = moved(0.25, 111, 37);
    const motion = laidOver(panel, over, {
      kind: 'corner',
      onCornerId: panel.corners[1]?.id ?? '',
      cornerId: panel.corners[1]?.id ?? '',
    });
    expect(motion).toMatchObject({ a: 1, b: 0, c: 0, d: 1 });
    expect(
      distance(transformPoint(motion as never, over.corners[1]?.at ?? { x: 0, y: 0 }), panel.corners[1]?.at as never),
    ).toBeLessThan(1e-9);
  });

  it.each(['same', 'opposite'] as const)('by an edge lays its ends along the other, walked the %s way', (way) => {
    const over = moved(1.1, 300, 20);
    const edgeId = panel.edges[1]?.id ?? '';
    const motion = laidOver(panel, over, { kind: 'edge', onEdgeId: edgeId, edgeId, way });
    const { edges } = outlineOf(panel);
    const start = transformPoint(motion as never, over.corners[1]?.at as never);
    expect(nearestOnPath(edges[1] ?? [], start).distance).toBeLessThan(1e-9);
    const end = way === 'same' ? panel.corners[1]?.at : panel.corners[2]?.at;
    expect(distance(start, end as never)).toBeLessThan(1e-9);
  });

  it('answers nothing for what is not there, and leaves both as they lie when asked', () => {
    expect(laidOver(panel, panel, { kind: 'corner', onCornerId: 'gone', cornerId: 'gone' })).toBeUndefined();
    expect(laidOver(panel, panel, { kind: 'edge', onEdgeId: 'gone', edgeId: 'gone', way: 'same' })).toBeUndefined();
    expect(off(panel, laidOver(panel, panel, { kind: 'as-they-lie' }))).toBe(0);
  });
});
