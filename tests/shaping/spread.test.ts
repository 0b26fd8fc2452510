import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { outlineOf } from '../../core/garment/outline';
import type { Piece } from '../../core/garment/piece';
import { pathLength } from '../../core/geometry/path';
import { distance } from '../../core/geometry/point';
import { type SpreadWish, spread } from '../../core/shaping/spread';
import { inches, MM_PER_INCH } from '../../core/units/inch';
import { traced } from './traced';

const panel = traced('panel', [
  [[0, 0], 'waist'],
  [[inches(8), 0], 'seam'],
  [[inches(11), inches(25)], 'hem'],
  [[0, inches(25)], 'fold'],
]);
const idOf = (index: number) => panel.edges[index]?.id ?? '';
const lengthOf = (piece: Piece, index: number) => pathLength(outlineOf(piece).edges[index] ?? []);

function spreadPanel(wish: Omit<SpreadWish, 'hinge' | 'open'> & Partial<SpreadWish>): Piece {
  const made = spread(panel, {
    hinge: { edgeId: idOf(0), along: inches(4) },
    open: { edgeId: idOf(2), along: inches(6) },
    ...wish,
  });
  if ('why' in made) throw new Error(made.why);
  return made;
}

describe('spread', () => {
  it('keeps the length of the hinge edge, whatever the angle', () => {
    fc.assert(
      fc.property(fc.double({ min: -0.15, max: 0.4, noNaN: true }), (angle) => {
        const made = spreadPanel({ by: { kind: 'angle', angle } });
        expect(Math.abs(lengthOf(made, 0) - inches(8))).toBeLessThan(0.01);
        // Edges that are not cut keep their lengths exactly.
        expect(lengthOf(made, 1)).toBeCloseTo(lengthOf(panel, 1), 9);
        expect(lengthOf(made, 3)).toBeCloseTo(lengthOf(panel, 3), 9);
      }),
      { seed: 7, numRuns: 40 },
    );
  });

  it('opens by 2 R sin(a/2), R the length of the slash (common practice)', () => {
    const made = spreadPanel({ by: { kind: 'opening', opening: inches(3) } });
    const shape = made.edges[2]?.shape;
    const [one, two] = shape?.kind === 'curve' ? shape.through : [];
    expect(distance(one ?? { x: 0, y: 0 }, two ?? { x: 0, y: 0 }) / MM_PER_INCH).toBeCloseTo(3, 9);
    expect(lengthOf(made, 2) / MM_PER_INCH).toBeGreaterThan(14);
    expect(lengthOf(made, 2) / MM_PER_INCH).toBeLessThan(14.1);
  });

  it('leaves the fold and swings the side outwards', () => {
    const made = spreadPanel({ by: { kind: 'opening', opening: inches(2) } });
    expect(made.corners[0]).toBe(panel.corners[0]);
    expect(made.corners[3]).toBe(panel.corners[3]);
    expect(made.corners[2]?.at.x).toBeGreaterThan(inches(12.5));
    expect(made.corners[1]?.at.y).toBeLessThan(0);
  });

  it('laps for less than nothing', () => {
    const made = spreadPanel({ by: { kind: 'opening', opening: -inches(1) } });
    expect(made.corners[2]?.at.x).toBeLessThan(inches(10.2));
  });

  it('takes notches, labels and the grain with the part they lie in', () => {
    const [, side] = panel.edges;
    const marked: Piece = {
      ...panel,
      notches: [{ id: 'n', edgeId: side?.id ?? '', along: 77, count: 2 }],
      labels: [
        { id: 'l', at: { x: inches(8), y: inches(12) }, text: 'side' },
        { id: 'm', at: { x: inches(1), y: inches(12) }, text: 'front' },
      ],
      grain: { from: { x: inches(1), y: inches(5) }, to: { x: inches(1), y: inches(15) } },
    };
    const made = spread(marked, {
      hinge: { edgeId: idOf(0), along: inches(4) },
      open: { edgeId: idOf(2), along: inches(6) },
      by: { kind: 'angle', angle: 0.1 },
    });
    if ('why' in made) throw new Error(made.why);
    expect(made.notches).toEqual(marked.notches);
    expect(made.grain).toEqual(marked.grain);
    expect(made.labels[1]).toEqual(marked.labels[1]);
    expect(made.labels[0]?.at.x).toBeGreaterThan(inches(8.5));
  });

  it('refuses a slash along one edge, places that are not there, and too wide an opening', () => {
    const wish: SpreadWish = {
      hinge: { edgeId: idOf(0), along: 30 },
      open: { edgeId: idOf(0), along: 90 },
      by: { kind: 'angle', angle: 0.1 },
    };
    expect(spread(panel, wish)).toEqual({ kind: 'not-spread', why: 'no-such-place' });
    expect(spread(panel, { ...wish, open: { edgeId: idOf(2), along: 9999 } })).toEqual({
      kind: 'not-spread',
      why: 'no-such-place',
    });
    const wide = { ...wish, open: { edgeId: idOf(2), along: 90 }, by: { kind: 'opening', opening: 9999 } } as const;
    expect(spread(panel, wide)).toEqual({ kind: 'not-spread', why: 'too-wide' });
  });
});
