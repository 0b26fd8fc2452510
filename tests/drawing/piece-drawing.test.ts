import { describe, expect, it } from 'vitest';
import type { LineKind, Mark, Stroke, Words } from '../../core/drawing/drawing';
import { pieceBounds } from '../../core/drawing/piece-bounds';
import { pieceDrawing } from '../../core/drawing/piece-drawing';
import { outlineOf } from '../../core/garment/outline';
import type { Piece } from '../../core/garment/piece';
import { pathEnd, pathLength, pathStart } from '../../core/geometry/path';
import { placeInRing } from '../../core/geometry/polygon';
import { line } from '../../core/geometry/segment';
import { cutLine } from '../../core/seams/cut-line';
import { at, pieceOf } from '../seams/pieces';

const strokes = (marks: readonly Mark[], kind: LineKind): readonly Stroke[] =>
  marks.filter((mark): mark is Stroke => mark.kind === 'stroke' && mark.line === kind);
const words = (marks: readonly Mark[]): readonly Words[] =>
  marks.filter((mark): mark is Words => mark.kind === 'words');
const said = (marks: readonly Mark[], kind: Words['content']['kind']) =>
  words(marks).find(({ content }) => content.kind === kind)?.content;

const corners = [at(0, 0), at(180, -12), at(262, 600), at(0, 640)];
const front: Piece = {
  ...pieceOf(
    corners,
    [{ role: 'waist', allowance: 12.7 }, { allowance: 15.875 }, { role: 'hem', allowance: 50.8 }, { role: 'fold' }],
    [],
    { how: 'fold', count: 1 },
  ),
  name: 'Front',
  darts: [{ id: 'd', edgeId: 'e0', along: 90, width: 25, point: at(92, 110) }],
  notches: [{ id: 'n', edgeId: 'e1', along: 211, count: 2 }],
  grain: { from: at(60, 150), to: at(60, 430) },
  labels: [
    { id: 'l', at: at(140, 500), text: 'pocket' },
    { id: 'm', at: at(150, 250), text: '' },
  ],
};

describe('pieceDrawing(piece)', () => {
  const marks = pieceDrawing(front);

  it('draws the very cut line of the piece, open along the fold', () => {
    const cut = cutLine(front);
    if (cut.kind !== 'cut-line') throw new Error(cut.kind);
    const [only, ...others] = strokes(marks, 'cut');
    expect(others).toEqual([]);
    expect(pathLength(only?.path ?? [])).toBeCloseTo(pathLength(cut.whole) - pathLength(cut.edges[3] ?? []), 6);
    expect(pathStart(only?.path ?? []).x).toBeCloseTo(0, 9);
    expect(pathEnd(only?.path ?? []).x).toBeCloseTo(0, 9);
    expect(strokes(marks, 'fold')[0]?.path).toEqual(cut.edges[3]);
  });

  it('draws the stitch line of every edge but the fold', () => {
    expect(
      strokes(marks, 'stitch')
        .slice(0, 3)
        .map(({ path }) => path),
    ).toEqual(outlineOf(front).edges.slice(0, 3));
  });

  it('draws notches side by side from stitch line to cut line', () => {
    const notches = strokes(marks, 'notch');
    expect(notches).toHaveLength(2);
    for (const { path } of notches) expect(pathLength(path)).toBeCloseTo(15.875, 6);
  });

  it('draws a notch at least 1/4 in long where there is no allowance (common practice)', () => {
    const bare = { ...front, edges: front.edges.map((edge) => ({ ...edge, allowance: 0 })) };
    for (const { path } of strokes(pieceDrawing(bare), 'notch')) expect(pathLength(path)).toBeCloseTo(25.4 / 4, 9);
  });

  it('draws dart legs, the fold down the middle, grain with both heads, and a drill mark for a label without words', () => {
    expect(strokes(marks, 'dart')).toHaveLength(1);
    expect(strokes(marks, 'centre')).toHaveLength(1);
    expect(strokes(marks, 'grain').length).toBeGreaterThanOrEqual(3);
    expect(strokes(marks, 'drill')).toHaveLength(3);
    expect(said(marks, 'label')).toEqual({ kind: 'label', text: 'pocket' });
  });

  it('says name, cut and allowances inside the piece, the name at 18 pt or more', () => {
    expect(said(marks, 'piece-name')).toEqual({ kind: 'piece-name', name: 'Front' });
    expect(said(marks, 'cut')).toEqual({ kind: 'cut', how: 'fold', count: 1 });
    expect(said(marks, 'allowance')).toEqual({ kind: 'allowance', widths: [12.7, 15.875, 50.8] });
    for (const { at: place, content, size } of words(marks)) {
      expect(placeInRing(corners, place)).toBe('inside');
      if (content.kind === 'piece-name') expect(size).toBeGreaterThanOrEqual((18 * 25.4) / 72 - 1e-9);
    }
  });

  it('draws level lines it is given', () => {
    const level = [line(at(0, 200), at(200, 190))];
    expect(strokes(pieceDrawing(front, { levels: [level] }), 'level').map(({ path }) => path)).toEqual([level]);
  });

  it('is remembered for as long as the piece is', () => {
    expect(pieceDrawing(front)).toBe(marks);
    expect(pieceDrawing({ ...front })).not.toBe(marks);
  });
});

