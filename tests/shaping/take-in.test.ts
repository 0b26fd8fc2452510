import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { outlineOf } from '../../core/garment/outline';
import type { Piece } from '../../core/garment/piece';
import { nearestOnPath, pathAtLength, pathLength } from '../../core/geometry/path';
import { distance } from '../../core/geometry/point';
import { type Pinned, takeIn } from '../../core/shaping/take-in';
import { traced } from './traced';

const piece = traced('panel', [
  [[0, 0], 'waist'],
  [[220, 0], 'seam'],
  [[310, 660], 'hem'],
  [[0, 660], 'fold'],
]);
const sideId = piece.edges[1]?.id ?? '';
const sideOf = (of: Piece) => outlineOf(of).edges[1] ?? [];

function taken(pins: readonly Pinned[], of: Piece = piece): Piece {
  const made = takeIn(of, sideId, pins);
  if ('why' in made) throw new Error(made.why);
  return made;
}

describe('takeIn', () => {
  it('is off the old edge by what was pinned, where it was pinned, and by nothing at the far ends', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 150, max: 450, noNaN: true }),
        fc.double({ min: -25, max: 25, noNaN: true }).filter((by) => Math.abs(by) > 0.1),
        (along, by) => {
          const made = taken([{ along, by }]);
          const pinnedAt = pathAtLength(sideOf(piece), along).point;
          expect(nearestOnPath(sideOf(made), pinnedAt).distance).toBeGreaterThan(0.9 * Math.abs(by));
          expect(nearestOnPath(sideOf(made), pinnedAt).distance).toBeLessThanOrEqual(Math.abs(by) + 1e-9);
          const outX = sideOf(made).length > 0 ? nearestOnPath(sideOf(made), pinnedAt).point.x : 0;
          expect(Math.sign(pinnedAt.x - outX)).toBe(Math.sign(by));
          expect(made.corners).toEqual(piece.corners);
        },
      ),
      { seed: 7, numRuns: 60 },
    );
  });

  it('keeps its course beyond a pin of nothing, within a tenth of a millimetre', () => {
    const made = taken([
      { along: 0, by: 12.7 },
      { along: 180, by: 0 },
    ]);
    for (let along = 180; along < pathLength(sideOf(piece)); along += 20) {
      const at = pathAtLength(sideOf(piece), along).point;
      expect(nearestOnPath(sideOf(made), at).distance).toBeLessThan(0.1);
    }
    expect(made.corners.slice(2)).toEqual(piece.corners.slice(2));
  });

  it('moves a pinned corner along the edge beside it, half an inch off the seam', () => {
    const made = taken([
      { along: 0, by: 12.7 },
      { along: 180, by: 0 },
    ]);
    const corner = made.corners[1]?.at ?? { x: 0, y: 9 };
    expect(corner.y).toBeCloseTo(0, 9);
    // The side leans by atan(90/660): along the waist half an inch becomes a little more.
    expect(220 - corner.x).toBeCloseTo(12.7 / Math.cos(Math.atan(90 / 660)), 6);
  });

  it('is undone by letting out as much at the same places', () => {
    const pins = [
      { along: 150, by: 0 },
      { along: 250, by: 9 },
      { along: 350, by: 0 },
    ];
    const back = taken(
      pins.map(({ along, by }) => ({ along, by: -by })),
      taken(pins),
    );
    for (let along = 10; along < 660; along += 25) {
      const at = pathAtLength(sideOf(piece), along).point;
      expect(nearestOnPath(sideOf(back), at).distance).toBeLessThan(0.3);
    }
  });

  it('leaves marks beside where they were', () => {
    const marked: Piece = { ...piece, notches: [{ id: 'n', edgeId: sideId, along: 420, count: 1 }] };
    const before = pathAtLength(sideOf(piece), 420).point;
    const made = taken([{ along: 200, by: 15 }], marked);
    const after = pathAtLength(sideOf(made), made.notches[0]?.along ?? 0).point;
    expect(distance(before, after)).toBeLessThan(15);
  });

  it('refuses no edge, no pins, and a corner that could not move', () => {
    expect(takeIn(piece, 'none', [{ along: 3, by: 4 }])).toEqual({ kind: 'not-taken-in', why: 'no-edge' });
    expect(takeIn(piece, sideId, [{ along: 3, by: 0 }])).toEqual({ kind: 'not-taken-in', why: 'no-pins' });
    const inLine = traced('line', [
      [[0, 0], 'waist'],
      [[200, 0], 'seam'],
      [[220, 300], 'seam'],
      [[242, 660], 'hem'],
      [[0, 660], 'fold'],
    ]);
    const total = pathLength(outlineOf(inLine).edges[1] ?? []);
    expect(takeIn(inLine, inLine.edges[1]?.id ?? '', [{ along: total, by: 8 }])).toEqual({
      kind: 'not-taken-in',
      why: 'along-the-neighbour',
    });
  });
});
