import { describe, expect, it } from 'vitest';
import { lindenGarment } from '../../app/demo/linden-garment';
import { letOutAt } from '../../core/fit/let-out';
import { girthsOf } from '../../core/fit/round-body';
import { takeInSeam } from '../../core/fit/take-in-seam';
import { waistNeeds } from '../../core/fit/waist-needs';
import type { Garment, Ring } from '../../core/garment/garment';
import type { Piece } from '../../core/garment/piece';
import { type Seam, seamOfEdge } from '../../core/garment/seam';
import { withPiece } from '../../core/garment/with-piece';
import { takeIn } from '../../core/shaping/take-in';
import { inches } from '../../core/units/inch';
import { traced } from '../shaping/traced';
import { figure, garmentOf } from './skirts';

const STEP = inches(1 / 16);

/** The demo garment for a larger hip, its waist curved as the body needs it. */
function demo(hip: number): { garment: Garment; ring: Ring } {
  let count = 0;
  const fresh = lindenGarment({ newId: () => `${++count}`, today: '2026-01-01', photoId: 'p' });
  const [set] = fresh.wearer.sets;
  const [ring] = fresh.rings;
  if (!set || !ring) throw new Error('the demo garment has measures and a ring');
  const measures = { ...set.measures, hip: { length: inches(hip), depth: inches(8) } };
  const garment: Garment = { ...fresh, wearer: { ...fresh.wearer, sets: [{ ...set, measures }] } };
  const curved = waistNeeds(garment, ring).reduce(
    (so, need) => (need.kind === 'needs-curve' ? withPiece(so, need.pieceId, () => need.curve.piece) : so),
    garment,
  );
  return { garment: curved, ring };
}

function levelIdOf(ring: Ring, girth: string): string {
  return ring.levels.find((level) => level.girth === girth)?.id ?? '';
}

function shortAtHip(garment: Garment, ring: Ring): number {
  const girth = girthsOf(garment, ring).find(({ level }) => level.girth === 'hip');
  if (girth?.kind !== 'measured') throw new Error('the hip is measured');
  return girth.wanted - girth.total;
}

/** The garment with its seam let out as it is proposed. */
function letOut(garment: Garment, ring: Ring): Garment {
  const way = letOutAt(garment, ring, levelIdOf(ring, 'hip'), STEP);
  if (!way) throw new Error('no way was found');
  const pins = [{ along: way.along, by: -way.by }];
  const seam = seamOfEdge(garment.seams, way.edge);
  if (way.of === 'seam' && seam) {
    const wider = takeInSeam(garment, seam, { pins });
    if ('why' in wider) throw new Error(wider.why);
    return wider;
  }
  const piece = garment.pieces.find(({ id }) => id === way.edge.pieceId) as Piece;
  const wider = takeIn(piece, way.edge.edgeId, pins);
  if ('why' in wider) throw new Error(wider.why);
  return withPiece(garment, piece.id, () => wider);
}

const front = traced('front', [
  [[0, 0], 'waist'],
  [[180, 0], 'seam', [[240, 200]]],
  [[300, 660], 'hem'],
  [[0, 660], 'fold'],
]);
const back = traced('back', [
  [[1000, 0], 'waist'],
  [[1180, 0], 'fold'],
  [[1180, 660], 'hem'],
  [[880, 660], 'seam', [[940, 200]]],
]);
const side: Seam = {
  id: 's',
  name: 'Side',
  one: [{ pieceId: front.id, edgeId: front.edges[1]?.id ?? '' }],
  other: [{ pieceId: back.id, edgeId: back.edges[3]?.id ?? '' }],
  ease: 0,
  way: 'opposite',
};

describe('letOutAt', () => {
  it.each([38.5, 39, 40])(
    'brings the hip of the demo garment to what a body of %f in wants, and no step further',
    (hip) => {
      const { garment, ring } = demo(hip);
      const short = shortAtHip(garment, ring);
      expect(short).toBeGreaterThan(STEP);
      const after = shortAtHip(letOut(garment, ring), ring);
      expect(after).toBeLessThanOrEqual(inches(1 / 32));
      // The one drawn edge comes four times round the body.
      expect(after).toBeGreaterThan(-4 * STEP);
    },
  );

  it('shares it over both edges of a seam, and counts how often that comes', () => {
    const { garment, ring } = garmentOf([front, back], figure);
    const sewn = { ...garment, seams: [side] };
    const short = shortAtHip(sewn, ring);
    expect(short).toBeGreaterThan(STEP);
    expect(letOutAt(sewn, ring, levelIdOf(ring, 'hip'), STEP)?.of).toBe('seam');
    const after = letOut(sewn, ring);
    expect(shortAtHip(after, ring)).toBeLessThanOrEqual(inches(1 / 32));
    expect(shortAtHip(after, ring)).toBeGreaterThan(-2 * STEP);
    expect(after.pieces.every((piece, i) => piece !== sewn.pieces[i])).toBe(true);
  });

  it('says nothing where the girth is wide enough, or no seam is met', () => {
    const { garment, ring } = demo(36);
    expect(letOutAt(garment, ring, levelIdOf(ring, 'hip'), STEP)).toBeUndefined();
    expect(letOutAt(garment, ring, 'none', STEP)).toBeUndefined();
    const closed = traced('closed', [
      [[0, 0], 'waist'],
      [[180, 0], 'opening'],
      [[240, 660], 'hem'],
      [[0, 660], 'fold'],
    ]);
    const other = garmentOf([closed], figure);
    expect(letOutAt(other.garment, other.ring, levelIdOf(other.ring, 'hip'), STEP)).toBeUndefined();
  });
});
