import { describe, expect, it } from 'vitest';
import { nudged } from '../../app/draft/nudge';
import { panel } from './panel';

const BY = { dx: 3, dy: -7 };
const of = (piece = panel) => ({ pieceId: piece.id });

describe('nudged', () => {
  it('moves a corner, a curve point, a label and the point of a dart by just as much', () => {
    const corner = nudged(panel, { kind: 'corner', ...of(), cornerId: 'c2' }, BY);
    expect(corner?.at).toEqual({ x: 263, y: 493 });
    expect(corner?.piece.corners[2]?.at).toEqual({ x: 263, y: 493 });
    const through = nudged(panel, { kind: 'through', ...of(), edgeId: 'side', index: 0 }, BY);
    expect(through?.at).toEqual({ x: 243, y: 143 });
    expect(nudged(panel, { kind: 'label', ...of(), id: 'l' }, BY)?.piece.labels[0]?.at).toEqual({ x: 33, y: 326 });
    expect(nudged(panel, { kind: 'dart', ...of(), id: 'd' }, BY)?.piece.darts[0]?.point).toEqual({ x: 65, y: 83 });
  });

  it('moves both ends of the grain line, and every point of a piece', () => {
    expect(nudged(panel, { kind: 'grain', ...of() }, BY)?.piece.grain).toEqual({
      from: { x: 93, y: 123 },
      to: { x: 93, y: 373 },
    });
    const moved = nudged(panel, { kind: 'piece', ...of() }, BY)?.piece;
    expect(moved?.corners.map(({ at }) => at)).toEqual(
      panel.corners.map(({ at: { x, y } }) => ({ x: x + 3, y: y - 7 })),
    );
  });

  it('keeps a notch on its edge: along it moves, across it does not', () => {
    // The fold runs up from (0, 520).
    const up = nudged(panel, { kind: 'notch', ...of(), id: 'n' }, { dx: 0, dy: -7 })?.piece.notches[0];
    expect(up?.along).toBeCloseTo(127, 9);
    const across = nudged(panel, { kind: 'notch', ...of(), id: 'n' }, { dx: 5, dy: 0 })?.piece.notches[0];
    expect(across?.along).toBeCloseTo(120, 9);
  });

  it('leaves alone what has no place of its own or is not there', () => {
    expect(nudged(panel, { kind: 'edge', ...of(), edgeId: 'side' }, BY)).toBeUndefined();
    expect(nudged(panel, { kind: 'dart', ...of(), id: 'gone' }, BY)).toBeUndefined();
  });
});
