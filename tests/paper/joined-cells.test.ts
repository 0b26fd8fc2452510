import { describe, expect, it } from 'vitest';
import { joinedCells } from '../../core/paper/joined-cells';

describe('joinedCells', () => {
  it('puts a sheet between two that touch only at a corner: a leaning strip', () => {
    const strip = [0, 5, 10, 15];
    const joined = joinedCells(strip, { columns: 4, rows: 4 });
    expect(joined).toHaveLength(7);
    expect(joined).toEqual(expect.arrayContaining(strip));
  });

  it('joins a lone sheet in the middle of a ring by one more', () => {
    const ring = [0, 1, 2, 3, 4, 5, 9, 10, 14, 15, 19, 20, 21, 22, 23, 24];
    expect(joinedCells([...ring, 12], { columns: 5, rows: 5 })).toHaveLength(ring.length + 2);
  });

  it('leaves sheets that hang together alone', () => {
    expect(joinedCells([1, 2, 5, 6], { columns: 4, rows: 2 })).toEqual([1, 2, 5, 6]);
    expect(joinedCells([], { columns: 3, rows: 3 })).toEqual([]);
  });
});
