import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { layFaults } from '../../core/cloth/lay-check';
import { bestLay, laidFor, layStep, startLay } from '../../core/cloth/lay-search';
import type { Lay, LayTask, ToLay } from '../../core/cloth/lay-task';
import { seededRandom } from '../../core/cloth/seeded-random';
import { FU_AREA, FU_BEST_LENGTH, fu, SHAPES0_AREA, SHAPES0_BEST_LENGTH, shapes0 } from './published-lays';

/** The published sets are some 40 units wide: the same share of an area as 0.01 mm² of a cloth 1 m wide. */
const SMALL = { area: 1e-5, distance: 1e-6 };

function laid(task: LayTask, steps: number, seed = 3): Lay {
  const lay = laidFor(task, { steps, random: seededRandom(seed) });
  if (!lay) throw new Error('a piece is too wide');
  return lay;
}

const rectangle = (wide: number, high: number) => [
  { x: 0, y: 0 },
  { x: wide, y: 0 },
  { x: wide, y: high },
  { x: 0, y: high },
];

const BOTH_WAYS = [{ turn: 0 }, { turn: Math.PI }];

describe('layStep(search) on published sets', () => {
  it('lays fu to within a tenth of the best published length, and no better than that', () => {
    const lay = laid(fu, 400);
    expect(layFaults(fu, lay, SMALL)).toEqual([]);
    expect(lay.length).toBeLessThan(FU_BEST_LENGTH * 1.1);
    expect(lay.length).toBeGreaterThan(FU_BEST_LENGTH * 0.9999);
    expect(FU_AREA / 38 / lay.length).toBeLessThan(0.9242);
  });

  it('lays shapes0 shorter than a greedy placing (70.996, ours, made apart), and no shorter than the best published length', () => {
    const lay = laid(shapes0, 120);
    expect(layFaults(shapes0, lay, SMALL)).toEqual([]);
    expect(lay.length).toBeLessThan(70.996);
    expect(lay.length).toBeGreaterThan(SHAPES0_BEST_LENGTH * 0.9999);
    expect(SHAPES0_AREA / 40 / lay.length).toBeLessThan(0.6999);
  });

  it('never makes the best lay longer, and gives the same lay for the same seed and steps', () => {
    const search = startLay(fu, seededRandom(11));
    if (search.kind !== 'search') throw new Error('fu goes across');
    while (search.doing.kind === 'first') layStep(search);
    let before = bestLay(search).length;
    for (let step = 0; step < 400; step++) {
      const said = layStep(search);
      const now = bestLay(search).length;
      if (said === 'better') expect(now).toBeLessThan(before);
      else expect(now).toBe(before);
      before = now;
    }
    expect(laid(fu, 400, 11)).toEqual(bestLay(search));
    expect(laid(fu, 400, 12)).not.toEqual(bestLay(search));
  });
});

describe('layStep(search) where nothing better comes', () => {
  it('begins again from where it began, and keeps the best lay', () => {
    const kite = [
      { x: 0, y: 90 },
      { x: 130, y: 0 },
      { x: 310, y: 90 },
      { x: 130, y: 170 },
    ];
    const task: LayTask = {
      ground: { across: 330, kept: [] },
      toLay: [{ id: 'kite', outline: kite, count: 3, stances: BOTH_WAYS }],
    };
    const search = startLay(task, seededRandom(2));
    if (search.kind !== 'search') throw new Error('kites go across');
    let gone = 0;
    let best = bestLay(search);
    for (let step = 0; search.roundsGone >= gone; step++) {
      expect(step).toBeLessThan(40_000);
      gone = search.roundsGone;
      best = bestLay(search);
      layStep(search);
    }
    expect(gone).toBeGreaterThan(6000);
    expect(search.reached.length).toBeGreaterThan(best.length);
    expect(bestLay(search)).toEqual(best);
    for (let step = 0; step < 2000; step++) layStep(search);
    expect(search.reached.length).toBeLessThan(search.begun.length);
    expect(bestLay(search).length).toBeLessThanOrEqual(best.length);
    expect(layFaults(task, bestLay(search))).toEqual([]);
  });
});

