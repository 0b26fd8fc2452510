import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { beginTouching, type DraggedAmong, touchingPlace } from '../../core/cloth/touching';
import { boxOfPoints } from '../../core/geometry/bounds';
import type { Point } from '../../core/geometry/point';
import { type Ring, ringArea } from '../../core/geometry/polygon';
import { commonAreas, grownAreas } from '../../core/geometry/polygon-boolean';
import { rectangle, star, yoke } from './rings';

const moved = (ring: Ring, { x, y }: Point): Ring => ring.map((point) => ({ x: point.x + x, y: point.y + y }));

/** The piece with the top left of its box there. */
function laidAt(ring: Ring, { x, y }: Point): Ring {
  const box = boxOfPoints(ring);
  return moved(ring, { x: x - (box?.minX ?? 0), y: y - (box?.minY ?? 0) });
}

function shared(a: Ring, b: Ring): number {
  const areas = commonAreas([a], [b]);
  if (areas.kind === 'unsure') throw new Error('the areas do not add up');
  return Math.abs(areas.rings.reduce((sum, ring) => sum + ringArea(ring), 0));
}

const place = (among: Partial<DraggedAmong> & Pick<DraggedAmong, 'ring'>, wanted: Point, reach: number) =>
  touchingPlace(beginTouching({ others: [], across: 1000, ...among }), wanted, reach);

const near = ({ x, y }: Point, to: Point) => {
  expect(Math.abs(x - to.x)).toBeLessThan(0.001);
  expect(Math.abs(y - to.y)).toBeLessThan(0.001);
};

