import type { MeasureName } from './measure';

/** `stop` holds back cutting; `warn` is worth a look. */
export type Weight = 'stop' | 'warn';

/** Where a finding can be mended. */
export type Place =
  | { readonly kind: 'garment' }
  | { readonly kind: 'measure'; readonly measure: MeasureName }
  | { readonly kind: 'diagram'; readonly diagramId: string; readonly knownLengthId?: string }
  | { readonly kind: 'piece'; readonly pieceId: string }
  | { readonly kind: 'edge'; readonly pieceId: string; readonly edgeId: string }
  | { readonly kind: 'ring'; readonly ringId: string; readonly levelId?: string }
  | { readonly kind: 'paper' };

/**
 * What every finding has. Each room of the core adds its own tagged kinds with their numbers; the sentences are the
 * app's. The `kind`s of all rooms are distinct.
 */
export interface FindingBase {
  readonly weight: Weight;
  readonly place: Place;
}
