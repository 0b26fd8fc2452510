import { expect, it } from 'vitest';
import { putDart, putLabel, putNotch, removeMark, setGrain } from '../../core/garment/mark-edits';
import type { Dart, Label, Notch } from '../../core/garment/piece';
import { lindenPanel } from './linden';

it('putDart, putNotch and putLabel add a new mark and replace one of the same id', () => {
  const piece = lindenPanel();
  const notch: Notch = { id: 'notch-knee', edgeId: 'e-side', along: 500, count: 3 };
  const dart: Dart = { ...(piece.darts[0] as Dart), width: 25 };
  const label: Label = { id: 'label-2', at: { x: 40, y: 90 }, text: 'drill' };
  expect(putNotch(piece, notch).notches).toEqual([...piece.notches, notch]);
  expect(putDart(piece, dart).darts).toEqual([dart]);
  expect(putLabel(piece, label).labels.map(({ id }) => id)).toEqual(['label-1', 'label-2']);
});

it('removeMark takes away a dart, a notch or a label by its id', () => {
  const piece = lindenPanel();
  expect(removeMark(piece, 'dart-1').darts).toEqual([]);
  expect(removeMark(piece, 'notch-hip').notches).toEqual([]);
  expect(removeMark(piece, 'label-1').labels).toEqual([]);
  expect(removeMark(piece, 'label-1').darts).toBe(piece.darts);
});

it('setGrain lays the grain and takes it away', () => {
  const grain = { from: { x: 9, y: 4 }, to: { x: 9, y: 300 } };
  expect(setGrain(lindenPanel(), grain).grain).toEqual(grain);
  expect(setGrain(lindenPanel(), undefined)).not.toHaveProperty('grain');
});

it('mark edits give the same piece back when nothing changes', () => {
  const piece = lindenPanel();
  expect(putDart(piece, piece.darts[0] as Dart)).toBe(piece);
  expect(putNotch(piece, piece.notches[0] as Notch)).toBe(piece);
  expect(putLabel(piece, piece.labels[0] as Label)).toBe(piece);
  expect(removeMark(piece, 'no-mark')).toBe(piece);
  expect(setGrain(piece, piece.grain)).toBe(piece);
});
