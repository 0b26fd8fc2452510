import { expect, it } from 'vitest';
import { setAllowance } from '../../core/garment/edge-edits';
import { edgesWithoutAllowance, withAllowanceWhereNone } from '../../core/garment/missing-allowances';
import { lindenPanel } from './linden';

it('withAllowanceWhereNone(piece, mm) says it of every edge that has none, and leaves what was said and the fold alone', () => {
  const [waist, side, hem, fold] = lindenPanel().edges;
  const two = [side, hem].reduce((piece, edge) => setAllowance(piece, edge?.id ?? '', undefined), lindenPanel());
  expect(edgesWithoutAllowance(two).map(({ id }) => id)).toEqual([side?.id, hem?.id]);
  const said = withAllowanceWhereNone(two, 9.5);
  expect(said.edges.map(({ allowance }) => allowance)).toEqual([waist?.allowance, 9.5, 9.5, fold?.allowance]);
  expect(edgesWithoutAllowance(said)).toEqual([]);
  expect(withAllowanceWhereNone(said, 11)).toBe(said);
});
