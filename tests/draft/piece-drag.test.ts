import { beforeEach, describe, expect, it } from 'vitest';
import { adjustTool } from '../../app/draft/adjust-tool';
import { useDraft } from '../../app/draft/draft-store';
import { finishTrace, traceTool } from '../../app/draft/trace-tool';
import { useGarment } from '../../app/state/garment-store';
import { useTable } from '../../app/state/table-store';
import type { PointerAt } from '../../app/table/tool';
import { newGarment } from '../../core/garment/new-garment';
import { addPiece } from '../../core/garment/piece-list';
import { panel } from './panel';

let ids = 0;
const newId = () => `new ${ids++}`;

function at(x: number, y: number, more: Partial<PointerAt> = {}): PointerAt {
  return { world: { x, y }, screen: { x, y }, kind: 'mouse', free: false, reach: 8, ...more };
}

const garment = () => useGarment.getState().garment;
const corner = (index: number) => garment()?.pieces[0]?.corners[index]?.at;

beforeEach(() => {
  ids = 0;
  useGarment.getState().open(addPiece(newGarment({ newId, today: '2026-03-04', name: 'skirt', shownIn: 'in' }), panel));
  useTable.setState({ chosen: { kind: 'piece', pieceId: 'p' }, snapping: true, snapStep: 2 });
  useDraft.setState({ trace: [], mode: 'adjust', nextPoint: 'corner', pointer: undefined });
});

describe('dragging a corner', () => {
  it('is one step to undo however many moves it had, and snaps to the squares', () => {
    const before = garment();
    const drag = adjustTool().press(at(201, 1));
    for (let i = 1; i <= 30; i++) drag?.move(at(201 + i, 1 - i / 2));
    drag?.end(at(231.4, -13.7));
    expect(corner(1)).toEqual({ x: 230, y: -14 });
    expect(useGarment.getState().past).toHaveLength(1);
    useGarment.getState().undo();
    expect(garment()).toBe(before);
  });

  it('back to where it began is no step at all', () => {
    const drag = adjustTool().press(at(200, 0));
    drag?.move(at(240, 33));
    drag?.end(at(200, 0));
    expect(useGarment.getState().past).toHaveLength(0);
  });

  it('is as if it had never been when it is cancelled', () => {
    const before = garment();
    const drag = adjustTool().press(at(200, 0));
    drag?.move(at(240, 33));
    drag?.cancel();
    expect(garment()).toBe(before);
    expect(useGarment.getState().past).toHaveLength(0);
    expect(useTable.getState().chosen).toEqual({ kind: 'piece', pieceId: 'p' });
  });

  it('is free of the squares while the key is held', () => {
    const drag = adjustTool().press(at(200, 0));
    drag?.move(at(211.3, 5.9, { free: true }));
    drag?.end(at(211.3, 5.9, { free: true }));
    expect(corner(1)).toEqual({ x: 211.3, y: 5.9 });
  });
});

describe('the adjust tool', () => {
  it('leaves a press on an edge or inside to the table, and chooses by a tap', () => {
    const tool = adjustTool();
    expect(tool.press(at(40, 1))).toBeUndefined();
    tool.tap?.(at(40, 1));
    expect(useTable.getState().chosen).toEqual({ kind: 'edge', pieceId: 'p', edgeId: 'waist' });
    tool.tap?.(at(900, 900));
    expect(useTable.getState().chosen).toEqual({ kind: 'nothing' });
  });

  it('puts a point in by a tap on a plus alone', () => {
    adjustTool().press(at(100, 0))?.end(at(100, 0));
    expect(garment()?.pieces[0]?.edges[0]?.shape).toMatchObject({ kind: 'curve', through: [{ x: 100, y: 0 }] });
    expect(useTable.getState().chosen).toEqual({ kind: 'through', pieceId: 'p', edgeId: 'waist', index: 0 });
  });

  it('nudges by exactly one step of the grid, and by 1/16 in when snapping is off', () => {
    useTable.setState({ chosen: { kind: 'corner', pieceId: 'p', cornerId: 'c1' } });
    adjustTool().key?.({ key: 'ArrowRight', shift: false });
    expect(corner(1)).toEqual({ x: 202, y: 0 });
    useTable.setState({ snapping: false });
    adjustTool().key?.({ key: 'ArrowUp', shift: false });
    expect(corner(1)?.y).toBeCloseTo(-25.4 / 16, 12);
  });

  it('does not take the corners of a triangle away', () => {
    for (const cornerId of ['c1', 'c2', 'c3']) {
      useTable.setState({ chosen: { kind: 'corner', pieceId: 'p', cornerId } });
      adjustTool().key?.({ key: 'Delete', shift: false });
    }
    expect(garment()?.pieces[0]?.corners).toHaveLength(3);
  });
});

describe('the trace tool', () => {
  it('puts points down where presses are let go, and closes on the first corner as one step', () => {
    const tool = traceTool();
    for (const [x, y] of [
      [400, 3],
      [501, 2],
      [499, 301],
    ] as const) {
      tool.press(at(x, y))?.end(at(x, y));
    }
    tool.press(at(330, 40))?.cancel();
    expect(useDraft.getState().trace).toHaveLength(3);
    expect(useGarment.getState().past).toHaveLength(0);
    tool.press(at(404, 8))?.end(at(404, 8));
    expect(garment()?.pieces[1]?.corners.map((one) => one.at)).toEqual([
      { x: 400, y: 4 },
      { x: 502, y: 2 },
      { x: 500, y: 302 },
    ]);
    expect(useGarment.getState().past).toHaveLength(1);
    expect(useDraft.getState()).toMatchObject({ trace: [], mode: 'adjust' });
  });

  it('makes nothing of too few points', () => {
    traceTool().press(at(400, 3))?.end(at(400, 3));
    finishTrace();
    expect(garment()?.pieces).toHaveLength(1);
    expect(useDraft.getState().trace).toHaveLength(1);
  });
});
