import { describe, expect, it } from 'vitest';
import { diagramMap, photoToTable } from '../../core/diagram/diagram-map';
import { carryPieces } from '../../core/diagram/reseat';
import type { Diagram, KnownLength, Quad } from '../../core/garment/diagram';
import type { Garment } from '../../core/garment/garment';
import type { MeasureSet } from '../../core/garment/measure';
import { newGarment } from '../../core/garment/new-garment';
import { pieceFromTrace } from '../../core/garment/new-piece';
import type { Point } from '../../core/geometry/point';
import { known, sampleDiagram, set } from './sample-diagram';

const printed = [
  { x: 300, y: 310 },
  { x: 1200, y: 330 },
  { x: 1250, y: 2100 },
  { x: 280, y: 2050 },
] as const;

const wornBy = (worn: MeasureSet) => ({ name: '', sets: [worn], currentSetId: worn.id });

/** The garment after its one diagram has changed. */
const carried = (garment: Garment, after: Diagram) => carryPieces(garment, { ...garment, diagrams: [after] });

function tracedOn(diagram: Diagram): Garment {
  let last = 0;
  const newId = () => `n${++last}`;
  const map = diagramMap(diagram, set);
  if (map.kind !== 'map') throw new Error('not squared');
  const at = (point: Point) => photoToTable(map, point) ?? point;
  const ring = printed.map((point, i) => ({ at: at(point), through: i === 1 ? [at({ x: 1300, y: 1100 })] : [] }));
  const piece = pieceFromTrace(ring, { newId, name: 'Gore', diagramId: diagram.id });
  if (!piece) throw new Error('the ring encloses something');
  const edges = piece.edges.map((edge) => ({ ...edge, allowance: 15.9 }));
  const notches = [{ id: 'notch', edgeId: edges[0]?.id ?? '', along: 100, count: 1 as const }];
  return {
    ...newGarment({ newId, today: '2026-01-02', name: 'G', shownIn: 'in' }),
    wearer: wornBy(set),
    diagrams: [diagram],
    pieces: [{ ...piece, edges, notches }],
  };
}

describe('carryPieces', () => {
  const corners: Quad = [
    { x: 200, y: 190 },
    { x: 1800, y: 230 },
    { x: 1750, y: 2400 },
    { x: 160, y: 2350 },
  ];
  const before = sampleDiagram({ corners, knownLengths: [known('a', { x: 250, y: 250 }, { x: 1700, y: 280 }, 600)] });

  it('keeps every point on the printed line it was placed on when the scale and the corners are mended', () => {
    const after = {
      ...sampleDiagram({ corners: corners.with(2, { x: 1790, y: 2440 }) as unknown as Quad }),
      knownLengths: [known('a', { x: 250, y: 250 }, { x: 1700, y: 280 }, 645)],
    };
    const moved = carried(tracedOn(before), after);
    const map = diagramMap(after, set);
    if (map.kind !== 'map') throw new Error('not squared');
    printed.forEach((point, i) => {
      const at = moved.pieces[0]?.corners[i]?.at;
      const wanted = photoToTable(map, point);
      expect(at?.x).toBeCloseTo(wanted?.x ?? Number.NaN, 6);
      expect(at?.y).toBeCloseTo(wanted?.y ?? Number.NaN, 6);
    });
  });

  it('never scales allowances, and keeps a notch at its share of the edge', () => {
    const after = { ...before, knownLengths: [known('a', { x: 250, y: 250 }, { x: 1700, y: 280 }, 720)] };
    const moved = carried(tracedOn(before), after);
    expect(moved.pieces[0]?.edges.map((edge) => edge.allowance)).toEqual([15.9, 15.9, 15.9, 15.9]);
    expect(moved.pieces[0]?.notches[0]?.along).toBeCloseTo(120, 6);
  });

  it('grows a dart with its edge: its width, its place and its point', () => {
    const garment = tracedOn(before);
    const [piece] = garment.pieces;
    const dart = { id: 'dart', edgeId: piece?.edges[0]?.id ?? '', along: 90, width: 20, point: { x: 200, y: 140 } };
    const darted = { ...garment, pieces: garment.pieces.map((one) => ({ ...one, darts: [dart] })) };
    const after = { ...before, knownLengths: [known('a', { x: 250, y: 250 }, { x: 1700, y: 280 }, 720)] };
    const [moved] = carried(darted, after).pieces;
    expect(moved?.darts[0]).toEqual({
      ...dart,
      along: expect.closeTo(108, 6),
      width: expect.closeTo(24, 6),
      point: { x: expect.closeTo(240, 6), y: expect.closeTo(168, 6) },
    });
  });

  it('follows a measure that a known length is a share of', () => {
    const share = { kind: 'share', measure: 'waist', parts: 1, of: 4, ease: 0 } as const;
    const diagram = { ...before, knownLengths: [{ ...before.knownLengths[0], says: share } as KnownLength] };
    const larger = { ...set, measures: { ...set.measures, waist: { length: 711.2 * 1.05 } } };
    const garment = tracedOn(diagram);
    const moved = carryPieces(garment, { ...garment, wearer: wornBy(larger) });
    expect(moved.pieces[0]?.corners[2]?.at.x).toBeCloseTo(1.05 * (garment.pieces[0]?.corners[2]?.at.x ?? 0), 6);
  });

  it('leaves the garment as it is when nothing changed or nothing can be mapped', () => {
    const garment = tracedOn(before);
    expect(carried(garment, { ...before, name: 'other' }).pieces).toBe(garment.pieces);
    const crossed = sampleDiagram({ corners: [corners[0], corners[1], corners[3], corners[2]] });
    expect(carried(garment, crossed).pieces).toBe(garment.pieces);
  });
});
