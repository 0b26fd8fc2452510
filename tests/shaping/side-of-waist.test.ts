import { describe, expect, it } from 'vitest';
import { outlineOf } from '../../core/garment/outline';
import { nearestOnPath, pathEnd, pathLength, pathStart } from '../../core/geometry/path';
import { distance } from '../../core/geometry/point';
import { linesThrough } from '../../core/seams/corner-place';
import {
  carrySideMarks,
  cornerIndexAt,
  hipAlongSide,
  leadSide,
  sideDownwards,
  sideIndexAt,
} from '../../core/shaping/side-of-waist';
import { at } from '../seams/pieces';
import { straightGore } from './traced';

/** A gore of 120 at the waist and 230 at 190 down; edge 0 is the waist, 1 and 3 its sides. */
const gore = straightGore(120, 230, 190);

describe('the sides of a waist', () => {
  it('are the edges before and after it, each run downwards', () => {
    expect([cornerIndexAt(gore, 0, 'before'), cornerIndexAt(gore, 0, 'after')]).toEqual([0, 1]);
    expect([sideIndexAt(gore, 0, 'before'), sideIndexAt(gore, 0, 'after')]).toEqual([3, 1]);
    for (const [end, x] of [
      ['before', -60],
      ['after', 60],
    ] as const) {
      const side = sideDownwards(gore, 0, end) ?? [];
      expect(pathStart(side)).toEqual({ x, y: 0 });
      expect(pathEnd(side).y).toBe(660);
    }
  });

  it('meet a level on the side, or not at all when it ends elsewhere', () => {
    const side = sideDownwards(gore, 0, 'after') ?? [];
    const along = hipAlongSide(side, linesThrough(at(0, 190), at(115, 190)), 'after');
    expect(along).toBeCloseTo(nearestOnPath(side, at(115, 190)).along, 9);
    expect(hipAlongSide(side, linesThrough(at(0, 190), at(90, 190)), 'after')).toBeUndefined();
  });
});

describe('leadSide', () => {
  const side = sideDownwards(gore, 0, 'after') ?? [];
  const hipAlong = nearestOnPath(side, at(115, 190)).along;
  const course = { corner: at(66, -14), via: at(121, 186), hipAlong };

  it('leads the side from its new corner through its new hip and back to its old course', () => {
    const { piece, passesVia } = leadSide(gore, 0, 'after', course);
    const led = outlineOf(piece).edges[1] ?? [];
    expect(passesVia).toBe(true);
    expect(pathStart(led)).toEqual(course.corner);
    expect(nearestOnPath(led, course.via).distance).toBeLessThan(1e-6);
    for (const down of [hipAlong + 200, hipAlong + 300]) {
      const { point } = nearestOnPath(side, at(145 + down / 9, down));
      expect(nearestOnPath(led, point).distance).toBeLessThan(0.8);
    }
    expect(distance(pathEnd(led), pathEnd(side))).toBe(0);
    expect(piece.edges[3]).toBe(gore.edges[3]);
  });

  it('keeps a mark above the hip in proportion and one below it where it was', () => {
    const edgeId = gore.edges[1]?.id ?? '';
    const notches = [
      { id: 'n1', edgeId, along: hipAlong / 4, count: 1 as const },
      { id: 'n2', edgeId, along: pathLength(side) - 70, count: 2 as const },
    ];
    const before = { ...gore, notches };
    const { piece } = leadSide(before, 0, 'after', course);
    const after = carrySideMarks(before, piece, 0, 'after', course);
    const led = outlineOf(after).edges[1] ?? [];
    expect(after.notches[0]?.along).toBeCloseTo(nearestOnPath(led, course.via).along / 4, 6);
    expect(after.notches[1]?.along).toBeCloseTo(pathLength(led) - 70, 6);
  });

  it('does not pass the hip of a side that ends above it', () => {
    const short = straightGore(120, 230, 190);
    const { passesVia } = leadSide(short, 0, 'after', { ...course, hipAlong: undefined });
    expect(passesVia).toBe(false);
  });
});
