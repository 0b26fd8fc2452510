import { describe, expect, it } from 'vitest';
import { longestOpening, openingNeeded } from '../../core/fit/opening';
import type { GirthAtLevel } from '../../core/fit/round-body';
import type { EdgeRole, Piece } from '../../core/garment/piece';
import { traced } from '../shaping/traced';
import { figure, garmentOf } from './skirts';

/** A piece whose left side, run upwards last, is in two edges of 430 and 170 with these roles. */
function sideOf(name: string, lower: EdgeRole, upper: EdgeRole, more = 0): Piece {
  return traced(name, [
    [[0, 0], 'waist'],
    [[210, 0], 'seam'],
    [[240, 600 + more], 'hem'],
    [[0, 600 + more], lower],
    [[0, 170 + more], upper],
  ]);
}

function longestOf(...pieces: readonly Piece[]) {
  const { garment, ring } = garmentOf(pieces, figure);
  return longestOpening(garment, ring);
}

describe('longestOpening', () => {
  it('takes edges that follow one another as one opening, and the two sides of a slit as one, too', () => {
    const both = sideOf('front', 'opening', 'opening');
    expect(longestOf(both)).toEqual({ pieceId: both.id, edgeId: both.edges[3]?.id, length: 600 });
    const back = sideOf('back', 'seam', 'opening', 25);
    expect(longestOf(sideOf('front', 'seam', 'opening'), back)).toEqual({
      pieceId: back.id,
      edgeId: back.edges[4]?.id,
      length: 195,
    });
  });

  it('is none where no edge is named so', () => {
    expect(longestOf(sideOf('front', 'seam', 'seam'))).toBeUndefined();
  });
});

const level = (depth: number, total: number): GirthAtLevel => ({
  kind: 'measured',
  level: { id: `l${depth}`, girth: 'hip', depth: { kind: 'length', length: depth }, ease: 0 },
  pieces: [],
  depth,
  total,
  body: 900,
  wanted: 910,
  lap: 0,
  sides: [],
});

describe('openingNeeded', () => {
  it('lies between two levels as the hip between their girths', () => {
    // From 700 to 1000 over 200: 900 is two thirds of the way.
    expect(openingNeeded([level(200, 1000), level(0, 700)], 900)).toBeCloseTo(400 / 3, 9);
    expect(openingNeeded([level(0, 700), level(90, 800), level(200, 1000)], 900)).toBeCloseTo(145, 9);
  });

  it('is nothing where the top is wide enough, and the lowest level where none is', () => {
    expect(openingNeeded([level(0, 900), level(150, 900)], 900)).toBe(0);
    expect(openingNeeded([level(0, 700), level(210, 850)], 900)).toBe(210);
    expect(openingNeeded([], 900)).toBe(0);
    expect(openingNeeded([level(0, 0), level(130, 700), level(190, 760)], 900)).toBe(190);
  });
});
