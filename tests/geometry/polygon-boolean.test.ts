import { describe, expect, it } from 'vitest';
import { rotationAbout, transformPoint } from '../../core/geometry/affine';
import type { Point } from '../../core/geometry/point';
import { placeInRing, type Ring, ringArea } from '../../core/geometry/polygon';
import {
  type Areas,
  areasWithout,
  commonAreas,
  grownAreas,
  type UnsureAreas,
  unionOfAreas,
} from '../../core/geometry/polygon-boolean';
import { points, seededRandom } from './shapes';

const SQUARE = points([0, 0], [100, 0], [100, 100], [0, 100]);

function rings(answer: Areas | UnsureAreas): readonly Ring[] {
  if (answer.kind === 'unsure') throw new Error(`areas off by ${answer.areaOff}`);
  return answer.rings;
}
const area = (answer: Areas | UnsureAreas) => rings(answer).reduce((sum, ring) => sum + ringArea(ring), 0);

describe('unionOfAreas, commonAreas and areasWithout', () => {
  const other = points([60, 30], [150, 30], [150, 80], [60, 80]);

  it('measure two overlapping rectangles', () => {
    expect(area(unionOfAreas([SQUARE], [other]))).toBeCloseTo(10000 + 4500 - 2000, 3);
    expect(area(commonAreas([SQUARE], [other]))).toBeCloseTo(2000, 3);
    expect(area(areasWithout([SQUARE], [other]))).toBeCloseTo(8000, 3);
    expect(area(areasWithout([other], [SQUARE]))).toBeCloseTo(2500, 3);
  });

  it('cut a hole, its ring run the other way', () => {
    const hole = points([20, 10], [50, 10], [50, 70], [20, 70]);
    const cut = rings(areasWithout([SQUARE], [hole]));
    expect(cut.map((ring) => Math.round(ringArea(ring))).sort((a, b) => a - b)).toEqual([-1800, 10000]);
    expect(area(areasWithout(cut, [SQUARE]))).toBe(0);
    expect(area(unionOfAreas(cut, [hole]))).toBeCloseTo(10000, 3);
  });

  it('do not mind which way a ring runs, nor shared sides', () => {
    const beside = points([100, 100], [180, 100], [180, 0], [100, 0]);
    expect(rings(unionOfAreas([SQUARE], [beside])).length).toBe(1);
    expect(area(unionOfAreas([SQUARE], [beside]))).toBeCloseTo(18000, 3);
    expect(rings(commonAreas([SQUARE], [beside]))).toEqual([]);
  });

  it('count a ring that crosses itself as all it goes round', () => {
    const bow = points([0, 0], [60, 40], [60, 0], [0, 40]);
    expect(area(unionOfAreas([bow], []))).toBeCloseTo(1200, 3);
  });

  it('give nothing for nothing', () => {
    expect(rings(unionOfAreas([], []))).toEqual([]);
    expect(rings(commonAreas([SQUARE], []))).toEqual([]);
    expect(area(areasWithout([SQUARE], []))).toBeCloseTo(10000, 6);
  });

  it('agree with counting places, for 60 seeded pairs of ragged stars on a whole-millimetre grid', () => {
    const random = seededRandom(17);
    const star = (cx: number, cy: number): Point[] =>
      Array.from({ length: 12 }, (_, i) => {
        const [r, angle] = [20 + 60 * random(), (2 * Math.PI * i) / 12];
        return { x: Math.round(cx + r * Math.cos(angle)), y: Math.round(cy + r * Math.sin(angle)) };
      });
    let sure = 0;
    for (let trial = 0; trial < 60; trial++) {
      const [a, b] = [star(100, 90), star(130, 110)];
      const [both, common] = [unionOfAreas([a], [b]), commonAreas([a], [b])];
      if (both.kind === 'unsure' || common.kind === 'unsure') continue;
      sure++;
      expect(Math.abs(area(both) + area(common) - Math.abs(ringArea(a)) - Math.abs(ringArea(b)))).toBeLessThan(0.3);
      for (let k = 0; k < 40; k++) {
        const place = { x: 230 * random(), y: 200 * random() };
        const [inA, inB] = [placeInRing(a, place), placeInRing(b, place)];
        if (inA === 'boundary' || inB === 'boundary') continue;
        const inCommon = both && rings(common).filter((ring) => placeInRing(ring, place) === 'inside').length % 2 === 1;
        expect(inCommon).toBe(inA === 'inside' && inB === 'inside');
      }
    }
    expect(sure).toBe(60);
  });
});

describe('areas of whatever rings', () => {
  it('are finite and add up for specks, spikes, far-off and repeated corners', () => {
    const hostile = [
      points([5, 5]),
      points([5, 5], [5, 5], [5, 5]),
      points([0, 0], [50, 0], [20, 0]),
      points([1e6, 1e6], [1e6 + 30, 1e6], [1e6 + 30, 1e6 + 20]),
      points([0, 0], [1e-9, 0], [0, 1e-9]),
      points([0, 0], [40, 0], [40, 0], [40, 30], [0, 30], [0, 0]),
    ];
    for (const a of hostile) {
      for (const b of hostile) {
        for (const answer of [
          unionOfAreas([a], [b]),
          commonAreas([a], [b]),
          areasWithout([a], [b]),
          grownAreas([a], 3),
        ]) {
          expect(rings(answer).every((ring) => ring.every(({ x, y }) => Number.isFinite(x + y)))).toBe(true);
        }
      }
    }
  });
});

describe('grownAreas', () => {
  it('gives the areas of geometry for a square grown and shrunk by 10', () => {
    expect(area(grownAreas([SQUARE], 10))).toBeCloseTo(14400, 3);
    expect(Math.abs(area(grownAreas([SQUARE], 10, { corners: 'rounded' })) - 14314.159)).toBeLessThan(0.5);
    expect(area(grownAreas([SQUARE], -10))).toBeCloseTo(6400, 3);
    expect(rings(grownAreas([SQUARE], -51))).toEqual([]);
  });

  it('grows an L by 5 to 3,300 square millimetres, whichever way it is turned', () => {
    const ell = points([0, 0], [60, 0], [60, 20], [20, 20], [20, 60], [0, 60]);
    for (const angle of [0, 0.4, 2.2]) {
      const turn = rotationAbout({ x: 9, y: 4 }, angle);
      expect(Math.abs(area(grownAreas([ell.map((corner) => transformPoint(turn, corner))], 5)) - 3300)).toBeLessThan(
        0.05,
      );
    }
  });

  it('comes nearer to the round tube the finer its accuracy', () => {
    const miss = (accuracy: number) =>
      Math.abs(area(grownAreas([SQUARE], 25, { corners: 'rounded', accuracy })) - (10000 + 400 * 25 + Math.PI * 625));
    expect(miss(0.02)).toBeLessThan(miss(1) / 5);
  });

  it('splits a dumbbell in two and fills a hole that closes', () => {
    const dumbbell = points(
      [0, 0],
      [40, 0],
      [40, 17],
      [90, 17],
      [90, 0],
      [130, 0],
      [130, 40],
      [90, 40],
      [90, 23],
      [40, 23],
      [40, 40],
      [0, 40],
    );
    expect(rings(grownAreas([dumbbell], -4)).length).toBe(2);
    const hole = points([40, 40], [40, 55], [50, 55], [50, 40]);
    expect(rings(grownAreas([SQUARE, hole], 6)).length).toBe(1);
  });
});
