import { SCHEMA } from './garment';
import { type GarmentReading, readGarment } from './schema';

export type StoredReading = GarmentReading | { readonly kind: 'newer'; readonly schema: number };

/**
 * A garment from storage or a file, whatever age it has: brought up step by step to the present shape and checked. One
 * from a newer program is named as such and not touched.
 */
export function readStoredGarment(value: unknown): StoredReading {
  if (typeof value !== 'object' || value === null) return { kind: 'not-a-garment', where: 'schema', why: 'value' };
  const schema: unknown = 'schema' in value ? value.schema : undefined;
  if (typeof schema !== 'number' || !Number.isInteger(schema) || schema < 1) {
    return { kind: 'not-a-garment', where: 'schema', why: 'value' };
  }
  if (schema > SCHEMA) return { kind: 'newer', schema };
  // Shape 2 added only fields that may be missing, so a garment of shape 1 lacks nothing but the number.
  return readGarment({ ...value, schema: SCHEMA });
}
