import { describe, expect, it } from 'vitest';
import {
  bowOf,
  cornerBetween,
  fittedBow,
  placesOn,
  sideAt,
  sideThrough,
  simplestBow,
  withEnds,
} from '../../core/picture/curl-side';

const places = (off: (along: number) => number) =>
  Array.from({ length: 60 }, (_, k) => ({ along: (k + 0.5) / 60, off: off((k + 0.5) / 60), weight: 1 }));

describe('a bow through places', () => {
  it('is found although every sixth place is far off', () => {
    const wanted = (t: number) => 7 + 11 * t - 20 * t * t;
    const spoiled = places(wanted).map((each, k) => (k % 6 === 2 ? { ...each, off: each.off + 30 + k } : each));
    const fit = fittedBow(spoiled, 2, 0.1);
    const side = { from: { x: 0, y: 0 }, to: { x: 100, y: 0 }, bow: fit?.bow ?? [] };
    for (const t of [0, 0.3, 1]) expect(sideAt(side, t).y).toBeCloseTo(-wanted(t), 6);
    expect(fit?.agree).toBeCloseTo(50 / 60, 6);
  });

  it('takes the lowest degree that no higher one betters', () => {
    expect(
      simplestBow(
        places((t) => 3 - 8 * t),
        9,
        0.2,
      )?.bow,
    ).toHaveLength(2);
    expect(
      simplestBow(
        places((t) => 40 * t ** 3),
        9,
        0.2,
      )?.bow,
    ).toHaveLength(4);
    expect(
      simplestBow(
        places((t) => 40 * t ** 3),
        2,
        0.2,
      )?.bow,
    ).toHaveLength(3);
  });

  it('is nothing for too few places', () => {
    expect(fittedBow(places(() => 0).slice(0, 5), 2, 0.1)).toBeUndefined();
  });
});

describe('a side', () => {
  const side = { from: { x: 10, y: 20 }, to: { x: 110, y: 95 }, bow: [4, 3, -2] };

  it('bows to the left of its way as it is seen', () => {
    const straight = { from: { x: 0, y: 50 }, to: { x: 80, y: 50 }, bow: [6] };
    expect(sideAt(straight, 0.25)).toEqual({ x: 20, y: 44 });
    // A circle's arc of sagitta 9 nearly: a parabola of that height, off its own chord.
    expect(bowOf({ ...straight, bow: [6, 0, -6] })).toBeCloseTo(9, 6);
  });

  it('is the same run told from other ends', () => {
    const [from, to] = [sideAt(side, 0.02), sideAt(side, 0.97)];
    const told = withEnds(side, from, to);
    for (const t of [0.1, 0.5, 0.8]) {
      const p = sideAt(told, t);
      const least = Math.min(
        ...Array.from({ length: 4001 }, (_, k) => {
          const q = sideAt(side, k / 4000);
          return Math.hypot(p.x - q.x, p.y - q.y);
        }),
      );
      expect(least).toBeLessThan(0.05);
    }
  });

  it('meets the next one where both run', () => {
    // The parabola y = -5 P2(x / 50 - 1), and an upright that leans by 2 in 100.
    const level = { from: { x: 0, y: 0 }, to: { x: 100, y: 0 }, bow: [0, 0, 5] };
    const upright = { from: { x: 99, y: -8 }, to: { x: 101, y: 92 }, bow: [0] };
    const corner = cornerBetween(level, upright);
    expect(corner?.y).toBeCloseTo(-2.5 * (3 * (2 * (corner?.x ?? 0) * 0.01 - 1) ** 2 - 1), 6);
    expect(corner?.x).toBeCloseTo(99 + ((corner?.y ?? 0) + 8) * 0.02, 6);
    const alike = { from: { x: 100, y: -5 }, to: { x: 200, y: -4 }, bow: [0] };
    expect(cornerBetween({ ...level, bow: [5] }, alike)).toBeUndefined();
  });
});

describe('a side through places', () => {
  const bowed = { from: { x: 31, y: 470 }, to: { x: 612, y: 391 }, bow: [6, -2.5, 9, 1.5, -3, 1, 0, 0.4] };
  const side = withEnds(bowed, sideAt(bowed, 0), sideAt(bowed, 1));

  it('is the side its own places were taken from, of any degree', () => {
    const places = placesOn(side);
    expect(places).toHaveLength(6);
    const again = sideThrough(side.from, side.to, places);
    for (const along of [0, 0.07, 0.31, 0.5, 0.83, 1]) {
      const [a, b] = [sideAt(side, along), again ? sideAt(again, along) : { x: 0, y: 0 }];
      // Told from other ends, a side is a polynomial again only to a part of a pixel this small.
      expect(Math.hypot(a.x - b.x, a.y - b.y)).toBeLessThan(1e-3);
    }
  });

  it('passes through every place she sets, and through both corners', () => {
    const set = [
      { x: 210, y: 455 },
      { x: 377, y: 398 },
    ];
    const through = sideThrough(side.from, side.to, set);
    if (!through) throw new Error('the places follow one another');
    for (const place of [side.from, ...set, side.to]) {
      const off = Array.from({ length: 4001 }, (_, k) => sideAt(through, k / 4000));
      expect(Math.min(...off.map(({ x, y }) => Math.hypot(x - place.x, y - place.y)))).toBeLessThan(0.2);
    }
  });

  it('is none where places run back or lie on one another', () => {
    const [a, b] = [
      { x: 210, y: 455 },
      { x: 377, y: 398 },
    ];
    expect(sideThrough(side.from, side.to, [b, a])).toBeUndefined();
    expect(sideThrough(side.from, side.to, [a, { ...a, y: a.y + 3 }])).toBeUndefined();
  });
});
