import { describe, expect, it } from 'vitest';
import { fullnessMarks } from '../../core/drawing/fullness-lines';
import type { Pleat } from '../../core/garment/fullness';
import type { Piece } from '../../core/garment/piece';
import { flattenPath } from '../../core/geometry/flatten';
import { pathEnd, pathStart } from '../../core/geometry/path';
import { at, movedPiece, pieceOf, runBackwards } from '../seams/pieces';

const plain = pieceOf([at(0, 0), at(300, 0), at(300, 240), at(0, 240)], [{ role: 'waist' }]);
const pleated = (laid: Pleat['laid']): Piece => ({
  ...plain,
  fullness: [{ kind: 'pleat', id: 'p', edgeId: 'e0', from: 100, takes: 40, laid }],
});
const placesOf = (piece: Piece, kind: string) =>
  fullnessMarks(piece).flatMap((mark) =>
    mark.kind === 'stroke' && mark.line === kind ? [pathStart(mark.path).x] : [],
  );
/** Where arrows begin and end across the piece. */
const arrowsOf = (piece: Piece) =>
  fullnessMarks(piece).flatMap((mark) =>
    mark.kind === 'stroke' && mark.line === 'grain' && mark.path.length === 1
      ? [[Math.round(pathStart(mark.path).x), Math.round(pathEnd(mark.path).x)]]
      : [],
  );

describe('fullnessMarks(piece) for pleats', () => {
  it('brings the fold of a knife pleat to its placement line, the way it is laid', () => {
    expect(placesOf(pleated('to-start'), 'pleat-fold')).toEqual([140]);
    expect(placesOf(pleated('to-start'), 'pleat-placement')).toEqual([100]);
    expect(arrowsOf(pleated('to-start'))).toEqual([[140, 100]]);
    expect(arrowsOf(pleated('to-end'))).toEqual([[100, 140]]);
  });

  it('lets the folds of an inverted pleat meet in its middle, and those of a box part from it', () => {
    expect(arrowsOf(pleated('inverted'))).toEqual([
      [100, 120],
      [140, 120],
    ]);
    // A box of 20 over 40 taken up: folded at 110 and 130, it covers 10 beyond the place where it closes on either side.
    expect(arrowsOf(pleated('box'))).toEqual([
      [110, 90],
      [130, 150],
    ]);
  });

  it('runs its lines into the piece, a third of the way across, whichever way round the piece is drawn', () => {
    for (const piece of [pleated('to-end'), runBackwards(pleated('to-end'))]) {
      const [line] = fullnessMarks(piece);
      if (line?.kind !== 'stroke') throw new Error('no line');
      expect(pathEnd(line.path).y).toBeCloseTo(80, 6);
    }
  });
});

describe('fullnessMarks(piece) for gathers', () => {
  const gathered: Piece = {
    ...plain,
    fullness: [{ kind: 'gathers', id: 'g', edgeId: 'e0', from: 20, to: 270, into: 110 }],
  };

  it('waves along the stretch inside the piece, with a tick at both ends and both lengths in words', () => {
    const marks = fullnessMarks(gathered);
    const strokes = marks.flatMap((mark) => (mark.kind === 'stroke' && mark.line === 'gathers' ? [mark.path] : []));
    expect(strokes).toHaveLength(3);
    const [wave, first, last] = strokes;
    if (!wave || !first || !last) throw new Error('no wave');
    for (const { x, y } of flattenPath(wave, 0.1)) {
      expect(x).toBeGreaterThan(19.9);
      expect(x).toBeLessThan(270.1);
      expect(y).toBeGreaterThan(2);
      expect(y).toBeLessThan(6);
    }
    expect([pathStart(first).x, pathStart(last).x]).toEqual([20, 270]);
    const words = marks.find(({ kind }) => kind === 'words');
    expect(words).toMatchObject({ content: { kind: 'gathers', length: 250, into: 110 } });
    expect(words?.kind === 'words' && words.at.x).toBeCloseTo(145, 6);
  });

  it('is nothing on an edge that is not there, and nothing without fullness', () => {
    expect(fullnessMarks(movedPiece(plain, { a: 1, b: 0, c: 0, d: 1, e: 3, f: 7 }))).toEqual([]);
    expect(
      fullnessMarks({ ...plain, fullness: [{ kind: 'gathers', id: 'g', edgeId: 'x', from: 1, to: 9, into: 4 }] }),
    ).toEqual([]);
  });
});
