import { SCHEMA } from './garment';
import { type GarmentReading, readGarment } from './schema';

export type StoredReading = GarmentReading | { readonly kind: 'newer'; readonly schema: number };

/**
 * A garment from storage or a file, whatever age it has: brought up step by step to the present shape and checked. One
 * from a newer program is named as such and not touched. There is one shape so far, and so no step yet.
 */
export function readStoredGarment(value: unknown): StoredReading {
  const schema = typeof value === 'object' && value !== null && 'schema' in value ? value.schema : undefined;
  if (typeof schema !== 'number' || !Number.isInteger(schema) || schema < 1) {
    return { kind: 'not-a-garment', where: 'schema', why: 'value' };
  }
  if (schema > SCHEMA) return { kind: 'newer', schema };
  return readGarment(value);
}
