import { describe, expect, it } from 'vitest';
import type { Piece } from '../../core/garment/piece';
import { reflectionIn, rotationAbout, transformPath, transformPoint } from '../../core/geometry/affine';
import { flattenPath } from '../../core/geometry/flatten';
import { intersectPaths } from '../../core/geometry/intersect';
import { nearestOnPath, pathLength } from '../../core/geometry/path';
import { distance, move, vectorBetween } from '../../core/geometry/point';
import { line, type Path } from '../../core/geometry/segment';
import { cutLine } from '../../core/seams/cut-line';
import { at, movedPiece, pieceOf } from './pieces';

/** A waist 260 wide with the fold at its left, where edge 3 comes up; 15 allowed at the waist. */
const plain: Piece = pieceOf(
  [at(0, 0), at(260, 0), at(280, 400), at(0, 400)],
  [{ role: 'waist', allowance: 15 }, { allowance: 15 }, { role: 'hem', allowance: 40 }, { role: 'fold' }],
);
const dart = { id: 'd', edgeId: 'e0', along: 110, width: 30, point: at(110, 120) };
const darted: Piece = { ...plain, darts: [dart] };

function cutOf(piece: Piece): Path {
  const cut = cutLine(piece);
  if (cut.kind !== 'cut-line') throw new Error(cut.kind);
  return cut.edges[0] as Path;
}

/** Where the cut line meets a leg carried on. */
function onLeg(cut: Path, foot: ReturnType<typeof at>, point: ReturnType<typeof at>): number {
  const [meeting] = intersectPaths(cut, [line(foot, move(foot, vectorBetween(point, foot), 1))]);
  if (!meeting || meeting.kind === 'overlap') throw new Error('no meeting');
  return meeting.alongA;
}

describe('cutLine(piece) over a dart', () => {
  it('folded towards the centre, lies on the allowance of the edge, and once more when folded on', () => {
    const [cut, straight] = [cutOf(darted), cutOf(plain)];
    const [low, high] = [onLeg(cut, at(95, 0), dart.point), onLeg(cut, at(125, 0), dart.point)];
    const leg = reflectionIn(dart.point, at(95, 0));
    if (!leg) throw new Error('no leg');
    const middle = reflectionIn(dart.point, at(110, 0));
    if (!middle) throw new Error('no middle');
    let [near, far] = [0, 0];
    for (const point of flattenPath(cut, 0.05)) {
      const { along } = nearestOnPath(cut, point);
      if (along <= low || along >= high) continue;
      const folded = transformPoint(leg, point.x > 110 ? transformPoint(middle, point) : point);
      const off = nearestOnPath(straight, folded).distance;
      if (point.x > 110) far = Math.max(far, off);
      else near = Math.max(near, off);
    }
    expect(near).toBeLessThan(0.01);
    expect(far).toBeLessThan(0.01);
    // With half angle b the middle of a straight edge stands at 135 / cos 2b above the point.
    const b = Math.atan(15 / 120);
    const tip = flattenPath(cut, 0.01).reduce((top, each) => (each.y < top.y ? each : top));
    expect(distance(tip, dart.point)).toBeCloseTo(135 / Math.cos(2 * b), 6);
  });

  it('is where it was beside the dart, and the same for a piece turned', () => {
    const cut = cutOf(darted);
    const straight = cutOf(plain);
    for (const point of flattenPath(cut, 0.05)) {
      if (point.x > 90 && point.x < 130) continue;
      expect(nearestOnPath(straight, point).distance).toBeLessThan(1e-9);
    }
    const turn = rotationAbout(at(13, 57), 2.1);
    const turned = cutOf(movedPiece(darted, turn));
    expect(pathLength(turned)).toBeCloseTo(pathLength(cut), 4);
    for (const point of flattenPath(transformPath(turn, cut), 0.5)) {
      expect(nearestOnPath(turned, point).distance).toBeLessThan(0.01);
    }
  });

  it('follows two darts, also without an allowance, and leaves a piece drawn to be cut as drawn', () => {
    const two: Piece = { ...darted, darts: [dart, { ...dart, id: 'e', along: 190, width: 22, point: at(190, 90) }] };
    const peaks = (path: Path) =>
      flattenPath(path, 0.01).filter(({ y }, i, all) => y < (all[i - 1]?.y ?? y) && y < (all[i + 1]?.y ?? y));
    expect(peaks(cutOf(two))).toHaveLength(2);
    const edges = two.edges.map((edge) => (edge.id === 'e0' ? { ...edge, allowance: 0 } : edge));
    expect(peaks(cutOf({ ...two, edges }))).toHaveLength(2);
    expect(peaks(cutOf({ ...two, drawnAs: 'included' }))).toHaveLength(0);
  });
});
