import { describe, expect, it } from 'vitest';
import { outlineOf } from '../../core/garment/outline';
import type { Piece } from '../../core/garment/piece';
import { endTangent, pathLength, startTangent } from '../../core/geometry/path';
import { turnBetween } from '../../core/geometry/point';
import { type RaisedWaistWish, raisedWaist } from '../../core/shaping/raised-waist';
import { inches, MM_PER_INCH } from '../../core/units/inch';
import { straightGore, straightPanel, traced } from './traced';

function raised(piece: Piece, wish: Omit<RaisedWaistWish, 'waistEdgeId'>) {
  const made = raisedWaist(piece, { waistEdgeId: piece.edges[0]?.id ?? '', ...wish });
  if (made.kind !== 'raised-waist') throw new Error(made.why);
  return made;
}

function squareEnds(piece: Piece): number[] {
  const { edges } = outlineOf(piece);
  const [waist, after, before] = [edges[0] ?? [], edges[1] ?? [], edges.at(-1) ?? []];
  const turns = [
    turnBetween(endTangent(before), startTangent(waist)),
    turnBetween(endTangent(waist), startTangent(after)),
  ];
  return turns.map((turn) => (turn * 180) / Math.PI);
}

/** The front gore of Carrie Crane Ingalls, Text-Book on Domestic Art (1911), five-gored underskirt, before it is raised. */
const ingalls = traced('front', [
  [[0, 0], 'waist'],
  [[inches(3), 0], 'seam'],
  [[inches(9.392), inches(38.25)], 'hem'],
  [[0, inches(38)], 'fold'],
]);

describe('raisedWaist', () => {
  it('raises the seam end of the Ingalls 1911 front gore a quarter of an inch along its own edge', () => {
    const made = raised(ingalls, { rise: inches(0.25) });
    const corner = made.piece.corners[1]?.at ?? { x: 0, y: 0 };
    expect(-corner.y / MM_PER_INCH).toBeCloseTo(0.25, 9);
    expect(corner.x / MM_PER_INCH).toBeCloseTo(3 - (0.25 * 6.392) / 38.25, 9);
    expect(made.straightLength).toBeCloseTo(inches(3), 9);
    for (const angle of squareEnds(made.piece)) expect(angle).toBeCloseTo(90, 6);
  });

  it('lowers the centre, and leaves every other corner alone', () => {
    const made = raised(ingalls, { rise: 5, centreDip: 7 });
    expect(made.piece.corners[0]?.at).toEqual({ x: 0, y: 7 });
    expect(made.piece.corners.slice(2)).toEqual(ingalls.corners.slice(2));
  });

  it('runs a curved side on from where it began, and cuts it off when the seam end is lowered', () => {
    const panel = straightPanel(220, 268, 163);
    const up = raised(panel, { rise: 14 });
    const upShape = up.piece.edges[1]?.shape;
    expect(upShape?.kind === 'curve' && upShape.through[0]).toEqual({ x: 220, y: 0 });
    const down = raised(panel, { rise: -30 });
    expect(down.piece.corners[1]?.at.y).toBeCloseTo(30, 5);
    const side = (piece: Piece) => pathLength(outlineOf(piece).edges[1] ?? []);
    expect(side(down.piece)).toBeLessThan(side(panel) - 30);
    for (const angle of squareEnds(down.piece)) expect(angle).toBeCloseTo(90, 6);
  });

  it('raises both ends of a gore about its middle', () => {
    const made = raised(straightGore(150, 178, 163), { rise: 6 });
    const [left, right] = made.piece.corners;
    expect(left?.at.y).toBeCloseTo(-6, 9);
    expect(right?.at.y).toBeCloseTo(-6, 9);
    expect(left?.at.x).toBeCloseTo(-(right?.at.x ?? 0), 9);
  });

  it('keeps a notch on the side at its place', () => {
    const [, side] = ingalls.edges;
    const marked: Piece = { ...ingalls, notches: [{ id: 'n', edgeId: side?.id ?? '', along: 150, count: 1 }] };
    const more = inches(0.25) * Math.hypot(1, 6.392 / 38.25);
    expect(raised(marked, { rise: inches(0.25) }).piece.notches[0]?.along).toBeCloseTo(150 + more, 9);
  });

  it('refuses what is no waist and a height the side never comes to', () => {
    const wish = { waistEdgeId: ingalls.edges[2]?.id ?? '', rise: 6 };
    expect(raisedWaist(ingalls, wish)).toEqual({ kind: 'no-raised-waist', why: 'no-waist-edge' });
    const deep = { waistEdgeId: ingalls.edges[0]?.id ?? '', rise: -2000 };
    expect(raisedWaist(ingalls, deep)).toEqual({ kind: 'no-raised-waist', why: 'off-the-side' });
  });
});
