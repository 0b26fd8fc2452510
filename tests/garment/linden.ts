import type { Garment } from '../../core/garment/garment';
import { readStoredGarment } from '../../core/garment/migrate';
import type { Piece } from '../../core/garment/piece';
import sample from './samples/schema-2.json';

/** The frozen sample of the present stored shape: a petticoat of our own, with every field in use. */
export const lindenSample: unknown = sample;

/** The same, read. */
export function linden(): Garment {
  const read = readStoredGarment(structuredClone(sample));
  if (read.kind !== 'garment') throw new Error(`the sample is ${read.kind}`);
  return read.garment;
}

/** Its panel: straight waist (0), curved side (1), curved hem (2) and fold (3). */
export function lindenPanel(): Piece {
  return linden().pieces[0] as Piece;
}

/** Ids in order: new-1, new-2, … */
export function idsInOrder(): () => string {
  let count = 0;
  return () => {
    count += 1;
    return `new-${count}`;
  };
}
