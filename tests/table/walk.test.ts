import { describe, expect, it } from 'vitest';
import type { Chosen } from '../../app/state/table-store';
import { chosenAt, chosenStop, nextStop, stopsOf, walked } from '../../app/table/walk';
import { panel } from '../draft/panel';

describe('stopsOf', () => {
  it('goes round corner by corner, with the points of a curve between its corners', () => {
    expect(
      stopsOf(panel).map((stop) => (stop.kind === 'corner' ? stop.cornerId : `${stop.edgeId} ${stop.index}`)),
    ).toEqual(['c0', 'c1', 'side 0', 'c2', 'c3']);
  });
});

describe('nextStop', () => {
  it('passes every stop once and comes back to the first, both ways', () => {
    for (const step of [1, -1] as const) {
      let chosen: Chosen = { kind: 'piece', pieceId: panel.id };
      const met: Chosen[] = [];
      for (let i = 0; i < 5; i++) {
        const stop = nextStop(panel, chosen, step);
        if (stop) chosen = chosenAt(panel.id, stop);
        met.push(chosen);
      }
      expect(new Set(met.map((one) => JSON.stringify(one))).size).toBe(5);
      const again = nextStop(panel, chosen, step);
      expect(again && chosenAt(panel.id, again)).toEqual(met[0]);
    }
  });

  it('leaves an edge by the corner it runs to, or goes back to the one it comes from', () => {
    const side: Chosen = { kind: 'edge', pieceId: panel.id, edgeId: 'side' };
    expect(nextStop(panel, side, 1)).toMatchObject({ cornerId: 'c2', number: 3 });
    expect(nextStop(panel, side, -1)).toMatchObject({ cornerId: 'c1', number: 2 });
  });
});

describe('chosenStop', () => {
  it('finds the point that is chosen and nothing for an edge', () => {
    expect(chosenStop(panel, { kind: 'through', pieceId: panel.id, edgeId: 'side', index: 0 })).toMatchObject({
      at: { x: 240, y: 150 },
    });
    expect(chosenStop(panel, { kind: 'edge', pieceId: panel.id, edgeId: 'side' })).toBeUndefined();
  });
});

describe('walked', () => {
  const other = { ...panel, id: 'q' };
  const nothing: Chosen = { kind: 'nothing' };
  const go = (chosen: Chosen, key: string, shift = false) => walked([panel, other], chosen, { key, shift });

  it('begins at the first corner of the first piece, and stays on the piece in hand', () => {
    expect(go(nothing, 'PageDown')).toEqual({ kind: 'corner', pieceId: 'p', cornerId: 'c0' });
    expect(go({ kind: 'piece', pieceId: 'q' }, 'PageUp')).toEqual({ kind: 'corner', pieceId: 'q', cornerId: 'c3' });
  });

  it('goes from piece to piece and round again', () => {
    expect(go(nothing, 'End')).toEqual({ kind: 'piece', pieceId: 'p' });
    expect(go({ kind: 'piece', pieceId: 'p' }, 'End')).toEqual({ kind: 'piece', pieceId: 'q' });
    expect(go({ kind: 'corner', pieceId: 'q', cornerId: 'c1' }, 'End')).toEqual({ kind: 'piece', pieceId: 'p' });
    expect(go(nothing, 'Home')).toEqual({ kind: 'piece', pieceId: 'q' });
  });

  it('goes from edge to edge with Shift: from a corner to the one it begins, or the one it ends', () => {
    const corner = { kind: 'corner', pieceId: 'p', cornerId: 'c1' } as const;
    expect(go(corner, 'PageDown', true)).toEqual({ kind: 'edge', pieceId: 'p', edgeId: 'side' });
    expect(go(corner, 'PageUp', true)).toEqual({ kind: 'edge', pieceId: 'p', edgeId: 'waist' });
    expect(go({ ...corner, cornerId: 'c0' }, 'PageUp', true)).toMatchObject({ edgeId: 'fold' });
    expect(go({ kind: 'edge', pieceId: 'p', edgeId: 'fold' }, 'PageDown', true)).toMatchObject({ edgeId: 'waist' });
    expect(go({ kind: 'piece', pieceId: 'p' }, 'PageUp', true)).toMatchObject({ edgeId: 'fold' });
  });

  it('is led nowhere by other keys or where nothing lies', () => {
    expect(go(nothing, 'Enter')).toBeUndefined();
    expect(walked([], nothing, { key: 'PageDown', shift: false })).toBeUndefined();
  });
});
