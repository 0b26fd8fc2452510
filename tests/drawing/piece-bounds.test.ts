import { expect, it } from 'vitest';
import { lineStyles } from '../../core/drawing/line-styles';
import { pieceBounds } from '../../core/drawing/piece-bounds';
import { at, pieceOf } from '../seams/pieces';

it('pieceBounds reaches to the outer side of the cut line, allowances and its width included', () => {
  const sides = [{ allowance: 11 }, { allowance: 17 }, { allowance: 23 }, { allowance: 29 }];
  const piece = pieceOf([at(100, 50), at(400, 50), at(400, 850), at(100, 850)], sides);
  const half = lineStyles.cut.width / 2;
  const box = pieceBounds(piece);
  expect(box.minX).toBeCloseTo(100 - 29 - half, 6);
  expect(box.minY).toBeCloseTo(50 - 11 - half, 6);
  expect(box.maxX).toBeCloseTo(400 + 17 + half, 6);
  expect(box.maxY).toBeCloseTo(850 + 23 + half, 6);
  expect(pieceBounds(piece)).toBe(box);
});
