import { expect, it } from 'vitest';
import { withMeasuresChanged } from '../../core/diagram/reseat-for-measures';
import type { Garment } from '../../core/garment/garment';
import type { Piece } from '../../core/garment/piece';
import { linden } from '../garment/linden';

/** The sample with one flat diagram whose scale is a quarter of the waist, and its panel traced over it. */
function onWaist(): Garment {
  const garment = linden();
  const [diagram] = garment.diagrams.filter(({ id }) => id === 'plate-14');
  if (!diagram) throw new Error('no diagram');
  const knownLengths = [
    {
      id: 'k',
      from: { x: 0, y: 0 },
      to: { x: 400, y: 0 },
      says: { kind: 'share', measure: 'waist', parts: 1, of: 4, ease: 0 },
    },
  ] as const;
  const flat = { ...diagram, squareUp: { kind: 'flat' } as const, knownLengths, quarterTurns: 0 as const };
  return { ...garment, diagrams: [flat], pieces: [garment.pieces[0] as Piece] };
}

const withWaist =
  (waist: number) =>
  (garment: Garment): Garment => ({
    ...garment,
    wearer: {
      ...garment.wearer,
      sets: garment.wearer.sets.map((set) => ({ ...set, measures: { ...set.measures, waist: { length: waist } } })),
    },
  });

it('withMeasuresChanged lets a traced piece grow with the waist its picture is scaled by', () => {
  const before = onWaist();
  const after = withMeasuresChanged(before, withWaist(698.5 * 1.1));
  const [old, now] = [before.pieces[0], after.pieces[0]];
  old?.corners.forEach(({ at: place }, i) => {
    expect(now?.corners[i]?.at.x).toBeCloseTo(place.x * 1.1, 6);
    expect(now?.corners[i]?.at.y).toBeCloseTo(place.y * 1.1, 6);
  });
});

it('withMeasuresChanged leaves pieces alone when no measure changed', () => {
  const before = onWaist();
  const after = withMeasuresChanged(before, (garment) => ({ ...garment, name: 'Other' }));
  expect(after.pieces).toBe(before.pieces);
  expect(after.name).toBe('Other');
});
