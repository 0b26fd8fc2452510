import { describe, expect, it } from 'vitest';
import { pathEnd, pathStart, reversePath } from '../../core/geometry/path';
import { distance } from '../../core/geometry/point';
import { type CornerPlace, linesThrough, outwardOf, type Strip } from '../../core/seams/corner-place';
import { mirroredJoint } from '../../core/seams/mirrored-corner';
import { at } from './pieces';

/** The hem corner at (0, 0) of a gore: its side comes down at slope k outwards, the hem leaves to the left. */
function hemCorner(slope: number, sideWidth: number, depth: number) {
  const length = Math.hypot(slope, 1);
  const arriving = { dx: slope / length, dy: 1 / length };
  const leaving = { dx: -1, dy: 0 };
  const place: CornerPlace = { at: at(0, 0), arriving, leaving, outward: 1, turn: Math.PI / 2 + Math.atan(slope) };
  const out = outwardOf(place, arriving);
  const from = at(-500 * arriving.dx + out.dx * sideWidth, -500 * arriving.dy + out.dy * sideWidth);
  const side: Strip = {
    path: linesThrough(from, at(out.dx * sideWidth, out.dy * sideWidth)),
    width: sideWidth,
    isHem: false,
  };
  const hem: Strip = { path: linesThrough(at(0, depth), at(-400, depth)), width: depth, isHem: true };
  return [place, side, hem] as const;
}

describe('mirroredJoint', () => {
  it.each([
    [0.2, 0, 50],
    [0.35, 15, 30],
    [-0.15, 0, 40],
  ])(
    'ends a hem at slope %f, side allowance %f and depth %f on the mirror image of the side',
    (slope, width, depth) => {
      const joint = mirroredJoint(...hemCorner(slope, width, depth));
      if (!joint) throw new Error('no joint');
      // The side's cut line lies width √(1 + k²) further out on every level; folded up, its point lies `depth` above the hem.
      const onFold = width * Math.hypot(slope, 1);
      const image = joint.after.extra[0];
      if (!image) throw new Error('no image');
      expect(distance(image.p0, at(onFold, 0))).toBeLessThan(1e-9);
      expect(distance(pathEnd(joint.after.extra.slice(0, 1)), at(onFold - slope * depth, depth))).toBeLessThan(1e-9);
    },
  );

  it('is the same corner when the outline is run the other way', () => {
    const [place, side, hem] = hemCorner(0.3, 0, 45);
    const back = (v: { dx: number; dy: number }) => ({ dx: -v.dx, dy: -v.dy });
    const turned: CornerPlace = { ...place, arriving: back(place.leaving), leaving: back(place.arriving), outward: -1 };
    const reversed = (strip: Strip): Strip => ({ ...strip, path: reversePath(strip.path) });
    const joint = mirroredJoint(turned, reversed(hem), reversed(side));
    expect(distance(pathStart(joint?.before.extra ?? []), at(-13.5, 45))).toBeLessThan(1e-9);
  });

  it('is none without a hem to turn up, or for a side that runs almost along the hem', () => {
    expect(mirroredJoint(...hemCorner(0.2, 0, 0))).toBeUndefined();
    expect(mirroredJoint(...hemCorner(9, 20, 30))).toBeUndefined();
  });
});