describe('touchingPlace(touching, wanted, reach)', () => {
  const ring = rectangle(200, 110);

  it('leaves a piece where she has it while nothing is near', () => {
    expect(place({ ring }, { x: 300, y: 400 }, 12)).toEqual({ x: 300, y: 400 });
    const others = [moved(rectangle(90, 90), { x: 530, y: 400 })];
    expect(place({ ring, others }, { x: 300, y: 400 }, 12)).toEqual({ x: 300, y: 400 });
  });

  it('brings it to the edges of the cloth and to the end of what is at hand', () => {
    expect(place({ ring }, { x: 7, y: 400 }, 12)).toEqual({ x: 0, y: 400 });
    expect(place({ ring }, { x: 400, y: -9 }, 12)).toEqual({ x: 400, y: 0 });
    expect(place({ ring }, { x: 400, y: 883 }, 12)).toEqual({ x: 400, y: 890 });
    expect(place({ ring }, { x: 5, y: 6 }, 12)).toEqual({ x: 0, y: 0 });
    expect(place({ ring, end: 1500 }, { x: 1311, y: 300 }, 12)).toEqual({ x: 1300, y: 300 });
  });

  it('lays side on side, from before and from within, and slides along', () => {
    const others = [moved(rectangle(90, 400), { x: 500, y: 100 })];
    near(place({ ring, others }, { x: 292, y: 260 }, 12), { x: 300, y: 260 });
    near(place({ ring, others }, { x: 309, y: 261 }, 12), { x: 300, y: 261 });
    // Over it by more than the reach she may carry it on.
    expect(place({ ring, others }, { x: 340, y: 262 }, 12)).toEqual({ x: 340, y: 262 });
  });

  it('goes to the corner where it touches two', () => {
    const others = [moved(rectangle(90, 400), { x: 500, y: 100 }), moved(rectangle(200, 60), { x: 300, y: 100 })];
    near(place({ ring, others }, { x: 293, y: 168 }, 14), { x: 300, y: 160 });
  });

  it('lies in a hollow of a true outline, where its box would overlap', () => {
    const big = yoke.map(({ x, y }) => ({ x: 50 * x, y: 50 * y }));
    const small = rectangle(210, 120);
    near(place({ ring: small, others: [big] }, { x: 190, y: 124 }, 15), { x: 190, y: 130 });
    near(place({ ring: small, others: [big] }, { x: 157, y: 124 }, 15), { x: 150, y: 130 });
  });

  it('keeps a piece on the fold and slides it along to the next', () => {
    const slant: Ring = [
      { x: 600, y: 0 },
      { x: 900, y: 0 },
      { x: 900, y: 200 },
      { x: 500, y: 200 },
    ];
    const found = place({ ring, others: [slant], onFold: 'along' }, { x: 340, y: 33 }, 20);
    near(found, { x: 345, y: 0 });
    expect(place({ ring, onFold: 'along' }, { x: 700, y: 33 }, 20)).toEqual({ x: 700, y: 0 });
    expect(place({ ring, onFold: 'across' }, { x: 40, y: 333 }, 20)).toEqual({ x: 0, y: 333 });
  });

  it('takes a slanting side for what it is and not for its box', () => {
    const slope = Math.atan(1 / 2);
    const wedge: Ring = [
      { x: 0, y: 500 },
      { x: 800, y: 100 },
      { x: 800, y: 500 },
    ];
    // The lower right corner of the piece comes to the slope, 6 mm off it.
    const corner = { x: 400 - 6 * Math.sin(slope), y: 300 - 6 * Math.cos(slope) };
    near(place({ ring, others: [wedge] }, { x: corner.x - 200, y: corner.y - 110 }, 12), { x: 200, y: 190 });
  });

  it('never lets what it moves overlap, goes no further than the reach, and then touches something', () => {
    const spot = fc.record({ x: fc.integer({ min: 0, max: 900 }), y: fc.integer({ min: 0, max: 700 }) });
    let moves = 0;
    fc.assert(
      fc.property(star, fc.array(fc.tuple(star, spot), { minLength: 1, maxLength: 4 }), spot, (piece, around, at) => {
        const others = around.map(([other, to]) => laidAt(other, to));
        const reach = 40;
        const found = place({ ring: piece, others, across: 1300 }, at, reach);
        expect(Math.hypot(found.x - at.x, found.y - at.y)).toBeLessThanOrEqual(reach + 1e-9);
        if (found.x === at.x && found.y === at.y) return;
        moves++;
        const lies = laidAt(piece, found);
        for (const other of others) expect(shared(lies, other)).toBeLessThan(0.01);
        const grown = grownAreas([lies], 0.01);
        const box = boxOfPoints(lies);
        const atEdge = Math.min(box?.minX ?? 1, box?.minY ?? 1, 1300 - (box?.maxY ?? 0)) < 0.01;
        const touches = grown.kind === 'areas' && others.some((other) => shared(grown.rings[0] ?? [], other) > 0);
        expect(atEdge || touches).toBe(true);
      }),
      { numRuns: 300 },
    );
    expect(moves).toBeGreaterThan(60);
  });

  it('finds places that fit between others wherever there is one as near as a blind search finds', () => {
    const spot = fc.record({ x: fc.integer({ min: 0, max: 500 }), y: fc.integer({ min: 0, max: 400 }) });
    fc.assert(
      fc.property(star, fc.array(fc.tuple(star, spot), { minLength: 2, maxLength: 3 }), spot, (piece, around, at) => {
        const others = around.map(([other, to]) => laidAt(other, to));
        const reach = 40;
        const isFree = (where: Point) => {
          const box = boxOfPoints(laidAt(piece, where));
          if (!box || box.minX < 0 || box.minY < 0 || box.maxY > 1300) return false;
          return others.every((other) => shared(laidAt(piece, where), other) === 0);
        };
        if (isFree(at)) return;
        const found = place({ ring: piece, others, across: 1300 }, at, reach);
        const stays = found.x === at.x && found.y === at.y;
        for (let angle = 0; angle < 6.28; angle += 0.79) {
          const where = { x: at.x + (reach - 1) * Math.cos(angle), y: at.y + (reach - 1) * Math.sin(angle) };
          if (isFree(where)) expect(stays).toBe(false);
        }
      }),
      { numRuns: 100 },
    );
  });
});
