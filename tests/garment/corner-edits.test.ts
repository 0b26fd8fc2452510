import fc from 'fast-check';
import { expect, it } from 'vitest';
import { insertCorner, removeCorner, setCornerFinish } from '../../core/garment/corner-edits';
import { setEndRule } from '../../core/garment/curve-edits';
import { mirrorPiece, turnPiece } from '../../core/garment/move-piece';
import { outlineOf } from '../../core/garment/outline';
import type { Piece } from '../../core/garment/piece';
import { nearestOnPath, pathAtLength, pathLength } from '../../core/geometry/path';
import type { Path } from '../../core/geometry/segment';
import { idsInOrder, lindenPanel } from './linden';

const SIDE = 'e-side';

/** The farthest that one path lies from another, sampled (mm). */
function farthest(from: Path, to: Path): number {
  let worst = 0;
  for (let i = 0; i <= 200; i++) {
    const { point } = pathAtLength(from, (pathLength(from) * i) / 200);
    worst = Math.max(worst, nearestOnPath(to, point).distance);
  }
  return worst;
}

function edgePath(piece: Piece, index: number): Path {
  return outlineOf(piece).edges[index] as Path;
}

it('insertCorner keeps the line of a curve within a sixty-fourth of an inch, wherever it is cut and however it lies', () => {
  const shapes = fc.record({
    share: fc.double({ min: 0.02, max: 0.98, noNaN: true }),
    leaves: fc.constantFrom('free', 'square', 'in-line'),
    bow: fc.double({ min: -80, max: 120, noNaN: true }),
    angle: fc.constantFrom(0, Math.PI / 2, Math.PI, -Math.PI / 2, 0.37),
    mirrored: fc.boolean(),
  });
  fc.assert(
    fc.property(shapes, ({ share, leaves, bow, angle, mirrored }) => {
      const panel = setEndRule(lindenPanel(), SIDE, 'leaves', leaves as 'free');
      const bowed: Piece = {
        ...panel,
        edges: panel.edges.map((edge) =>
          edge.id === SIDE && edge.shape.kind === 'curve'
            ? { ...edge, shape: { ...edge.shape, through: [{ x: 260 + bow, y: 230 }] } }
            : edge,
        ),
      };
      const turned = turnPiece(bowed, { x: 30, y: 70 }, angle);
      const piece = mirrored ? mirrorPiece(turned, { x: 0, y: 0 }, { x: 3, y: 11 }) : turned;
      const before = edgePath(piece, 1);
      const along = pathLength(before) * share;
      const { point } = pathAtLength(before, along);
      const after = insertCorner(piece, SIDE, along, idsInOrder());
      const halves = [...edgePath(after, 1), ...edgePath(after, 2)];
      expect(after.corners[2]?.at.x).toBeCloseTo(point.x, 6);
      expect(after.corners[2]?.at.y).toBeCloseTo(point.y, 6);
      // 1/64 in is 0.397 mm; the rest is for places between those at which the program looked.
      expect(farthest(before, halves)).toBeLessThan(0.42);
      expect(farthest(halves, before)).toBeLessThan(0.42);
    }),
    { seed: 7, numRuns: 80 },
  );
});

it('insertCorner cuts a straight edge into two straight edges, and leaves the printed length to neither', () => {
  const after = insertCorner(lindenPanel(), 'e-waist', 50, idsInOrder());
  expect(after.corners.map(({ id }) => id)).toEqual([
    'c-fold-waist',
    'new-1',
    'c-side-waist',
    'c-side-hem',
    'c-fold-hem',
  ]);
  expect(after.corners[1]?.at.x).toBeCloseTo(50, 9);
  expect(after.corners[1]?.at.y).toBe(0);
  expect(after.edges.slice(0, 2)).toEqual([
    { id: 'e-waist', name: 'waist', role: 'waist', shape: { kind: 'straight' }, allowance: 12.7 },
    { id: 'new-2', name: 'waist', role: 'waist', shape: { kind: 'straight' }, allowance: 12.7 },
  ]);
});

