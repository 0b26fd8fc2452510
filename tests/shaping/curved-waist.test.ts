import { describe, expect, it } from 'vitest';
import { mirrorPiece, turnPiece } from '../../core/garment/move-piece';
import { outlineOf } from '../../core/garment/outline';
import type { Piece } from '../../core/garment/piece';
import { endTangent, nearestOnPath, pathLength, startTangent } from '../../core/geometry/path';
import { distance, turnBetween } from '../../core/geometry/point';
import { selfCrossings } from '../../core/geometry/self-crossing';
import { type CurvedWaist, type CurvedWaistWish, curvedWaist } from '../../core/shaping/curved-waist';
import { levelLine } from '../../core/shaping/level-line';
import { inches, MM_PER_INCH } from '../../core/units/inch';
import { bodies } from './bodies';
import { straightGore, straightPanel, traced } from './traced';

function curved(piece: Piece, wish: Omit<CurvedWaistWish, 'waistEdgeId'>): CurvedWaist {
  const waistEdgeId = piece.edges[0]?.id ?? '';
  const made = curvedWaist(piece, { waistEdgeId, ...wish });
  if (made.kind !== 'curved-waist') throw new Error(made.why);
  return made;
}

/** How far both ends of the first edge are off a right angle (degrees), the worse of the two. */
function offSquare(piece: Piece): number {
  const { edges } = outlineOf(piece);
  const [waist, after, before] = [edges[0] ?? [], edges[1] ?? [], edges.at(-1) ?? []];
  const turns = [
    turnBetween(endTangent(before), startTangent(waist)),
    turnBetween(endTangent(waist), startTangent(after)),
  ];
  return Math.max(...turns.map((turn) => Math.abs((turn * 180) / Math.PI - 90)));
}

const lengthOf = (piece: Piece, index: number) => pathLength(outlineOf(piece).edges[index] ?? []);

