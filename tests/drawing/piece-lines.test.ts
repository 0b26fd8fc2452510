import { describe, expect, it } from 'vitest';
import { cutStrokes, foldStrokes, notchStrokes, stitchStrokes } from '../../core/drawing/piece-lines';
import type { Notch, Piece } from '../../core/garment/piece';
import { isClosed, pathEnd, pathLength, pathStart } from '../../core/geometry/path';
import { distance } from '../../core/geometry/point';
import { type CutLine, cutLine } from '../../core/seams/cut-line';
import { at, pieceOf } from '../seams/pieces';

const corners = [at(0, 0), at(200, 0), at(200, 300), at(0, 300)];
const plain = pieceOf(corners, [{ allowance: 9 }, { allowance: 15 }, { allowance: 40 }, { allowance: 12 }]);
const folded = pieceOf(corners, [{ allowance: 9 }, { allowance: 15 }, { allowance: 40 }, { role: 'fold' }]);

function cutOf(piece: Piece): CutLine {
  const cut = cutLine(piece);
  if (cut.kind !== 'cut-line') throw new Error(cut.kind);
  return cut;
}

describe('cutStrokes and stitchStrokes', () => {
  it('are one closed cut line and every edge without a fold', () => {
    const [line, ...more] = cutStrokes(plain, cutOf(plain));
    expect(more).toEqual([]);
    expect(isClosed(line?.path ?? [])).toBe(true);
    expect(stitchStrokes(plain, cutOf(plain))).toHaveLength(4);
  });

  it('leave the fold out: nobody cuts or stitches along it', () => {
    const [line, ...more] = cutStrokes(folded, cutOf(folded));
    expect(more).toEqual([]);
    const { path } = line ?? { path: [] };
    expect(distance(pathStart(path), at(0, -9))).toBeLessThan(1e-9);
    expect(distance(pathEnd(path), at(0, 340))).toBeLessThan(1e-9);
    expect(pathLength(path)).toBeCloseTo(215 + 349 + 215, 9);
    expect(stitchStrokes(folded, cutOf(folded))).toHaveLength(3);
  });

  it('draw one line where there is no allowance or the drawing has it', () => {
    const edge = pieceOf(corners, [{ allowance: 0 }, { allowance: 15 }, { allowance: 40 }, { allowance: 12 }]);
    expect(stitchStrokes(edge, cutOf(edge))).toHaveLength(3);
    const included: Piece = { ...plain, drawnAs: 'included' };
    expect(stitchStrokes(included, cutOf(included))).toEqual([]);
  });
});

it('foldStrokes carry the fold on to the cut line, with a bracket inside', () => {
  const [fold, ...bracket] = foldStrokes(folded, cutOf(folded));
  expect(fold?.line).toBe('fold');
  expect(pathLength(fold?.path ?? [])).toBeCloseTo(349, 9);
  const ends = bracket.flatMap(({ path }) => [pathStart(path), pathEnd(path)]);
  expect(Math.max(...ends.map(({ x }) => x))).toBeCloseTo(15, 9);
  expect(Math.min(...ends.map(({ x }) => x))).toBeGreaterThan(-1e-9);
});

describe('notchStrokes', () => {
  const notch = (more: Partial<Notch>): Notch => ({ id: 'n', edgeId: 'e1', along: 130, count: 1, ...more });

  it('run from the cut line square to the stitch line', () => {
    const [one] = notchStrokes(plain, cutOf(plain), notch({}));
    expect(distance(pathStart(one?.path ?? []), at(215, 130))).toBeLessThan(1e-9);
    expect(distance(pathEnd(one?.path ?? []), at(200, 130))).toBeLessThan(1e-9);
  });

  it('stand a quarter of an inch apart and are at least so long (common practice)', () => {
    const narrow = pieceOf(corners, [{ allowance: 9 }, { allowance: 2 }, { allowance: 40 }, { allowance: 12 }]);
    const three = notchStrokes(narrow, cutOf(narrow), notch({ count: 3 }));
    expect(three.map(({ path }) => Math.round(pathStart(path).y * 100) / 100)).toEqual([123.65, 130, 136.35]);
    for (const { path } of three) expect(pathLength(path)).toBeCloseTo(6.35, 9);
  });

  it('are none for an edge that is not there, and stay on the edge when moved past its end', () => {
    expect(notchStrokes(plain, cutOf(plain), notch({ edgeId: 'e9' }))).toEqual([]);
    const [last] = notchStrokes(plain, cutOf(plain), notch({ along: 900 }));
    expect(pathStart(last?.path ?? []).y).toBeCloseTo(300, 9);
  });
});
