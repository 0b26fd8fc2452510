import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { distance, type Point } from '../../core/geometry/point';
import { fittedBow, type Side } from '../../core/picture/curl-side';
import { flattenedPage, type PageMap, pageToPhoto, photoToPage } from '../../core/picture/page-map';
import { type Sides, straightSides } from '../../core/picture/page-outline';
import { type Curl, FLAT, type SeenPage, seenPage, type View } from './photo-view';

const [ACROSS, DOWN] = [152, 210];
const size = { width: 1200, height: 1600 };
const options = { centre: { x: 600, y: 800 }, longSide: 1600 };

function view(curl: Curl, tilt: View['tilt'], focalPx = 1300): View {
  return { ...size, focalPx, tilt, share: 0.85, curl };
}

/** The sides of a page as the camera sees them, told by polynomials. */
function trueSides({ toPhoto }: SeenPage): Sides {
  const corners = [
    [0, 0],
    [ACROSS, 0],
    [ACROSS, DOWN],
    [0, DOWN],
  ] as const;
  return corners.map((a, k): Side => {
    const b = corners[(k + 1) % 4] as readonly [number, number];
    const seen = (t: number) => toPhoto({ x: a[0] + (b[0] - a[0]) * t, y: a[1] + (b[1] - a[1]) * t });
    const [from, to] = [seen(0), seen(1)];
    const [dx, dy] = [to.x - from.x, to.y - from.y];
    const square = dx * dx + dy * dy;
    const places = Array.from({ length: 161 }, (_, j) => {
      const p = seen(j / 160);
      return {
        along: ((p.x - from.x) * dx + (p.y - from.y) * dy) / square,
        off: ((p.x - from.x) * dy - (p.y - from.y) * dx) / Math.sqrt(square),
        weight: 1,
      };
    });
    return { from, to, bow: fittedBow(places, 11, 0.05)?.bow ?? [0] };
  }) as unknown as Sides;
}

function mapped(sides: Sides, focalPx?: number): PageMap {
  const map = flattenedPage(sides, { ...options, ...(focalPx === undefined ? {} : { focalPx }) });
  if (map.kind !== 'page-map') throw new Error(map.why);
  return map;
}

/** How far places of the page come out wrong, in mm, when its size is said both ways. */
function worstError(map: PageMap, { toPhoto }: SeenPage): number {
  const places = [0, 0.11, 0.37, 0.5, 0.83, 1].flatMap((u) => [0, 0.29, 0.71, 1].map((v) => ({ u, v })));
  return Math.max(
    ...places.map(({ u, v }) => {
      const flat = photoToPage(map, toPhoto({ x: u * ACROSS, y: v * DOWN })) as Point;
      return Math.hypot((flat.x / map.across - u) * ACROSS, (flat.y / map.down - v) * DOWN);
    }),
  );
}

const curls = fc.record({
  rulings: fc.constantFrom('down' as const, 'across' as const),
  rises: fc.double({ min: 0.12, max: 0.5, noNaN: true }),
  falls: fc.double({ min: 0.02, max: 0.15, noNaN: true }),
});
const tilts = fc.tuple(
  fc.double({ min: -22, max: 22, noNaN: true }),
  fc.double({ min: -22, max: 22, noNaN: true }),
  fc.double({ min: -12, max: 12, noNaN: true }),
);

