import { expect, it } from 'vitest';
import { mirrorPiece, movePiece, turnPiece } from '../../core/garment/move-piece';
import { outlineOf } from '../../core/garment/outline';
import type { Piece } from '../../core/garment/piece';
import { pathLength, signedArea } from '../../core/geometry/path';
import { lindenPanel } from './linden';

const lengths = (piece: Piece) => outlineOf(piece).edges.map((path) => pathLength(path));
const area = (piece: Piece) => signedArea(outlineOf(piece).whole);

it('movePiece moves corners, curves, darts, labels and grain alike', () => {
  const piece = lindenPanel();
  const after = movePiece(piece, { dx: 40, dy: -15 });
  expect(after.corners[1]?.at).toEqual({ x: 217.79999999999998, y: -15 });
  expect(after.darts[0]?.point).toEqual({ x: 3.5 * 25.4 + 40, y: 4 * 25.4 - 15 });
  expect(after.labels[0]?.at).toEqual({ x: 2 * 25.4 + 40, y: 20 * 25.4 - 15 });
  expect(after.grain?.to).toEqual({ x: 3 * 25.4 + 40, y: 22 * 25.4 - 15 });
  expect(movePiece(after, { dx: -40, dy: 15 }).corners[2]?.at.x).toBeCloseTo(14.5 * 25.4, 9);
});

it('turnPiece turns clockwise to the eye: with y down, a quarter turn takes (x, 0) to (0, x)', () => {
  const { at } = turnPiece(lindenPanel(), { x: 0, y: 0 }, Math.PI / 2).corners[1] as Piece['corners'][number];
  expect(at.x).toBeCloseTo(0, 9);
  expect(at.y).toBeCloseTo(177.8, 9);
});

it('moving, turning and mirroring keep every length, and only the mirror turns the outline round', () => {
  const piece = lindenPanel();
  const others = {
    moved: movePiece(piece, { dx: 900, dy: 31 }),
    turned: turnPiece(piece, { x: 50, y: 800 }, 1.234),
    mirrored: mirrorPiece(piece, { x: 10, y: 0 }, { x: 40, y: 55 }),
  };
  for (const other of Object.values(others)) {
    lengths(other).forEach((length, index) => {
      expect(length).toBeCloseTo(lengths(piece)[index] as number, 3);
    });
  }
  expect(area(others.turned)).toBeCloseTo(area(piece), 2);
  expect(area(others.mirrored)).toBeCloseTo(-area(piece), 2);
});

it('a move by nothing, a turn by nothing and a mirror with no line give the same piece back', () => {
  const piece = lindenPanel();
  expect(movePiece(piece, { dx: 0, dy: 0 })).toBe(piece);
  expect(turnPiece(piece, { x: 3, y: 8 }, 0)).toBe(piece);
  expect(mirrorPiece(piece, { x: 3, y: 8 }, { x: 3, y: 8 })).toBe(piece);
});
