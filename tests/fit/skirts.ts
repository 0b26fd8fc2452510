import { proposedRing } from '../../core/fit/default-ring';
import type { Garment, Ring } from '../../core/garment/garment';
import type { Measure, MeasureName } from '../../core/garment/measure';
import { newGarment } from '../../core/garment/new-garment';
import type { Piece } from '../../core/garment/piece';
import { inches } from '../../core/units/inch';

/** A garment of these pieces on a body of these measures (inches), with the ring the program proposes. */
export function garmentOf(
  pieces: readonly Piece[],
  measures: Readonly<Partial<Record<MeasureName, number | Measure>>>,
): { readonly garment: Garment; readonly ring: Ring } {
  let count = 0;
  const newId = () => `g${++count}`;
  const empty = newGarment({ newId, today: '2026-03-04', name: 'Skirt', shownIn: 'in' });
  const entries = Object.entries(measures).map(([name, measure]) => [
    name,
    typeof measure === 'number' ? { length: inches(measure) } : measure,
  ]);
  const [set] = empty.wearer.sets;
  if (!set) throw new Error('no set');
  const wearer = { ...empty.wearer, sets: [{ ...set, measures: Object.fromEntries(entries) }] };
  const garment: Garment = { ...empty, wearer, pieces };
  const ring = proposedRing(garment, { newId, name: 'Round the body' });
  return { garment: { ...garment, rings: [ring] }, ring };
}

/** A body of 28 and 38 in with the hip 8 in down, the high hip 34 in 4 in down. */
export const figure = { waist: 28, highHip: 34, hip: 38, waistToHighHip: 4, waistToHip: 8 } as const;
