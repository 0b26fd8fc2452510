import { describe, expect, it } from 'vitest';
import { openingRuns, openingStrokes } from '../../core/drawing/opening-marks';
import type { EdgeRole } from '../../core/garment/piece';
import { pathEnd, pathStart } from '../../core/geometry/path';
import { cutLineSoFar } from '../../core/seams/cut-line';
import { inches } from '../../core/units/inch';
import { at, pieceOf } from '../seams/pieces';

/** A panel 200 mm wide and 24 in long, its right side in three parts that end 7 in and 15 in down. */
function panel(roles: readonly [EdgeRole, EdgeRole, EdgeRole], allowance = 15) {
  const corners = [
    at(0, 0),
    at(200, 0),
    at(200, inches(7)),
    at(200, inches(15)),
    at(200, inches(24)),
    at(0, inches(24)),
  ];
  const all: EdgeRole[] = ['waist', ...roles, 'hem', 'seam'];
  return pieceOf(
    corners,
    all.map((role) => ({ role, allowance })),
  );
}

const marks = (piece: ReturnType<typeof pieceOf>) =>
  openingStrokes(piece, cutLineSoFar(piece)).map(({ path }) => [pathStart(path), pathEnd(path)]);

describe('openingStrokes', () => {
  it('cross the seam line where an opening of 7 in ends, from the cut line to half an inch inside', () => {
    const [mark, ...more] = marks(panel(['opening', 'seam', 'seam']));
    expect(more).toEqual([]);
    expect(mark?.[0]).toEqual({ x: expect.closeTo(215, 6), y: expect.closeTo(inches(7), 6) });
    expect(mark?.[1]).toEqual({ x: expect.closeTo(200 - 12.7, 6), y: expect.closeTo(inches(7), 6) });
  });

  it('stand at both ends of an opening within a seam, and at none where it runs from edge to edge', () => {
    expect(marks(panel(['seam', 'opening', 'seam'])).map(([from]) => (from?.y ?? 0) / 25.4)).toEqual([
      expect.closeTo(7, 6),
      expect.closeTo(15, 6),
    ]);
    expect(marks(panel(['opening', 'opening', 'opening']))).toEqual([]);
    expect(marks(panel(['seam', 'seam', 'seam']))).toEqual([]);
  });

  it('begin on the stitch line where nothing is allowed', () => {
    expect(marks(panel(['opening', 'seam', 'seam'], 0))[0]?.[0]?.x).toBeCloseTo(200, 6);
  });
});

describe('openingRuns', () => {
  it('take edges named so that follow one another for one opening', () => {
    const runs = openingRuns(panel(['opening', 'opening', 'seam']));
    expect(runs).toMatchObject([{ indexes: [1, 2], sewn: { before: false, after: true } }]);
    expect(runs[0]?.length).toBeCloseTo(inches(15), 6);
  });

  it('are one where the first edge of the piece goes on the opening of the last', () => {
    const round = pieceOf(
      [at(0, 0), at(100, 0), at(100, 300), at(0, 300)],
      [{ role: 'opening' }, { role: 'seam' }, { role: 'seam' }, { role: 'opening' }],
    );
    expect(openingRuns(round)).toMatchObject([{ indexes: [3, 0], sewn: { before: true, after: true }, length: 400 }]);
  });
});