it('insertCorner leaves every mark where it was on the cloth', () => {
  const piece = lindenPanel();
  const after = insertCorner(piece, SIDE, nearestOnPath(edgePath(piece, 1), { x: 225, y: 120 }).along, idsInOrder());
  const place = (of: Piece) => {
    const notch = of.notches[0];
    const index = of.edges.findIndex(({ id }) => id === notch?.edgeId);
    return pathAtLength(edgePath(of, index), notch?.along ?? 0).point;
  };
  expect(after.notches[0]?.edgeId).toBe('new-2');
  expect(place(after).x).toBeCloseTo(place(piece).x, 0);
  expect(place(after).y).toBeCloseTo(place(piece).y, 0);
  expect(after.darts).toEqual(piece.darts);
});

it('insertCorner does nothing on a corner that is there already, nor on an edge that is not', () => {
  const piece = lindenPanel();
  expect(insertCorner(piece, 'e-waist', 0, idsInOrder())).toBe(piece);
  expect(insertCorner(piece, 'e-waist', 177.2, idsInOrder())).toBe(piece);
  expect(insertCorner(piece, 'collar', 50, idsInOrder())).toBe(piece);
});

it('removeCorner takes back what insertCorner put in a straight edge', () => {
  const piece = lindenPanel();
  const after = removeCorner(insertCorner(piece, 'e-fold', 300, idsInOrder()), 'new-1');
  expect(after).toEqual(piece);
});

it('removeCorner joins the first edge to the last round the end of the list, and keeps corners and edges in step', () => {
  const after = removeCorner(lindenPanel(), 'c-fold-waist');
  expect(after.corners.map(({ id }) => id)).toEqual(['c-side-waist', 'c-side-hem', 'c-fold-hem']);
  // The fold does not grow over the waist: the joined edge is a waist.
  expect(after.edges.map(({ id, role }) => [id, role])).toEqual([
    ['e-side', 'seam'],
    ['e-hem', 'hem'],
    ['e-fold', 'waist'],
  ]);
});

it('removeCorner takes the marks of both edges along, each to the spot of the joined edge nearest to where it was', () => {
  const piece: Piece = {
    ...lindenPanel(),
    edges: lindenPanel().edges.map((edge) => ({ ...edge, shape: { kind: 'straight' } })),
    notches: [
      { id: 'on-waist', edgeId: 'e-waist', along: 60, count: 1 },
      { id: 'on-side', edgeId: 'e-side', along: 0, count: 2 },
      { id: 'on-hem', edgeId: 'e-hem', along: 30, count: 3 },
    ],
  };
  const after = removeCorner(piece, 'c-side-waist');
  // The joined edge runs from (0, 0) to (368.3, 685.8): a foot of a perpendicular is a dot product.
  const length = Math.hypot(368.3, 685.8);
  expect(after.notches.map(({ edgeId }) => edgeId)).toEqual(['e-waist', 'e-waist', 'e-hem']);
  expect(after.notches[0]?.along).toBeCloseTo((60 * 368.3) / length, 6);
  expect(after.notches[1]?.along).toBeCloseTo((177.8 * 368.3) / length, 6);
  expect(after.notches[2]?.along).toBe(30);
});

it('removeCorner leaves a piece of three corners as it is', () => {
  const three = removeCorner(lindenPanel(), 'c-fold-waist');
  expect(removeCorner(three, 'c-side-hem')).toBe(three);
});

it('setCornerFinish chooses a finish and gives it back to the program', () => {
  const piece = lindenPanel();
  expect(setCornerFinish(piece, 'c-side-waist', 'mirrored')).toBe(piece);
  expect(setCornerFinish(piece, 'c-side-hem', 'blunt').corners[2]).toEqual({ ...piece.corners[2], finish: 'blunt' });
  expect(setCornerFinish(piece, 'c-side-waist', undefined).corners[1]).not.toHaveProperty('finish');
});
