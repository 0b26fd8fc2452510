import { describe, expect, it } from 'vitest';
import { chosenAt, chosenStop, nextStop, stopsOf } from '../../app/draft/walk';
import type { Chosen } from '../../app/state/table-store';
import { panel } from './panel';

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
