import { describe, expect, it } from 'vitest';
import { type DiagramMap, diagramMap } from '../../core/diagram/diagram-map';
import { pageCheck } from '../../core/diagram/page-check';
import { ruledTruths } from '../../core/diagram/ruled-lines';
import type { Diagram, Quad, RuledLine } from '../../core/garment/diagram';
import { putRuledLine, removeRuledLine } from '../../core/garment/diagram-edits';
import type { Point } from '../../core/geometry/point';
import { seenBy } from './camera';
import { known, sampleDiagram, set } from './sample-diagram';

/** A page of 14 by 10 printed units, each 2 in at full size, seen aslant. */
const toPhoto = seenBy({
  focalPx: 2400,
  centre: { x: 1000, y: 1300 },
  tilt: [14, -9, 5],
  distance: 26,
  lookAt: { x: 7, y: 5 },
});
const UNIT = 50.8;

function mapOf(diagram: Diagram): DiagramMap {
  const map = diagramMap(diagram, set);
  if (map.kind !== 'map') throw new Error(map.why);
  return map;
}

const corners = [
  { x: 0, y: 0 },
  { x: 14, y: 0 },
  { x: 14, y: 10 },
  { x: 0, y: 10 },
].map(toPhoto) as unknown as Quad;

const squared = sampleDiagram({
  corners,
  knownLengths: [
    known('across', toPhoto({ x: 1, y: 9 }), toPhoto({ x: 13, y: 9 }), 12 * UNIT),
    known('down', toPhoto({ x: 13, y: 1 }), toPhoto({ x: 13, y: 9 }), 8 * UNIT),
  ],
});

/** A printed line from one place of the page to another, bowed by `bow` units in its middle. */
function printed(id: string, from: Point, to: Point, { bow = 0, squareTo }: { bow?: number; squareTo?: string } = {}) {
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  const places = Array.from({ length: 33 }, (_, k) => {
    const [t, out] = [k / 32, bow * (1 - (k / 16 - 1) ** 2)];
    return toPhoto({
      x: from.x + t * (to.x - from.x) - (out * (to.y - from.y)) / length,
      y: from.y + t * (to.y - from.y) + (out * (to.x - from.x)) / length,
    });
  });
  return { id, places, ...(squareTo === undefined ? {} : { squareTo }) } satisfies RuledLine;
}

const ruled = (...lines: RuledLine[]): Diagram => ({ ...squared, ruled: lines });

describe('lines that she says are straight or square', () => {
  it('are so where the print is, whichever way they run', () => {
    const [waist, side] = [
      printed('waist', { x: 2, y: 2 }, { x: 12, y: 4 }),
      printed('side', { x: 3, y: 9 }, { x: 4.4, y: 2 }, { squareTo: 'waist' }),
    ];
    const [first, second] = ruledTruths(ruled(waist, side), mapOf(squared));
    expect(first?.straight?.off).toBeLessThan(0.01);
    expect(first?.length).toBeCloseTo(Math.hypot(10, 2) * UNIT, 3);
    expect(first?.square).toBeUndefined();
    expect(second?.square?.off).toBeLessThan(0.01);
    expect(second?.square?.over).toBeCloseTo(Math.hypot(10, 2) * UNIT, 0);
  });

  it('tell by how much a bowed one is off, in mm at full size: half of the strip that holds it', () => {
    const bowed = printed('hem', { x: 2, y: 8 }, { x: 12, y: 7 }, { bow: 0.11 });
    const [found] = ruledTruths(ruled(bowed), mapOf(squared));
    expect(found?.straight?.off).toBeCloseTo((0.11 * UNIT) / 2, 2);
  });

  it('tell how far two are off square, over the longer of them', () => {
    // 7 units up and 1.4 - 0.3 aside instead of 1.4: a small turn from square.
    const waist = printed('waist', { x: 2, y: 2 }, { x: 12, y: 4 });
    const side = printed('side', { x: 3, y: 9 }, { x: 4.1, y: 2 }, { squareTo: 'waist' });
    const turn = Math.atan2(1.4, 7) - Math.atan2(1.1, 7);
    const [, found] = ruledTruths(ruled(waist, side), mapOf(squared));
    expect(found?.square?.turn).toBeCloseTo(turn, 4);
    expect(found?.square?.off).toBeCloseTo(Math.sin(turn) * Math.hypot(10, 2) * UNIT, 1);
  });

  it('say nothing of straightness where only the ends are known, and nothing at all beyond the horizon', () => {
    const ends = { ...printed('ends', { x: 2, y: 2 }, { x: 12, y: 4 }) };
    const two = { ...ends, places: [ends.places[0], ends.places.at(-1)] as Point[] };
    const away = { id: 'away', places: [corners[0], { x: 1000, y: 60_000 }] };
    const found = ruledTruths(ruled(two, away), mapOf(squared));
    expect(found.map(({ id }) => id)).toEqual(['ends']);
    expect(found[0]?.straight).toBeUndefined();
  });

  it('make the measure of the whole page, on a picture that is flat already too', () => {
    expect(pageCheck(squared, mapOf(squared))).toBeUndefined();
    const bowed = printed('hem', { x: 2, y: 8 }, { x: 12, y: 7 }, { bow: 0.11 });
    const plain = printed('waist', { x: 2, y: 2 }, { x: 12, y: 4 });
    const skew = printed('side', { x: 3, y: 9 }, { x: 4.4, y: 2 }, { squareTo: 'waist' });
    const worst = pageCheck(ruled(bowed, plain, skew), mapOf(squared))?.worst;
    // 0.055 units over 10.05, brought to the 14 that it was squared up by.
    expect(worst?.over).toBeCloseTo(14 * UNIT, 2);
    expect(worst?.off).toBeCloseTo(((0.055 * UNIT) / Math.hypot(10, 1)) * 14, 1);

    const scan = sampleDiagram({
      knownLengths: [known('a', { x: 100, y: 100 }, { x: 1900, y: 100 }, 900)],
      ruled: [
        { id: 'a', places: [0, 1, 2].map((k) => ({ x: 100 + 900 * k, y: k === 1 ? 204 : 200 })) },
        { id: 'b', places: [0, 1].map((k) => ({ x: 300 + 5 * k, y: 100 + 1000 * k })), squareTo: 'a' },
      ],
    });
    // Half a mm a pixel: 4 px of bow are 1 mm each way over 900 mm, 1 in 200 from square is more.
    const flat = pageCheck(scan, mapOf(scan));
    expect(flat?.checks[0]).toMatchObject({ kind: 'straight', off: expect.closeTo(1, 4) });
    expect(flat?.worst.off).toBeCloseTo(0.005 * 1300, 1);
  });

  it('are added, replaced and removed; what was square to a removed one is square to none', () => {
    const [a, b] = [
      { id: 'a', places: [corners[0], corners[1]] },
      { id: 'b', places: [corners[1], corners[2]], squareTo: 'a' },
    ];
    const both = putRuledLine(putRuledLine(squared, a), b);
    expect(both.ruled).toEqual([a, b]);
    expect(putRuledLine(both, { ...b, places: [corners[3], corners[2]] }).ruled?.[1]?.places[0]).toBe(corners[3]);
    const left = removeRuledLine(both, 'a');
    expect(left.ruled).toEqual([{ id: 'b', places: b.places }]);
    expect(removeRuledLine(left, 'b')).not.toHaveProperty('ruled');
  });
});