describe('pieceDrawing(piece) never leaves the allowance unsaid', () => {
  const state = (piece: Piece) => said(pieceDrawing(piece), 'allowance');
  const plain = pieceOf(corners, Array(4).fill({ allowance: 0 }));

  it.each([
    ['none', plain],
    ['none', pieceOf(corners, [{ allowance: 0 }, { role: 'fold' }, { allowance: 0 }, { allowance: 0 }])],
    ['not-said', pieceOf(corners, [{ allowance: 9 }, {}, { allowance: 9 }, { allowance: 9 }])],
    ['not-said', { ...plain, drawnAs: 'not-known' as const }],
    ['in-drawing', { ...plain, drawnAs: 'included' as const }],
    ['not-said', pieceOf([at(0, 0), at(310, 290), at(310, 0), at(0, 270)], Array(4).fill({ allowance: 12 }))],
  ])('%s', (widths, piece) => {
    expect(state(piece)).toEqual({ kind: 'allowance', widths });
  });

  it('shows the stitch line and no cut line of a piece whose allowances cannot be drawn', () => {
    const marks = pieceDrawing(
      pieceOf([at(0, 0), at(310, 290), at(310, 0), at(0, 270)], Array(4).fill({ allowance: 12 })),
    );
    expect(strokes(marks, 'cut')).toEqual([]);
    expect(strokes(marks, 'stitch')).toHaveLength(4);
  });
});

describe('pieceDrawing(piece) says which side lies up', () => {
  const single = { how: 'single', count: 1 } as const;
  it('only on a piece cut once that is not its own mirror image', () => {
    expect(said(pieceDrawing(pieceOf(corners, [], [], single)), 'right-side-up')).toBeDefined();
    expect(said(pieceDrawing(pieceOf(corners, [], [], { how: 'pair', count: 2 })), 'right-side-up')).toBeUndefined();
    const strip = [at(0, 0), at(310, 0), at(310, 70), at(0, 70)];
    expect(said(pieceDrawing(pieceOf(strip, [], [], single)), 'right-side-up')).toBeUndefined();
  });

  it('and points an arrow upwards on every piece', () => {
    const shaft = strokes(pieceDrawing(front), 'upright')[0]?.path ?? [];
    expect(pathEnd(shaft).x).toBeCloseTo(pathStart(shaft).x, 9);
    expect(pathEnd(shaft).y).toBeLessThan(pathStart(shaft).y - 5);
  });
});

describe('pieceBounds(piece)', () => {
  it('holds every stroke, and no more than the cut line and half its width here', () => {
    const square = pieceOf([at(10, 20), at(310, 20), at(310, 240), at(10, 240)], Array(4).fill({ allowance: 15 }));
    const { minX, minY, maxX, maxY } = pieceBounds(square);
    expect([minX, minY, maxX, maxY].map((each) => Math.round(each * 100) / 100)).toEqual([-5.25, 4.75, 325.25, 255.25]);
  });
});

describe('degenerate pieces', () => {
  it.each([
    ['in one place', Array(3).fill(at(40, 70))],
    ['without width', [at(0, 0), at(300, 0), at(140, 0)]],
    ['with corners that coincide', [at(0, 0), at(0, 0), at(300, 0), at(290, 210)]],
  ])('give no NaN %s', (_, places) => {
    const marks = pieceDrawing({ ...front, ...pieceOf(places, Array(4).fill({ allowance: 12 })) });
    for (const mark of marks) {
      const numbers =
        mark.kind === 'words' ? [mark.at.x, mark.at.y, mark.angle] : mark.path.flatMap(({ p0 }) => [p0.x, p0.y]);
      expect(numbers.every(Number.isFinite)).toBe(true);
    }
  });
});
