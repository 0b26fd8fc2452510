import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { differencesOf } from '../../core/compare/differences';
import { laidOver, turnedOver } from '../../core/compare/laid-over';
import { mapPiece } from '../../core/garment/move-piece';
import { rectanglePiece } from '../../core/garment/new-piece';
import type { Piece } from '../../core/garment/piece';
import {
  type Affine,
  composeAffine,
  IDENTITY,
  reflectionIn,
  rotationAbout,
  transformPoint,
  translation,
} from '../../core/geometry/affine';
import { edgeLength } from '../../core/seams/edge-length';
import { takeIn } from '../../core/shaping/take-in';
import { idsInOrder, lindenPanel } from '../garment/linden';

const [WIDE, DEEP] = [290, 510];

/** A rectangle: top (0), right side (1), bottom (2), left side (3). */
const plain = rectanglePiece(
  { x: 13, y: -7 },
  { across: WIDE, down: DEEP },
  {
    newId: idsInOrder(),
    name: 'plain',
  },
) as Piece;

/** The rectangle with its right side let out at the top and taken in at the bottom. */
function leaning(out: number, into: number): Piece {
  return {
    ...plain,
    corners: plain.corners.map((corner, i) => ({
      ...corner,
      at: { x: corner.at.x + (i === 1 ? out : i === 2 ? -into : 0), y: corner.at.y },
    })),
  };
}

const through = (piece: Piece, map: Affine) => mapPiece(piece, (point) => transformPoint(map, point));
const leftId = plain.edges[3]?.id ?? '';

/** Lays a piece by its left side on that of the rectangle, turned over first where it is mirrored. */
function byLeftSide(over: Piece, mirrored: boolean): Affine {
  const face = mirrored ? turnedOver(over) : IDENTITY;
  const motion = laidOver(plain, through(over, face), { kind: 'edge', onEdgeId: leftId, edgeId: leftId, way: 'same' });
  if (!motion) throw new Error('the left side is there');
  return composeAffine(motion, face);
}

describe('gaps', () => {
  it('are found again, out and in, in a piece that was turned, mirrored and moved, within 0.05 mm', () => {
    const millimetres = (max: number) => fc.double({ min: 2, max, noNaN: true });
    fc.assert(
      fc.property(
        millimetres(31),
        millimetres(23),
        fc.double({ min: -3, max: 3, noNaN: true }),
        fc.double({ min: -800, max: 800, noNaN: true }),
        fc.boolean(),
        (out, into, angle, dx, mirrored) => {
          const flip = mirrored ? (reflectionIn({ x: 5, y: 0 }, { x: 9, y: 70 }) ?? IDENTITY) : IDENTITY;
          const placed = composeAffine(translation({ dx, dy: 170 - dx / 3 }), rotationAbout({ x: 3, y: 1 }, angle));
          const over = through(leaning(out, into), composeAffine(placed, flip));
          const { gaps, gap, edges } = differencesOf(plain, over, byLeftSide(over, mirrored), []);
          // From the lower right corner square to the leaning side; from the upper one straight to the corner.
          const square = (into * DEEP) / Math.hypot(out + into, DEEP);
          expect(Math.abs((gaps.out?.width ?? 0) - out)).toBeLessThan(0.05);
          expect(Math.abs((gaps.in?.width ?? 0) - square)).toBeLessThan(0.05);
          expect(gap.width).toBeCloseTo(Math.max(out, square), 1);
          // Edge by edge the ends of the side count too: the lower one lies `into` inside.
          const [top, right, , left] = edges;
          expect(Math.abs((right?.gaps?.out?.width ?? 0) - out)).toBeLessThan(0.05);
          expect(Math.abs((right?.gaps?.in?.width ?? 0) - into)).toBeLessThan(0.05);
          expect(left?.gaps).toEqual({ out: undefined, in: undefined });
          // The top is longer by `out`, and lies on the other all the way.
          expect((top?.other?.length ?? 0) - (top?.one?.length ?? 0)).toBeCloseTo(out, 6);
          expect(top?.gaps?.out?.width ?? 0).toBeLessThan(0.05);
        },
      ),
      { seed: 11, numRuns: 25 },
    );
  });

  it('lie from the lower piece to the upper, and change their names when the two change places', () => {
    const over = leaning(17, 9);
    const [there, back] = [differencesOf(plain, over, IDENTITY, []), differencesOf(over, plain, IDENTITY, [])];
    expect(there.gaps.out?.width).toBeCloseTo(back.gaps.in?.width ?? 0, 3);
    expect(there.gaps.in?.width).toBeCloseTo(back.gaps.out?.width ?? 0, 3);
    expect(there.gaps.out?.from).toEqual({ x: 13 + WIDE, y: -7 });
    expect(there.gaps.out?.to).toEqual({ x: 13 + WIDE + 17, y: -7 });
  });

  it('on a curved side are what was pinned there, and on the other edges nothing', () => {
    const panel = lindenPanel();
    const sideId = panel.edges[1]?.id ?? '';
    const pinned = takeIn(panel, sideId, [{ along: (edgeLength(panel, sideId) ?? 0) / 2, by: 8.5 }]);
    if ('kind' in pinned) throw new Error(pinned.why);
    const { edges, gaps } = differencesOf(panel, pinned, IDENTITY, []);
    expect(edges[1]?.gaps?.in?.width).toBeCloseTo(8.5, 1);
    // Near its ends a curve through a pinned place swings a hair to the other side.
    expect(edges[1]?.gaps?.out?.width ?? 0).toBeLessThan(0.1);
    expect(gaps.in?.width).toBeCloseTo(8.5, 1);
    for (const at of [0, 3]) expect(edges[at]?.gaps?.in?.width ?? 0).toBeLessThan(0.05);
  });
});

describe('turnedOver', () => {
  it('mirrors a piece where it lies, and twice is nothing', () => {
    const panel = lindenPanel();
    const over = through(panel, turnedOver(panel));
    const back = through(over, turnedOver(over));
    back.corners.forEach(({ at }, i) => {
      expect(at.x).toBeCloseTo(panel.corners[i]?.at.x ?? 0, 9);
      expect(at.y).toBe(panel.corners[i]?.at.y);
    });
    expect(over.corners[0]?.at.x).not.toBeCloseTo(panel.corners[0]?.at.x ?? 0, 0);
  });
});
