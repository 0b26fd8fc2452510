import { expect, it } from 'vitest';
import { newGarment } from '../../core/garment/new-garment';
import { readGarment } from '../../core/garment/schema';
import { idsInOrder } from './linden';

it.each(['in', 'cm'] as const)(
  'newGarment in %s is a garment that can be stored, with nothing in it yet',
  (shownIn) => {
    const garment = newGarment({ newId: idsInOrder(), today: '2026-11-25', name: 'Petticoat', shownIn });
    expect(readGarment(garment)).toEqual({ kind: 'garment', garment });
    expect([garment.pieces, garment.diagrams, garment.rings]).toEqual([[], [], []]);
    expect(garment.id).not.toBe(garment.wearer.currentSetId);
  },
);
