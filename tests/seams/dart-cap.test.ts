import { describe, expect, it } from 'vitest';
import { outlineOf } from '../../core/garment/outline';
import type { Piece } from '../../core/garment/piece';
import { reflectionIn, rotationAbout, transformPoint } from '../../core/geometry/affine';
import { flattenPath } from '../../core/geometry/flatten';
import { nearestOnPath, pathEnd, pathStart } from '../../core/geometry/path';
import { distance } from '../../core/geometry/point';
import { dartShape } from '../../core/seams/dart-cap';
import { at, movedPiece, pieceOf } from './pieces';

const dart = { id: 'd', edgeId: 'e0', along: 110, width: 30, point: at(110, 120) };
/** A straight waist 260 wide with the fold at its left, where edge 3 comes up. */
const piece: Piece = {
  ...pieceOf(
    [at(0, 0), at(260, 0), at(280, 400), at(0, 400)],
    [{ role: 'waist' }, {}, { role: 'hem' }, { role: 'fold' }],
  ),
  darts: [dart],
};

describe('dartShape(piece, dart)', () => {
  it('folds to a cap that lies on the edge: its tip, mirrored in the leg next to the fold, is on the waist', () => {
    const shape = dartShape(piece, dart);
    if (!shape) throw new Error('no shape');
    expect(shape.from.x).toBeCloseTo(95, 9);
    expect(shape.to.x).toBeCloseTo(125, 9);
    expect(distance(pathStart(shape.cap), shape.from)).toBeLessThan(1e-9);
    expect(distance(pathEnd(shape.cap), shape.to)).toBeLessThan(0.01);
    const leg = reflectionIn(shape.point, shape.from);
    if (!leg) throw new Error('no leg');
    expect(transformPoint(leg, shape.tip).y).toBeCloseTo(0, 6);
    // With half angle b: the middle line, folded over the leg, stands 2 b off the height of 120 above the point.
    const b = Math.atan(15 / 120);
    expect(distance(shape.tip, shape.point)).toBeCloseTo(120 / Math.cos(2 * b), 6);
  });

  it('closed, both halves of the cap lie on one another along a curved waist', () => {
    const curved: Piece = {
      ...pieceOf(
        [at(0, 20), at(260, 0), at(280, 400), at(0, 400)],
        [{ role: 'waist', through: [at(120, 26)] }, {}, { role: 'hem' }, { role: 'fold' }],
      ),
    };
    const waist = outlineOf(curved).edges[0] ?? [];
    const shape = dartShape(curved, { ...dart, point: at(108, 150) });
    if (!shape) throw new Error('no shape');
    const leg = reflectionIn(shape.point, shape.from);
    if (!leg) throw new Error('no leg');
    const tipAt = nearestOnPath(shape.cap, shape.tip).along;
    for (const point of flattenPath(shape.cap, 0.05)) {
      if (nearestOnPath(shape.cap, point).along > tipAt) continue;
      expect(nearestOnPath(waist, transformPoint(leg, point)).distance).toBeLessThan(0.01);
    }
  });

  it('turned with its piece keeps its shape', () => {
    const turn = rotationAbout(at(13, 57), 2.1);
    const turned = movedPiece(piece, turn);
    const [one, other] = [dartShape(piece, dart), dartShape(turned, turned.darts[0] ?? dart)];
    if (!one || !other) throw new Error('no shape');
    expect(distance(transformPoint(turn, one.tip), other.tip)).toBeLessThan(1e-6);
  });

  it('is nothing for a dart without width, edge or depth', () => {
    expect(dartShape(piece, { ...dart, width: 0 })).toBeUndefined();
    expect(dartShape(piece, { ...dart, edgeId: 'none' })).toBeUndefined();
    expect(dartShape(piece, { ...dart, point: at(95, 0) })).toBeUndefined();
  });
});