describe('curvedWaist', () => {
  it('closes for real bodies as a quarter on the fold and as one of six gores (ANSUR II, 2012)', () => {
    for (const [row, waist, hip, depth] of bodies) {
      const wanted = (waist + inches(0.5)) / 4;
      const hipWidth = (hip + inches(2)) / 4;
      const cases = [
        { piece: straightPanel(wanted, hipWidth, depth), length: wanted },
        { piece: straightGore((wanted * 4) / 6, (hipWidth * 4) / 6, depth), length: (wanted * 4) / 6 },
      ];
      for (const { piece, length } of cases) {
        const made = curved(piece, { length, hipDepth: depth });
        expect(Math.abs(lengthOf(made.piece, 0) - length), `row ${row}`).toBeLessThan(0.01);
        expect(offSquare(made.piece), `row ${row}`).toBeLessThan(0.1);
        expect(selfCrossings(outlineOf(made.piece).whole), `row ${row}`).toEqual([]);
        const hipBefore = levelLine(piece, depth)?.length ?? 0;
        expect(Math.abs((levelLine(made.piece, depth)?.length ?? 0) - hipBefore), `row ${row}`).toBeLessThan(0.01);
      }
    }
  });

  it.each([
    // Rise and far corner of a panel with straight edges, computed from the cone of Laura I. Baldt, Clothing for Women (1916).
    [28, 38, 7, 1.237, 6.852],
    [26, 40, 7, 1.591, 6.233],
    [24, 36, 6, 1.469, 5.753],
    [32, 44, 8, 1.483, 7.814],
  ])('rises as the cone has it: W %f, H %f, d %f', (waist, hip, depth, rise, across) => {
    const [w, h, d] = [inches(waist / 4), inches(hip / 4), inches(depth)];
    const slope = (h - w) / d;
    const piece = traced('cone', [
      [[0, 0], 'waist'],
      [[w, 0], 'seam'],
      [[w + slope * inches(26), inches(26)], 'hem'],
      [[0, inches(26)], 'fold'],
    ]);
    const made = curved(piece, { length: w, hipDepth: d });
    expect(Math.abs(made.rise / MM_PER_INCH - rise)).toBeLessThan(0.005);
    expect(Math.abs((made.piece.corners[1]?.at.x ?? 0) / MM_PER_INCH - across)).toBeLessThan(0.005);
  });

  it('says what moves, and that the waist was straight', () => {
    const piece = straightPanel(220, 268, 163);
    const made = curved(piece, { length: 218, hipDepth: 163 });
    expect(made.straightLength).toBe(220);
    expect(Math.abs(made.length - 218)).toBeLessThan(0.01);
    expect(made.dip).toBe(0);
    const corner = made.piece.corners[1];
    expect(made.moved).toEqual([
      { cornerId: piece.corners[1]?.id, by: distance(corner?.at ?? { x: 0, y: 0 }, { x: 220, y: 0 }) },
    ]);
    expect(-(corner?.at.y ?? 0)).toBeCloseTo(made.rise, 9);
  });

  it('keeps a gore alike on both sides about the middle of its waist', () => {
    const made = curved(straightGore(150, 178, 163), { length: 146, hipDepth: 163 });
    const [left, right] = made.piece.corners;
    expect(left?.at.x).toBeCloseTo(-(right?.at.x ?? 0), 6);
    expect(left?.at.y).toBeCloseTo(right?.at.y ?? 0, 6);
    expect(made.rise).toBe(0);
    expect(-(right?.at.y ?? 0)).toBeCloseTo(made.dip, 6);
    const waist = outlineOf(made.piece).edges[0] ?? [];
    expect(nearestOnPath(waist, { x: 0, y: 0 }).distance).toBeLessThan(1e-6);
  });

  it('does not mind how a piece lies on the table, nor which way its outline runs', () => {
    const piece = straightPanel(220, 268, 163);
    const wish = { length: 216, hipDepth: 163 };
    const plain = curved(piece, wish);
    const map = (of: Piece) => turnPiece(mirrorPiece(of, { x: 30, y: 10 }, { x: 70, y: 400 }), { x: 50, y: 90 }, 2.2);
    const laid = curved(map(piece), wish);
    for (const [i, corner] of map(plain.piece).corners.entries()) {
      expect(distance(corner.at, laid.piece.corners[i]?.at ?? { x: 0, y: 0 })).toBeLessThan(0.02);
    }
    expect(laid.rise).toBeCloseTo(plain.rise, 1);
  });

  it('changes nothing more when taken a second time', () => {
    for (const piece of [straightPanel(218, 268, 163), straightGore(146, 178, 163)]) {
      const length = lengthOf(piece, 0);
      const once = curved(piece, { length, hipDepth: 163 });
      const twice = curved(once.piece, { length, hipDepth: 163 });
      for (const [i, corner] of twice.piece.corners.entries()) {
        expect(distance(corner.at, once.piece.corners[i]?.at ?? { x: 9, y: 9 })).toBeLessThan(0.5);
      }
    }
  });

  it('takes a straight edge square to the waist for the centre, or the one it is told', () => {
    const piece = traced('gore', [
      [[0, 0], 'waist'],
      [[110, 0], 'seam'],
      [[240, 690], 'hem'],
      [[0, 690], 'seam'],
    ]);
    const own = curved(piece, { length: 108, hipDepth: 170 });
    expect(own.moved.map(({ cornerId }) => cornerId)).toEqual([piece.corners[1]?.id]);
    const told = curved(piece, { length: 108, hipDepth: 170, centre: 'middle' });
    expect(told.moved.length).toBe(2);
  });

  it('lowers the waist at the centre when asked, and keeps the hip', () => {
    const piece = straightPanel(220, 268, 163);
    const made = curved(piece, { length: 218, hipDepth: 163, centreDip: 9 });
    expect(made.piece.corners[0]?.at).toEqual({ x: 0, y: 9 });
    expect(Math.abs(made.length - 218)).toBeLessThan(0.01);
    expect(offSquare(made.piece)).toBeLessThan(0.1);
    const hip = levelLine(made.piece, 163 - 9)?.length ?? 0;
    expect(Math.abs(hip - (levelLine(piece, 163)?.length ?? 0))).toBeLessThan(0.01);
  });

  it('brings darts and notches along', () => {
    const plain = straightPanel(240, 268, 163);
    const [waist, side] = plain.edges;
    const piece: Piece = {
      ...plain,
      darts: [{ id: 'd', edgeId: waist?.id ?? '', along: 120, width: 20, point: { x: 120, y: 100 } }],
      notches: [
        { id: 'n', edgeId: side?.id ?? '', along: 400, count: 1 },
        { id: 'm', edgeId: waist?.id ?? '', along: 60, count: 1 },
      ],
    };
    const made = curved(piece, { length: 236, hipDepth: 163 });
    expect(made.piece.darts[0]?.along).toBeCloseTo((120 * 236) / 240, 2);
    expect(made.piece.notches[1]?.along).toBeCloseTo((60 * 236) / 240, 2);
    // Below the hip a notch stays as far from the hem as it was.
    expect(lengthOf(made.piece, 1) - (made.piece.notches[0]?.along ?? 0)).toBeCloseTo(lengthOf(piece, 1) - 400, 6);
  });

  it('carries the shape of the side above the hip along', () => {
    const piece = traced('panel', [
      [[0, 0], 'waist'],
      [
        [225, 0],
        'seam',
        [
          [252, 60],
          [264, 115],
          [268, 163],
          [270, 300],
        ],
      ],
      [[275, 660], 'hem'],
      [[0, 660], 'fold'],
    ]);
    const made = curved(piece, { length: 224, hipDepth: 163 });
    const shape = made.piece.edges[1]?.shape;
    const through = shape?.kind === 'curve' ? shape.through : [];
    // Both points above the hip are still there, a little higher for the raised corner.
    expect(distance(through[0] ?? { x: 0, y: 0 }, { x: 252, y: 60 })).toBeLessThan(40);
    expect(through[0]?.y).toBeLessThan(60);
    expect(through[1]?.y).toBeLessThan(115);
    const [old, led] = [outlineOf(piece).edges[1] ?? [], outlineOf(made.piece).edges[1] ?? []];
    expect(nearestOnPath(led, { x: 270, y: 300 }).distance).toBeLessThan(
      nearestOnPath(old, through[2] ?? { x: 0, y: 0 }).distance,
    );
  });

  it('refuses what cannot be, and says why', () => {
    const piece = straightPanel(220, 268, 163);
    const wish = { waistEdgeId: piece.edges[0]?.id ?? '', length: 218, hipDepth: 163 };
    const why = (changed: Partial<CurvedWaistWish>) => curvedWaist(piece, { ...wish, ...changed });
    expect(why({ length: 0 })).toEqual({ kind: 'no-curved-waist', why: 'not-positive' });
    expect(why({ hipDepth: 700 })).toEqual({ kind: 'no-curved-waist', why: 'no-hip-point' });
    expect(why({ waistEdgeId: piece.edges[1]?.id ?? '' })).toEqual({ kind: 'no-curved-waist', why: 'no-waist-edge' });
    expect(why({ waistEdgeId: 'none' })).toEqual({ kind: 'no-curved-waist', why: 'no-waist-edge' });
    expect(why({ centreDip: 163 })).toEqual({ kind: 'no-curved-waist', why: 'not-positive' });
  });
});
