import { describe, expect, it } from 'vitest';
import type { Piece } from '../../core/garment/piece';
import { levelLine } from '../../core/shaping/level-line';
import { drawWaist, type WaistDrawn, type WaistWay } from '../../core/shaping/waist-ways';
import { inches, MM_PER_INCH } from '../../core/units/inch';
import { bodies } from './bodies';
import { straightGore, straightPanel, traced } from './traced';

function drawn(piece: Piece, way: WaistWay): WaistDrawn {
  const made = drawWaist(piece, { waistEdgeId: piece.edges[0]?.id ?? '' }, way);
  if (made.kind === 'no-waist-drawn') throw new Error(`${made.why} ${made.reach}`);
  return made;
}

const offSquare = ({ angles }: WaistDrawn) =>
  (Math.max(Math.abs(angles.start - Math.PI / 2), Math.abs(angles.end - Math.PI / 2)) * 180) / Math.PI;

function withDart(piece: Piece, width: number): Piece {
  const edgeId = piece.edges[0]?.id ?? '';
  return { ...piece, darts: [{ id: 'd', edgeId, along: 97, width, point: { x: 97, y: 88 } }] };
}

describe('drawWaist', () => {
  it('has the length asked, square ends and the hip as drawn by the cone, for real bodies (ANSUR II, 2012)', () => {
    for (const [row, waist, hip, depth] of bodies) {
      const length = (waist + inches(0.5)) / 4;
      const hipWidth = (hip + inches(2)) / 4;
      for (const piece of [straightPanel(length, hipWidth, depth), straightGore(length, hipWidth, depth)]) {
        const made = drawn(piece, { kind: 'cone', length, hipDepth: depth });
        expect(Math.abs(made.length - length), `row ${row}`).toBeLessThan(0.1);
        expect(offSquare(made), `row ${row}`).toBeLessThan(0.1);
        // A waist larger than the hip falls at the side, one that is smaller rises.
        expect(Math.sign(made.rise), `row ${row}`).toBe(Math.sign(hipWidth - length));
      }
    }
  });

  it('keeps a typed rise, dip and length at once, and the hip, for real bodies', () => {
    for (const [row, waist, hip, depth] of bodies) {
      const length = (waist + inches(0.5)) / 4;
      const piece = straightPanel(length, (hip + inches(2)) / 4, depth);
      const way = { kind: 'typed', rise: 11, dip: 4, length: { length, hipDepth: depth } } as const;
      const made = drawn(piece, way);
      expect(Math.abs(made.length - length), `row ${row}`).toBeLessThan(0.1);
      expect(offSquare(made), `row ${row}`).toBeLessThan(0.1);
      expect(made.piece.corners[1]?.at.y, `row ${row}`).toBeCloseTo(-11, 6);
      expect(made.piece.corners[0]?.at, `row ${row}`).toEqual({ x: 0, y: 4 });
      expect(made).toMatchObject({ rise: 11, dip: 4 });
    }
  });

  it('rises to the length along the traced side, which stays where it was', () => {
    // Straight edges of the cone of 28 and 38 in over 7: drawn straight a quarter is 7 in; Laura I. Baldt, Clothing for
    // Women (1916): on that cone the square waist of 7 in rises 1.237 in, its far corner 6.852 in across.
    const angle = 2.5 / 7;
    const across = (down: number) => inches(6.852) + (inches(1.237) + down) * Math.tan(angle);
    const piece = traced('cone', [
      [[0, 0], 'waist'],
      [[across(0), 0], 'seam'],
      [[across(660), 660], 'hem'],
      [[0, 660], 'fold'],
    ]);
    const made = drawn(piece, { kind: 'side-seam', length: inches(7) });
    expect(Math.abs(made.length - inches(7))).toBeLessThan(0.01);
    expect(Math.abs(made.rise / MM_PER_INCH - 1.237)).toBeLessThan(0.01);
    expect(offSquare(made)).toBeLessThan(0.1);
    const corner = made.piece.corners[1]?.at ?? { x: 0, y: 0 };
    expect(corner.x).toBeCloseTo(across(corner.y), 6);
  });

  it('says how short and how long a waist the traced side allows', () => {
    const piece = straightPanel(220, 268, 163);
    const made = drawWaist(piece, { waistEdgeId: piece.edges[0]?.id ?? '' }, { kind: 'side-seam', length: 90 });
    if (made.kind !== 'no-waist-drawn') throw new Error('made');
    expect(made.why).toBe('length-out-of-reach');
    expect(made.reach?.[0]).toBeGreaterThan(90);
  });

  it.each(['cone', 'side-seam', 'typed'] as const)(
    'takes the %s length net of the darts, which keep their width',
    (kind) => {
      const piece = withDart(straightPanel(238, 268, 163), 19);
      const way: WaistWay =
        kind === 'typed'
          ? { kind, rise: 12, dip: 3, length: { length: 216, hipDepth: 163 } }
          : kind === 'cone'
            ? { kind, length: 216, hipDepth: 163 }
            : { kind, length: 216 };
      const made = drawn(piece, way);
      expect(Math.abs(made.length - 216)).toBeLessThan(0.01);
      expect(Math.abs((levelLine(made.piece, 0)?.length ?? 0) - 216)).toBeLessThan(0.01);
      expect(made.piece.darts[0]?.width).toBe(19);
      expect(made.lengthBefore).toBeCloseTo(219, 9);
    },
  );

  it('straightens a waist and says the difference in numbers', () => {
    const piece = straightPanel(220, 268, 163);
    const curved = drawn(piece, { kind: 'cone', length: 220, hipDepth: 163 });
    const back = drawn(curved.piece, { kind: 'straight' });
    expect(back.piece.edges[0]?.shape).toEqual({ kind: 'straight' });
    expect(back.length).toBeCloseTo(curved.straightLength, 6);
    expect(back.length).toBeLessThan(curved.length);
    expect(back.angles.start).toBeGreaterThan(curved.angles.start);
  });

  it('refuses with the reason', () => {
    const piece = straightPanel(220, 268, 163);
    const why = (way: WaistWay, edge = 0) => drawWaist(piece, { waistEdgeId: piece.edges[edge]?.id ?? '' }, way);
    expect(why({ kind: 'straight' }, 1)).toEqual({ kind: 'no-waist-drawn', why: 'no-waist-edge' });
    expect(why({ kind: 'cone', length: -3, hipDepth: 163 })).toEqual({ kind: 'no-waist-drawn', why: 'not-positive' });
    expect(why({ kind: 'cone', length: 220, hipDepth: 800 })).toEqual({ kind: 'no-waist-drawn', why: 'no-hip-point' });
    const typed = { kind: 'typed', rise: 5, dip: 0 } as const;
    expect(why({ ...typed, length: { length: 220, hipDepth: 900 } })).toMatchObject({ why: 'no-hip-point' });
    expect(why({ ...typed, rise: -900 })).toMatchObject({ why: 'off-the-side' });
  });
});
