import { describe, expect, it } from 'vitest';
import { layFaults } from '../../core/cloth/lay-check';
import { laidFor } from '../../core/cloth/lay-search';
import type { LayTask, ToLay } from '../../core/cloth/lay-task';
import { joinedParts, joinLine, joinsForWidth, piecedAt, piecedTask, piecingToFit } from '../../core/cloth/piecing';
import { seededRandom } from '../../core/cloth/seeded-random';
import { boxOfPoints } from '../../core/geometry/bounds';
import { ringArea } from '../../core/geometry/polygon';

const rectangle = (wide: number, high: number) => [
  { x: 0, y: 0 },
  { x: wide, y: 0 },
  { x: wide, y: high },
  { x: 0, y: high },
];

describe('piecedAt(piece, at, allowance)', () => {
  it('cuts a piece in two along the grain, each part with the allowance', () => {
    const piecing = piecedAt({ id: 'a', outline: rectangle(700, 400) }, 130, 15);
    const areas = piecing?.parts.map((part) => Math.abs(ringArea(part)));
    expect(areas?.[0]).toBeCloseTo(700 * 145, 2);
    expect(areas?.[1]).toBeCloseTo(700 * 285, 2);
  });

  it('refuses a piecing narrower than its seam, and a join that would make three parts', () => {
    expect(piecedAt({ id: 'a', outline: rectangle(700, 400) }, 20, 15)).toBeUndefined();
    const forked = [
      { x: 0, y: 0 },
      { x: 200, y: 0 },
      { x: 300, y: 250 },
      { x: 400, y: 0 },
      { x: 600, y: 0 },
      { x: 600, y: 400 },
      { x: 0, y: 400 },
    ];
    expect(piecedAt({ id: 'a', outline: forked }, 100, 10)).toBeUndefined();
    expect(piecedAt({ id: 'a', outline: forked }, 320, 10)).toBeDefined();
  });
});

describe('joinsForWidth(piece, across, allowance)', () => {
  it('leaves the larger part just as wide as the cloth', () => {
    const joins = joinsForWidth({ id: 'a', outline: rectangle(700, 500) }, 420, 12);
    expect(joins.map(({ at }) => at)).toEqual([408, 92]);
    const [larger] = joins[0]?.parts ?? [];
    expect(boxOfPoints(larger ?? [])?.maxY).toBeCloseTo(420, 3);
    expect(joinsForWidth({ id: 'a', outline: rectangle(700, 500) }, 500, 12)).toEqual([]);
    expect(joinsForWidth({ id: 'a', outline: rectangle(700, 500) }, 200, 12)).toEqual([]);
  });
});

describe('piecingToFit(task, lay, options)', () => {
  it('finds a join that makes three breadths go on the length of two', () => {
    // Two of 330 fill 660 of 900 across; 240 is left over both lengths, room for another in two parts with their seams.
    const piece: ToLay = { id: 'a', outline: rectangle(1000, 330), count: 4, stances: [{ turn: 0 }] };
    const wider: ToLay = { ...piece, id: 'b', outline: rectangle(1000, 350), count: 1 };
    const task: LayTask = { ground: { across: 900, kept: [] }, toLay: [piece, wider] };
    const long = laidFor(task, { steps: 5, random: seededRandom(1) });
    if (!long) throw new Error('it goes across');
    expect(long.length).toBeGreaterThan(2999);
    const options = { lengthAtHand: 2000, allowance: 12, steps: 40, random: seededRandom(4) };
    const found = piecingToFit(task, long, options);
    expect(['a', 'b']).toContain(found?.piecing.id);
    expect(found?.lay.length).toBeLessThanOrEqual(2000);
    expect(found && layFaults(found.task, found.lay)).toEqual([]);
    expect(piecingToFit(task, long, { ...options, lengthAtHand: 1500, steps: 3 })).toBeUndefined();
  });
});

describe('joinedParts(piece, joins)', () => {
  const left: ToLay = { id: 'a', outline: rectangle(700, 400), count: 1, stances: [{ turn: 0 }] };
  const right: ToLay = { ...left, id: 'a/mirrored', outline: rectangle(700, 400).map(({ x, y }) => ({ x, y: -y })) };
  const join = { id: 'a', at: 300, allowance: 12 };

  it('joins both hands, each at the same place of its own', () => {
    const task = piecedTask({ ground: { across: 500, kept: [] }, toLay: [left, right] }, join);
    expect(task.toLay.map(({ id }) => id)).toEqual(['a', 'a/pieced', 'a/mirrored', 'a/mirrored/pieced']);
    const high = task.toLay.map(({ outline }) => {
      const box = boxOfPoints(outline);
      return Math.round((box?.maxY ?? 0) - (box?.minY ?? 0));
    });
    expect(high).toEqual([312, 112, 312, 112]);
    expect(joinedParts({ ...left, id: 'b' }, [join])).toHaveLength(1);
  });

  it('shows the join as a line across each part, the allowance away from its cut side', () => {
    const parts = [left, right].flatMap((piece) => joinedParts(piece, [join]));
    expect(parts.map((part) => joinLine(part, [join]))).toEqual(
      [300, 300, -300, -300].map((y) => [
        { x: 0, y },
        { x: 700, y },
      ]),
    );
    expect(joinLine({ ...left, id: 'b' }, [join])).toBeUndefined();
  });
});
