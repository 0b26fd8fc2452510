import { describe, expect, it } from 'vitest';
import { type SeamTakenIn, takeInSeam } from '../../core/fit/take-in-seam';
import type { Garment } from '../../core/garment/garment';
import { outlineOf } from '../../core/garment/outline';
import type { Seam } from '../../core/garment/seam';
import { nearestOnPath, pathAtLength, pathLength } from '../../core/geometry/path';
import { traced } from '../shaping/traced';
import { figure, garmentOf } from './skirts';

/** Front and back whose sides are alike and drawn opposite ways round. */
const front = traced('front', [
  [[0, 0], 'waist'],
  [[210, 0], 'seam'],
  [[300, 660], 'hem'],
  [[0, 660], 'fold'],
]);
const back = traced('back', [
  [[1000, 0], 'waist'],
  [[1190, 0], 'fold'],
  [[1190, 660], 'hem'],
  [[910, 660], 'seam'],
]);
const seam: Seam = {
  id: 's',
  name: 'Side',
  one: [{ pieceId: front.id, edgeId: front.edges[1]?.id ?? '' }],
  other: [{ pieceId: back.id, edgeId: back.edges[3]?.id ?? '' }],
  ease: 0,
  way: 'opposite',
};
const before: Garment = { ...garmentOf([front, back], figure).garment, seams: [seam] };
const length = pathLength(outlineOf(front).edges[1] ?? []);

function taken(wish: SeamTakenIn, of: Seam = seam): Garment {
  const made = takeInSeam({ ...before, seams: [of] }, of, wish);
  if ('why' in made) throw new Error(made.why);
  return made;
}

/** How far in the side of each piece lies from its old one, `along` mm down from the waist. */
function movedIn(garment: Garment, along: number): readonly [number, number] {
  const at = (index: number, edge: number, place: number) => {
    const old = outlineOf(before.pieces[index] as typeof front).edges[edge] ?? [];
    const now = outlineOf(garment.pieces[index] as typeof front).edges[edge] ?? [];
    return nearestOnPath(now, pathAtLength(old, place).point).distance;
  };
  return [at(0, 1, along), at(1, 3, length - along)];
}

describe('takeInSeam', () => {
  it.each([
    [0.5, 6, 6],
    [0.7, 8.4, 3.6],
    [1, 12, 0],
  ])('shares 12 mm as asked: %f of it on the first side, at the places that meet', (shareOfOne, one, other) => {
    const [a, b] = movedIn(taken({ pins: [{ along: 230, by: 12 }], shareOfOne }), 230);
    expect(a).toBeCloseTo(one, 1);
    expect(b).toBeCloseTo(other, 1);
  });

  it('tapers to nothing, and both sides keep one length to a twentieth of a millimetre when shared evenly', () => {
    const wish = {
      pins: [
        { along: 0, by: 14 },
        { along: 190, by: 0 },
      ],
    };
    const made = taken(wish);
    const [a, b] = movedIn(made, 400);
    expect(Math.max(a, b)).toBeLessThan(0.1);
    const [one, other] = [made.pieces[0], made.pieces[1]].map((piece, i) =>
      pathLength(outlineOf(piece as typeof front).edges[i === 0 ? 1 : 3] ?? []),
    );
    expect(Math.abs((one ?? 0) - (other ?? 9))).toBeLessThan(0.05);
  });

  it('lets out with an amount less than nothing', () => {
    const out = taken({ pins: [{ along: 230, by: -10 }] }).pieces[0] as typeof front;
    expect(pathAtLength(outlineOf(out).edges[1] ?? [], 230).point.x).toBeGreaterThan(
      pathAtLength(outlineOf(front).edges[1] ?? [], 230).point.x + 4,
    );
  });

  it('takes an edge sewn to its own mirror image once, by half', () => {
    const mirrored: Seam = { ...seam, other: seam.one };
    const made = taken({ pins: [{ along: 230, by: 12 }], shareOfOne: 0.9 }, mirrored);
    expect(movedIn(made, 230)[0]).toBeCloseTo(6, 1);
    expect(made.pieces[1]).toBe(back);
  });

  it('says why not', () => {
    const gone: Seam = { ...seam, one: [{ pieceId: 'gone', edgeId: 'gone' }] };
    expect(takeInSeam(before, gone, { pins: [] })).toEqual({ kind: 'seam-not-taken-in', why: 'no-seam' });
    expect(takeInSeam(before, seam, { pins: [] })).toEqual({ kind: 'seam-not-taken-in', why: 'no-pins' });
  });
});
