import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { moveCorner, moveThrough } from '../../core/garment/move-point';
import { edgeEnds, neighbourIndex, outlineOf } from '../../core/garment/outline';
import type { EndRule, Piece } from '../../core/garment/piece';
import { endTangent, pathBounds, pathLength, startTangent } from '../../core/geometry/path';
import { cross, dot, type Point } from '../../core/geometry/point';
import { at, pieceOf } from '../seams/pieces';
import { lindenPanel } from './linden';

/** A piece of 300 by 400 with its second edge curved and its ends ruled as asked. */
function ruled(leaves: EndRule, meets: EndRule, through: readonly Point[] = [at(340, 170)]): Piece {
  const piece = pieceOf([at(0, 0), at(300, 20), at(280, 400), at(-10, 380)], []);
  const edges = piece.edges.with(1, {
    ...(piece.edges[1] as Piece['edges'][0]),
    shape: { kind: 'curve', through, leaves, meets },
  });
  return { ...piece, edges };
}

/** Every number in a value, however deep. */
function numbersIn(value: unknown): number[] {
  if (typeof value === 'number') return [value];
  return value !== null && typeof value === 'object' ? Object.values(value).flatMap(numbersIn) : [];
}

describe('outlineOf', () => {
  it('gives a line for a straight edge and passes through every point of a curve', () => {
    const { edges, whole } = outlineOf(lindenPanel());
    expect(edges[3]).toEqual([{ kind: 'line', p0: { x: 0, y: 711.1999999999999 }, p1: { x: 0, y: 0 } }]);
    expect(edges[1]?.[0]).toMatchObject({ kind: 'cubic', p3: { x: 241.29999999999998, y: 203.2 } });
    expect(whole).toEqual(edges.flat());
  });

  it('lets an edge stand square to its neighbour, or run on in line with it', () => {
    const { edges } = outlineOf(ruled('square', 'in-line'));
    const [before, curve, after] = edges as [(typeof edges)[0], (typeof edges)[0], (typeof edges)[0]];
    expect(Math.abs(dot(endTangent(before), startTangent(curve)))).toBeLessThan(1e-12);
    expect(Math.abs(cross(endTangent(curve), startTangent(after)))).toBeLessThan(1e-12);
    expect(dot(endTangent(curve), startTangent(after))).toBeGreaterThan(0);
  });

  it('turns a square end to the side on which the edge goes on', () => {
    const inwards = outlineOf(ruled('square', 'free', [at(250, -170)])).edges[1] ?? [];
    expect(startTangent(inwards).dy).toBeGreaterThan(0.9);
  });

  it('comes out the same whatever was worked out before', () => {
    const rule = fc.constantFrom<EndRule>('free', 'square', 'in-line');
    const place = fc.record({ x: fc.integer({ min: -50, max: 450 }), y: fc.integer({ min: -60, max: 470 }) });
    fc.assert(
      fc.property(rule, rule, fc.array(place, { minLength: 1, maxLength: 6 }), (leaves, meets, places) => {
        let piece = ruled(leaves, meets);
        places.forEach((to, i) => {
          piece = i % 2 === 0 ? moveThrough(piece, 'e1', 0, to) : moveCorner(piece, `c${i % 4}`, to);
          expect(outlineOf(piece)).toEqual(outlineOf(structuredClone(piece)));
        });
      }),
      { seed: 7, numRuns: 60 },
    );
  });

  it('keeps the very path of an edge that a drag leaves as it was', () => {
    const before = lindenPanel();
    const after = moveThrough(before, 'e-side', 0, { x: 250, y: 190 });
    const [old, now] = [outlineOf(before).edges, outlineOf(after).edges];
    expect([0, 1, 2, 3].map((index) => old[index] === now[index])).toEqual([true, false, true, true]);
    expect(outlineOf(after)).toBe(outlineOf(after));
  });

  it('holds only numbers for points that coincide or lie a kilometre off', () => {
    for (const place of [at(300, 20), at(0, 0), at(1e6, -1e6), at(-1e6, 1e6)]) {
      const outline = outlineOf(ruled('square', 'in-line', [place, place, at(290, 210)]));
      expect(numbersIn(outline).every(Number.isFinite)).toBe(true);
      expect(Number.isFinite(pathLength(outline.whole))).toBe(true);
    }
    const all = pieceOf([at(5, 8), at(5, 8), at(5, 8)], []);
    expect(pathLength(outlineOf(all).whole)).toBe(0);
  });

  it('ends at once for a point that is no number, which the schema refuses', () => {
    const { whole } = outlineOf(ruled('free', 'free', [at(Number.NaN, 170), at(290, 300)]));
    expect(pathLength(whole)).toBeNaN();
    expect(pathBounds(whole).minX).toBeNaN();
  });
});

describe('neighbourIndex and edgeEnds', () => {
  it('go round, and an edge that is not there is a bug', () => {
    const panel = lindenPanel();
    expect([neighbourIndex(panel, 0, -1), neighbourIndex(panel, 3, 1), neighbourIndex(panel, 1, 1)]).toEqual([3, 0, 2]);
    expect(edgeEnds(panel, 3)).toEqual({ start: { x: 0, y: 711.1999999999999 }, end: { x: 0, y: 0 } });
    expect(() => edgeEnds(panel, 4)).toThrow('no edge 4');
  });
});
