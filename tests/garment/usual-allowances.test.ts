import { expect, it } from 'vitest';
import { withUsualAllowances } from '../../core/garment/usual-allowances';
import { cutLine } from '../../core/seams/cut-line';
import { inches } from '../../core/units/inch';
import { at, pieceOf } from '../seams/pieces';

it('withUsualAllowances(piece) says what is not said, a hem deeper, and leaves what she has said and folds alone', () => {
  const corners = [at(0, 0), at(200, 0), at(270, 500), at(0, 500)];
  const piece = pieceOf(corners, [{ role: 'waist' }, { allowance: 7 }, { role: 'hem' }, { role: 'fold' }], [], {
    how: 'fold',
    count: 1,
  });
  const bare = {
    ...piece,
    edges: piece.edges.map((edge, i) => {
      const { allowance: _, ...rest } = edge;
      return i === 1 ? edge : rest;
    }),
  };
  expect(cutLine(bare).kind).toBe('no-allowance-said');
  const said = withUsualAllowances(bare);
  expect(said.edges.map(({ allowance }) => allowance)).toEqual([inches(0.625), 7, inches(2), undefined]);
  expect(cutLine(said).kind).toBe('cut-line');
  expect(withUsualAllowances(said)).toBe(said);
});