describe('startLay(task)', () => {
  const breadths: LayTask = {
    ground: { across: 914.4, kept: [] },
    toLay: [{ id: 'breadth', outline: rectangle(700, 914.4), count: 3, stances: BOTH_WAYS }],
  };

  it('lays breadths as wide as the cloth one after another, and says that nothing is shorter', () => {
    const search = startLay(breadths, seededRandom(1));
    if (search.kind !== 'search') throw new Error('they go across exactly');
    expect(bestLay(search).length).toBeCloseTo(2100, 6);
    expect(layStep(search)).toBe('shortest');
    expect(layFaults(breadths, bestLay(search))).toEqual([]);
  });

  it('says which pieces are too wide', () => {
    const narrow = { ...breadths, ground: { across: 900, kept: [] } };
    expect(startLay(narrow, seededRandom(1))).toEqual({ kind: 'not-across', ids: ['breadth'] });
  });

  it('says which pieces find no room on a fold across the cloth', () => {
    const half: ToLay = {
      id: 'half',
      outline: rectangle(300, 520),
      count: 2,
      stances: [{ turn: 0 }],
      onFold: 'across',
    };
    const folded: LayTask = { ground: { across: 900, kept: [] }, toLay: [half] };
    expect(startLay(folded, seededRandom(1))).toEqual({ kind: 'no-room-on-fold', ids: ['half'] });
    const wider: LayTask = { ...folded, ground: { across: 1050, kept: [] } };
    const lay = laid(wider, 20);
    expect(layFaults(wider, lay)).toEqual([]);
    expect(lay.length).toBe(300);
  });

  it('keeps pinned pieces where they are and lays the rest round them, clear of a flaw', () => {
    const flaw = rectangle(90, 70).map(({ x, y }) => ({ x: x + 310, y: y + 220 }));
    const gore = [
      { x: 0, y: 60 },
      { x: 600, y: 0 },
      { x: 600, y: 310 },
      { x: 0, y: 210 },
    ];
    const toLay: ToLay[] = [{ id: 'gore', outline: gore, count: 4, stances: BOTH_WAYS }];
    const pinned = [{ id: 'gore', copy: 2, stance: 1, at: { x: 123, y: 402 } }];
    const task: LayTask = { ground: { across: 760, kept: [flaw] }, toLay, pinned };
    const lay = laid(task, 200);
    expect(layFaults(task, lay)).toEqual([]);
    expect(lay.placed.find(({ copy }) => copy === 2)).toEqual(pinned[0]);
  });

  it('begins from a lay of hers where that is good, and takes one apart that overlaps', () => {
    const hers = laid(fu, 300, 5);
    const search = startLay(fu, seededRandom(6), { from: hers });
    if (search.kind !== 'search') throw new Error('fu goes across');
    expect(bestLay(search).length).toBeCloseTo(hers.length, 9);
    const heaped = {
      length: 40,
      placed: hers.placed.map((one) => ({ ...one, at: { x: one.at.x / 2, y: one.at.y / 3 } })),
    };
    const other = startLay(fu, seededRandom(6), { from: heaped });
    if (other.kind !== 'search') throw new Error('fu goes across');
    for (let step = 0; step < 100; step++) layStep(other);
    expect(layFaults(fu, bestLay(other), SMALL)).toEqual([]);
  });

  it('puts every piece on the same place of the repeat', () => {
    const toLay: ToLay[] = [
      { id: 'front', outline: rectangle(410, 230), count: 3, stances: [{ turn: 0 }], match: { x: 55, y: 17 } },
      { id: 'back', outline: rectangle(370, 190), count: 2, stances: BOTH_WAYS, match: { x: 20, y: 33 } },
    ];
    const task: LayTask = { ground: { across: 900, kept: [], repeat: { along: 130, across: 64 } }, toLay };
    const lay = laid(task, 40);
    expect(layFaults(task, lay)).toEqual([]);
    for (const { id, stance, at } of lay.placed) {
      const inPlace = id === 'front' ? 55 : stance === 0 ? 20 : 350;
      expect(Math.abs(((at.x + inPlace + 65) % 130) - 65)).toBeLessThan(1e-6);
    }
  });
});

describe('every lay', () => {
  /** A star of 5 to 9 corners round its middle: often hollow, never crossing itself. */
  const star = fc.array(fc.integer({ min: 40, max: 220 }), { minLength: 5, maxLength: 9 }).map((reach) =>
    reach.map((r, i) => ({
      x: r * Math.cos((2 * Math.PI * i) / reach.length),
      y: r * Math.sin((2 * Math.PI * i) / reach.length),
    })),
  );
  const stances = fc.constantFrom<ToLay['stances']>(
    [{ turn: 0 }],
    BOTH_WAYS,
    [{ turn: Math.PI / 4 }, { turn: -Math.PI / 4 }],
    [{ turn: 0 }, { turn: 0, over: 'mirrored' }],
    [{ turn: 0.03 }, { turn: -0.03 }, { turn: Math.PI }],
  );
  const half = fc.integer({ min: 60, max: 260 }).chain((wide) =>
    fc.integer({ min: 50, max: 190 }).map((high) => [
      { x: 0, y: 0 },
      { x: wide, y: 0 },
      { x: wide * 0.8, y: high },
      { x: wide * 0.3, y: high * 0.7 },
    ]),
  );

  it('is whole, on the cloth, clear of flaws, on the fold and without overlap', () => {
    const tasks = fc.record({
      stars: fc.array(fc.tuple(star, stances), { minLength: 1, maxLength: 4 }),
      halves: fc.array(half, { maxLength: 2 }),
      across: fc.integer({ min: 460, max: 760 }),
      flaw: star,
      repeat: fc.constantFrom(0, 90),
    });
    fc.assert(
      fc.property(tasks, fc.integer({ min: 1, max: 999 }), ({ stars, halves, across, flaw, repeat }, seed) => {
        const toLay: ToLay[] = [
          ...stars.map(([outline, ways], i) => ({ id: `star${i}`, outline, count: 2, stances: ways })),
          ...halves.map((outline, i): ToLay => {
            return {
              id: `half${i}`,
              outline,
              count: 1,
              stances: [{ turn: 0 }, { turn: 0, over: 'mirrored' }],
              onFold: 'along',
            };
          }),
        ];
        const kept = [flaw.map(({ x, y }) => ({ x: x * 0.3 + 500, y: y * 0.3 + across / 2 }))];
        const ground = { across, kept, ...(repeat > 0 ? { repeat: { along: repeat, across: 0 } } : {}) };
        const task: LayTask = { ground, toLay };
        const lay = laid(task, 12, seed);
        expect(layFaults(task, lay)).toEqual([]);
      }),
      { seed: 7, numRuns: 40 },
    );
  });
});
