import { describe, expect, it } from 'vitest';
import { layField } from '../../core/cloth/lay-field';
import { firstOnRepeat, goesAcross, placeAcross, placeAlong } from '../../core/cloth/lay-room';
import { type LayShape, layTable } from '../../core/cloth/lay-table';
import type { ToLay } from '../../core/cloth/lay-task';

const outline = [
  { x: 0, y: 0 },
  { x: 70, y: 0 },
  { x: 70, y: 40 },
  { x: 0, y: 40 },
];

function fieldWith(extra: Partial<ToLay>, repeat = { along: 0, across: 0 }) {
  const toLay = [{ id: 'a', outline, count: 1, stances: [{ turn: 0 }], ...extra }];
  const field = layField(layTable({ ground: { across: 100, kept: [], repeat }, toLay }));
  field.length = 200;
  return { field, shape: field.table.shapes[0] as LayShape };
}

describe('placeAlong and placeAcross(field, shape, wanted)', () => {
  it('keep a piece on the cloth', () => {
    const { field, shape } = fieldWith({});
    expect([-5, 33, 190].map((x) => placeAlong(field, shape, x))).toEqual([0, 33, 130]);
    expect([-5, 33, 190].map((y) => placeAcross(field, shape, y))).toEqual([0, 33, 60]);
  });

  it('keep a piece on the fold', () => {
    const { field, shape } = fieldWith({ onFold: 'along' });
    expect(placeAcross(field, shape, 33)).toBe(0);
    expect(placeAlong(field, shape, 33)).toBe(33);
  });

  it('bring a piece to the nearest place on the repeat that is on the cloth', () => {
    const { field, shape } = fieldWith({ match: { x: 12, y: 5 } }, { along: 30, across: 25 });
    // Its match falls on a multiple of 30 along: the piece begins at 18, 48, 78, 108 (138 would be off the cloth).
    expect([0, 30, 64, 200].map((x) => placeAlong(field, shape, x))).toEqual([18, 18, 78, 108]);
    expect([0, 35, 99].map((y) => placeAcross(field, shape, y))).toEqual([20, 45, 45]);
  });
});

it('firstOnRepeat(from, repeat, phase) is never before `from`', () => {
  expect(firstOnRepeat(31, 0, 7)).toBe(31);
  expect(firstOnRepeat(31, 30, -12)).toBe(48);
  expect(firstOnRepeat(48, 30, -12)).toBe(48);
});

it('goesAcross(table, shape) asks the width, and whether a place on the repeat is left', () => {
  const { field, shape } = fieldWith({});
  expect(goesAcross(field.table, shape)).toBe(true);
  expect(goesAcross({ ...field.table, across: 39 }, shape)).toBe(false);
  const matched = fieldWith({ match: { x: 0, y: 5 } }, { along: 0, across: 90 });
  expect(goesAcross(matched.field.table, matched.shape)).toBe(false);
});
