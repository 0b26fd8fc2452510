import { describe, expect, it } from 'vitest';
import { girthsOf, hemSweep } from '../../core/fit/round-body';
import { brokenReference } from '../../core/garment/broken-reference';
import type { Garment } from '../../core/garment/garment';
import { outlineOf } from '../../core/garment/outline';
import type { Piece } from '../../core/garment/piece';
import type { Seam } from '../../core/garment/seam';
import { pieceOf } from '../../core/garment/with-piece';
import { flattenPath } from '../../core/geometry/flatten';
import { nearestOnPath, signedArea } from '../../core/geometry/path';
import { netEdgeLength } from '../../core/seams/edge-length';
import { leftAndRight } from '../../core/shaping/half-pieces';
import { onTheFold } from '../../core/shaping/on-the-fold';
import { idsInOrder, linden } from '../garment/linden';
import { traced } from './traced';

const names = { left: 'Left front', right: 'Right front' };

/** Half a front on the fold: its waist starts at the fold's end, square to it. */
function frontPiece(): Piece {
  const bare = traced('front', [
    [[0, 12], 'waist', [[130, 6]]],
    [[250, 0], 'seam', [[280, 190]]],
    [[330, 640], 'hem', [[170, 655]]],
    [[0, 660], 'fold'],
  ]);
  const [waist, side, hem] = bare.edges.map(({ id }) => id) as [string, string, string];
  return {
    ...bare,
    cut: { how: 'fold', count: 1 },
    edges: bare.edges.map((edge, i) =>
      edge.shape.kind === 'curve' && i === 0 ? { ...edge, shape: { ...edge.shape, leaves: 'square' } } : edge,
    ),
    darts: [{ id: 'd', edgeId: waist, along: 120, width: 20, point: { x: 125, y: 110 } }],
    notches: [{ id: 'n', edgeId: side, along: 90, count: 2 }],
    fullness: [
      { kind: 'pleat', id: 'p', edgeId: hem, from: 40, takes: 26, laid: 'to-end' },
      { kind: 'gathers', id: 'g', edgeId: waist, from: 150, to: 240, into: 70 },
    ],
  };
}

const backPiece = (): Piece => ({
  ...traced('back', [
    [[500, 10], 'waist'],
    [[760, 0], 'seam'],
    [[820, 640], 'hem'],
    [[500, 650], 'seam'],
  ]),
  cut: { how: 'pair', count: 2 },
});

function garmentOf(pieces: readonly Piece[]): Garment {
  const [front, back] = pieces as [Piece, Piece];
  const ref = (piece: Piece, index: number, times?: number) => ({
    pieceId: piece.id,
    edgeId: piece.edges[index]?.id ?? '',
    ...(times && { times }),
  });
  const seams: Seam[] = [
    { id: 'side', name: '', one: [ref(front, 1)], other: [ref(back, 3)], ease: 0, way: 'opposite' },
    { id: 'centre', name: '', one: [ref(back, 1)], other: [ref(back, 1)], ease: 0, way: 'same' },
    { id: 'waist', name: '', one: [ref(front, 0, 2)], other: [ref(back, 0, 2)], ease: 0, way: 'opposite' },
  ];
  const { rings } = linden();
  const levels = rings[0]?.levels ?? [];
  const ring = { id: 'r', name: 'Skirt', members: [{ pieceId: front.id }, { pieceId: back.id, times: 2 }], levels };
  return { ...linden(), pieces, rings: [ring], seams };
}

function done(made: Garment | { readonly kind: string; readonly why: string }): Garment {
  if ('why' in made) throw new Error(made.why);
  return made;
}

const girths = (garment: Garment) =>
  girthsOf(garment, garment.rings[0] as Garment['rings'][number]).map((at) => (at.kind === 'no-depth' ? 0 : at.total));
const sweep = (garment: Garment) => hemSweep(garment, garment.rings[0] as Garment['rings'][number]);
const area = (piece: Piece | undefined) => (piece ? Math.abs(signedArea(outlineOf(piece).whole)) : 0);

describe('leftAndRight(garment, piece), a mirrored pair', () => {
  const before = garmentOf([frontPiece(), backPiece()]);
  const back = before.pieces[1] as Piece;
  const after = done(leftAndRight(before, back.id, { newId: idsInOrder(), names }));

  it('makes two pieces cut as drawn, one for each side, and nothing else changes in girth and hem', () => {
    const [, own, twin] = after.pieces;
    expect([own?.cut, twin?.cut]).toEqual([
      { how: 'single', count: 1 },
      { how: 'single', count: 1 },
    ]);
    expect([own?.side, own?.name, twin?.side, twin?.name]).toEqual(['right', 'Right front', 'left', 'Left front']);
    expect(area(twin)).toBeCloseTo(area(back), 6);
    expect(sweep(after)).toBeCloseTo(sweep(before), 6);
    girths(after).forEach((girth, i) => {
      expect(girth).toBeCloseTo(girths(before)[i] ?? 0, 4);
    });
    expect(brokenReference(after)).toBeUndefined();
  });

  it('sews each side as before: the centre seam side to side, the others twice', () => {
    const [, own, twin] = after.pieces;
    const centre = after.seams?.find(({ id }) => id === 'centre');
    expect(centre?.one[0]).toEqual({ pieceId: own?.id, edgeId: own?.edges[1]?.id });
    expect(centre?.other[0]).toEqual({ pieceId: twin?.id, edgeId: twin?.edges[1]?.id });
    const sides = after.seams?.filter(({ one }) => one[0]?.edgeId === before.pieces[0]?.edges[1]?.id) ?? [];
    expect(sides.map(({ other }) => other[0]?.pieceId)).toEqual([own?.id, twin?.id]);
    const waist = after.seams?.find(({ id }) => id === 'waist');
    expect(waist?.other.map(({ pieceId, times }) => [pieceId, times])).toEqual([
      [own?.id, undefined],
      [twin?.id, undefined],
    ]);
  });
});

