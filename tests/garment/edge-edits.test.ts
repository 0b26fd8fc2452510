import { expect, it } from 'vitest';
import { nameEdge, setAllowance, setRole, setStated } from '../../core/garment/edge-edits';
import { lindenPanel } from './linden';

it('setRole to fold lays the edge straight and takes its allowance', () => {
  expect(setRole(lindenPanel(), 'e-side', 'fold').edges[1]).toMatchObject({
    role: 'fold',
    allowance: 0,
    shape: { kind: 'straight' },
  });
});

it('setRole to fold has a piece cut on it that was to be cut as drawn, and leaves one cut in pairs as it is', () => {
  const single = { ...lindenPanel(), cut: { how: 'single', count: 2 } } as const;
  expect(setRole(single, 'e-side', 'fold').cut).toEqual({ how: 'fold', count: 2 });
  const pair = { ...lindenPanel(), cut: { how: 'pair', count: 2 } } as const;
  expect(setRole(pair, 'e-side', 'fold').cut).toEqual(pair.cut);
});

it('setAllowance and setStated take away what was said', () => {
  const bare = setStated(setAllowance(lindenPanel(), 'e-waist', undefined), 'e-waist', undefined).edges[0];
  expect(bare).not.toHaveProperty('allowance');
  expect(bare).not.toHaveProperty('stated');
});

it('edge edits give the same piece back when nothing changes', () => {
  const piece = lindenPanel();
  expect(nameEdge(piece, 'e-side', 'side')).toBe(piece);
  expect(setRole(piece, 'e-hem', 'hem')).toBe(piece);
  expect(setAllowance(piece, 'e-waist', 12.7)).toBe(piece);
  expect(setStated(piece, 'e-waist', { length: 177.79999999999998, rules: 'figure' })).toBe(piece);
  expect(nameEdge(piece, 'e-collar', 'collar')).toBe(piece);
});
