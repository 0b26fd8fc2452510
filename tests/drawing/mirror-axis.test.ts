import { describe, expect, it } from 'vitest';
import { hasMirrorAxis } from '../../core/drawing/mirror-axis';
import { rotationAbout } from '../../core/geometry/affine';
import { at, movedPiece, pieceOf } from '../seams/pieces';

describe('hasMirrorAxis(piece)', () => {
  const turn = rotationAbout(at(7, 19), 0.77);
  it.each([
    ['a strip', [at(0, 0), at(310, 0), at(310, 70), at(0, 70)], true],
    ['a gore', [at(60, 0), at(160, 0), at(220, 500), at(0, 500)], true],
    ['a kite', [at(0, 0), at(100, -80), at(400, 0), at(100, 80)], true],
    ['a half skirt', [at(0, 0), at(180, 0), at(260, 600), at(0, 640)], false],
    [
      'a parallelogram, which turns onto itself but has no mirror',
      [at(0, 0), at(300, 0), at(390, 150), at(90, 150)],
      false,
    ],
    ['a gore 3 mm longer on one side', [at(60, 0), at(160, 0), at(220, 500), at(0, 506)], false],
  ] as const)('of %s', (_, corners, expected) => {
    const piece = pieceOf(corners, []);
    expect(hasMirrorAxis(piece)).toBe(expected);
    expect(hasMirrorAxis(movedPiece(piece, turn))).toBe(expected);
  });
});
