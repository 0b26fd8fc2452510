import { expect, it } from 'vitest';
import { chosenAt, useTable } from '../../app/state/table-store';

it('goTo keeps what is chosen unless it is told what to choose', () => {
  const { choose, goTo } = useTable.getState();
  choose({ kind: 'piece', pieceId: 'panel' });
  goTo('fit');
  expect(useTable.getState()).toMatchObject({ room: 'fit', chosen: { kind: 'piece', pieceId: 'panel' } });
  goTo('draft', { kind: 'nothing' });
  expect(useTable.getState()).toMatchObject({ room: 'draft', chosen: { kind: 'nothing' } });
});

it('setView keeps the other view the same object', () => {
  const { setView } = useTable.getState();
  setView('photo', { scale: 0.5, x: 12, y: 7 });
  const photo = useTable.getState().view.photo;
  setView('table', { scale: 2, x: 3, y: 4 });
  expect(useTable.getState().view.photo).toBe(photo);
  expect(useTable.getState().view.table).toEqual({ scale: 2, x: 3, y: 4 });
});

it('snapping begins at an eighth of an inch, 3.175 mm', () => {
  expect(useTable.getState().snapStep).toBeCloseTo(3.175, 12);
});

it('chosenAt puts the place of a finding in front of her', () => {
  expect(chosenAt({ kind: 'edge', pieceId: 'panel', edgeId: 'e-hem' })).toEqual({
    kind: 'edge',
    pieceId: 'panel',
    edgeId: 'e-hem',
  });
  expect(chosenAt({ kind: 'diagram', diagramId: 'plate-14', knownLengthId: 'known-waist' })).toEqual({
    kind: 'known-length',
    diagramId: 'plate-14',
    knownLengthId: 'known-waist',
  });
  expect(chosenAt({ kind: 'paper' })).toEqual({ kind: 'nothing' });
});
