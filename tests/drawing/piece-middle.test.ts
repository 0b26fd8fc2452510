import { describe, expect, it } from 'vitest';
import { pieceMiddle } from '../../core/drawing/piece-middle';
import { rotationAbout } from '../../core/geometry/affine';
import { placeInRing } from '../../core/geometry/polygon';
import { at, movedPiece, pieceOf } from '../seams/pieces';

describe('pieceMiddle', () => {
  it('comes near the centre of the circle inside a triangle', () => {
    // Sides 300, 400 and 500: the inscribed circle has radius (300 + 400 - 500)/2 = 100 about (100, 100).
    const { at: place, room } = pieceMiddle(pieceOf([at(0, 0), at(300, 0), at(0, 400)], []));
    expect(room).toBeGreaterThan(92);
    expect(room).toBeLessThanOrEqual(100);
    expect(Math.hypot(place.x - 100, place.y - 100)).toBeLessThan(15);
  });

  it('never lies outside a hollow piece, whose middle by its box does', () => {
    const corners = [at(0, 0), at(400, 0), at(400, 90), at(70, 90), at(70, 500), at(0, 500)];
    for (const angle of [0, 0.6, 1.9]) {
      const ell = movedPiece(pieceOf(corners, []), rotationAbout(at(11, 23), angle));
      const { at: place, room } = pieceMiddle(ell);
      expect(
        placeInRing(
          ell.corners.map((corner) => corner.at),
          place,
        ),
      ).toBe('inside');
      expect(room).toBeGreaterThan(28);
    }
  });

  it('has no room in a piece without inside', () => {
    expect(pieceMiddle(pieceOf([at(4, 5), at(4, 5), at(4, 5)], [])).room).toBe(0);
  });
});