describe('leftAndRight(garment, piece), on the fold, and onTheFold', () => {
  const before = garmentOf([frontPiece(), backPiece()]);
  const front = before.pieces[0] as Piece;
  const opened = done(leftAndRight(before, front.id, { newId: idsInOrder(), names }));
  const whole = pieceOf(opened, front.id) as Piece;

  it('opens into one piece without a fold, twice the area, its drawn half where it was within 0.05 mm', () => {
    expect(whole.edges.map(({ role }) => role)).toEqual(['waist', 'seam', 'hem', 'hem', 'seam', 'waist']);
    expect(whole.cut).toEqual({ how: 'single', count: 1 });
    expect(area(whole) / area(front)).toBeCloseTo(2, 4);
    front.edges.slice(0, 3).forEach((_, i) => {
      const path = outlineOf(front).edges[i] ?? [];
      for (const point of flattenPath(outlineOf(whole).edges[i] ?? [], 0.05)) {
        expect(nearestOnPath(path, point).distance).toBeLessThan(0.05);
      }
    });
    expect(brokenReference(opened)).toBeUndefined();
  });

  it('keeps girths, hem and sewn lengths, darts, notches, pleats and gathers on both sides', () => {
    expect(sweep(opened)).toBeCloseTo(sweep(before), 1);
    girths(opened).forEach((girth, i) => {
      expect(Math.abs(girth - (girths(before)[i] ?? 0))).toBeLessThan(0.2);
    });
    expect([whole.darts.length, whole.notches.length, whole.fullness?.length]).toEqual([2, 2, 4]);
    const mirrored = whole.fullness?.find(({ kind, id }) => kind === 'pleat' && id !== 'p');
    expect(mirrored).toMatchObject({ laid: 'to-start', takes: 26 });
    for (const [one, other] of [
      [0, 5],
      [2, 3],
    ] as const) {
      const [a, b] = [one, other].map((i) => netEdgeLength(whole, whole.edges[i]?.id ?? ''));
      expect(a).toBeCloseTo(b ?? 0, 6);
    }
    // The waist run goes round from the twin, which leads up to the old fold, to the drawn half.
    const waist = opened.seams?.find(({ id }) => id === 'waist');
    expect(waist?.one.map(({ edgeId }) => edgeId)).toEqual([whole.edges[5]?.id, whole.edges[0]?.id]);
    expect(opened.seams).toHaveLength(4);
  });

  it('goes back onto the fold while both halves are alike, and no longer when they differ by more than 0.1 mm', () => {
    const back = done(onTheFold(opened, front.id, { newId: idsInOrder() }));
    const folded = pieceOf(back, front.id) as Piece;
    expect(folded.cut).toEqual(front.cut);
    expect(folded.edges.map(({ role }) => role)).toEqual(['waist', 'seam', 'hem', 'fold']);
    expect(area(folded) / area(front)).toBeCloseTo(1, 4);
    expect(folded.darts).toEqual(front.darts);
    expect(folded.fullness).toEqual(front.fullness);
    expect(back.seams).toEqual(before.seams);
    expect(back.rings).toEqual(before.rings);
    const nudged = (by: number): Garment => ({
      ...opened,
      pieces: opened.pieces.map((piece) =>
        piece === whole
          ? {
              ...piece,
              corners: piece.corners.map((corner, i) =>
                i === 2 ? { ...corner, at: { x: corner.at.x + by, y: corner.at.y } } : corner,
              ),
            }
          : piece,
      ),
    });
    expect('why' in onTheFold(nudged(0.05), front.id, { newId: idsInOrder() })).toBe(false);
    expect(onTheFold(nudged(0.4), front.id, { newId: idsInOrder() })).toEqual({ kind: 'not-folded', why: 'unlike' });
  });
});

describe('leftAndRight and onTheFold refuse', () => {
  it('what is not there, is cut as drawn already, or has no single fold', () => {
    const garment = garmentOf([frontPiece(), backPiece()]);
    const wish = { newId: idsInOrder(), names };
    const [front, back] = garment.pieces as [Piece, Piece];
    expect(leftAndRight(garment, 'x', wish)).toEqual({ kind: 'not-two-sides', why: 'no-piece' });
    const odd = { ...garment, pieces: [{ ...back, cut: { how: 'fold', count: 1 } as const }] };
    expect(leftAndRight(odd, back.id, wish)).toEqual({ kind: 'not-two-sides', why: 'folds' });
    const single = { ...garment, pieces: [{ ...front, cut: { how: 'single', count: 1 } as const }] };
    expect(leftAndRight(single, front.id, wish)).toEqual({ kind: 'not-two-sides', why: 'one-side' });
    expect(onTheFold(garment, 'x', wish)).toEqual({ kind: 'not-folded', why: 'no-piece' });
    expect(onTheFold(garment, front.id, wish)).toEqual({ kind: 'not-folded', why: 'not-single' });
  });
});