describe('flattenedPage', () => {
  it('lays a bent page flat to a fiftieth of a mm and its proportion to a thousandth, the lens being known', () => {
    fc.assert(
      fc.property(curls, tilts, (curl, tilt) => {
        const seen = seenPage(ACROSS, DOWN, view(curl, tilt));
        const map = mapped(trueSides(seen), 1300);
        expect(map.model).toBe('cylinder');
        expect(worstError(map, seen)).toBeLessThan(0.02);
        expect(Math.abs((map.across / map.down) * (DOWN / ACROSS) - 1)).toBeLessThan(1e-3);
      }),
      { numRuns: 15, seed: 7 },
    );
  });

  it('comes within half a mm on a page of 210 mm when the lens must be guessed', () => {
    for (const focalPx of [1150, 1300, 1500]) {
      const seen = seenPage(ACROSS, DOWN, view({ rulings: 'down', rises: 0.4, falls: 0.08 }, [-9, 11, 5], focalPx));
      const map = mapped(trueSides(seen));
      expect(map.focalFrom).toBe('guessed');
      expect(worstError(map, seen)).toBeLessThan(0.5);
    }
  });

  it('reads lens and proportion off a flat page tilted both ways', () => {
    const seen = seenPage(ACROSS, DOWN, view(FLAT, [18, -16, 4], 1500));
    const map = mapped(straightSides(trueSides(seen).map(({ from }) => from) as never));
    expect(map.model).toBe('flat');
    expect(worstError(map, seen)).toBeLessThan(1e-6);
    expect(Math.abs(map.focalPx / 1500 - 1)).toBeLessThan(0.06);
    expect(Math.abs((map.across / map.down) * (DOWN / ACROSS) - 1)).toBeLessThan(3e-3);
  });

  it('goes to the page and back to the same place, and keeps the order of places', () => {
    const share = fc.double({ min: 0.02, max: 0.95, noNaN: true });
    fc.assert(
      fc.property(curls, tilts, share, share, (curl, tilt, u, v) => {
        const map = mapped(trueSides(seenPage(ACROSS, DOWN, view(curl, tilt))), 1300);
        const place = { x: u * map.across, y: v * map.down };
        const photo = pageToPhoto(map, place);
        expect(distance(photoToPage(map, photo) as Point, place)).toBeLessThan(1e-6);
        const further = photoToPage(map, pageToPhoto(map, { x: place.x + 0.03 * map.across, y: place.y }));
        expect(further?.x).toBeGreaterThan(place.x);
      }),
      { numRuns: 15, seed: 11 },
    );
  });

  it('draws all four sides straight where all four bow', () => {
    const corners = [
      { x: 200, y: 180 },
      { x: 1000, y: 230 },
      { x: 960, y: 1400 },
      { x: 170, y: 1350 },
    ] as const;
    const bows = [
      [20, 0, -20],
      [14, 5, -14, -5],
      [-17, 0, 17],
      [25, 0, -25],
    ];
    const sides = straightSides(corners).map((side, k) => ({ ...side, bow: bows[k] as number[] })) as unknown as Sides;
    const map = mapped(sides);
    expect(map.model).toBe('coons');
    for (const t of [0.1, 0.45, 0.8]) {
      const [top, right, bottom, left] = sides.map(({ from, to, bow }) => {
        const x = 2 * t - 1;
        const off = [1, x, (3 * x * x - 1) / 2, (5 * x ** 3 - 3 * x) / 2].reduce(
          (sum, p, k) => sum + p * (bow[k] ?? 0),
          0,
        );
        const length = distance(from, to);
        return photoToPage(map, {
          x: from.x + (to.x - from.x) * t + ((to.y - from.y) / length) * off,
          y: from.y + (to.y - from.y) * t - ((to.x - from.x) / length) * off,
        }) as Point;
      }) as [Point, Point, Point, Point];
      expect(Math.abs(top.y)).toBeLessThan(0.05);
      expect(Math.abs(bottom.y - map.down)).toBeLessThan(0.05);
      expect(Math.abs(left.x)).toBeLessThan(0.05);
      expect(Math.abs(right.x - map.across)).toBeLessThan(0.05);
      const back = pageToPhoto(map, { x: t * map.across, y: t * map.down });
      expect(distance(photoToPage(map, back) as Point, { x: t * map.across, y: t * map.down })).toBeLessThan(1e-6);
    }
  });

  it('refuses sides that cross and corners without room', () => {
    const bent = straightSides([
      { x: 200, y: 500 },
      { x: 1000, y: 500 },
      { x: 1000, y: 560 },
      { x: 200, y: 560 },
    ]);
    const crossing = bent.map((side, k) => (k === 0 ? { ...side, bow: [-90, 0, 90] } : side)) as unknown as Sides;
    expect(flattenedPage(crossing, options)).toMatchObject({ kind: 'not-flattened' });
    const bowTie = straightSides([
      { x: 200, y: 200 },
      { x: 900, y: 1200 },
      { x: 900, y: 200 },
      { x: 200, y: 1200 },
    ]);
    expect(flattenedPage(bowTie, options)).toEqual({ kind: 'not-flattened', why: 'sides-cross' });
    const speck = straightSides([
      { x: 5, y: 5 },
      { x: 12, y: 5 },
      { x: 12, y: 11 },
      { x: 5, y: 11 },
    ]);
    expect(flattenedPage(speck, options)).toEqual({ kind: 'not-flattened', why: 'no-room' });
  });
});
