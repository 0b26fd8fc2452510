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
  | { readonly kind: 'mockup'; readonly mockupId: string }
  | { readonly kind: 'cloth'; readonly clothId: string }
  | { readonly kind: 'paper' };

/**
 * What every finding has. Each room of the core adds its own tagged kinds with their numbers; the sentences are the
 * app's. The `kind`s of all rooms are distinct.
 */
export interface FindingBase {
  readonly weight: Weight;
  readonly place: Place;
}

/**
 * Whether two findings say the same of the same place, whatever their numbers and their weight are now. One that has
 * become a `stop` since is the same finding, and worse.
 */
export function sameFinding(a: Finding, b: Finding): boolean {
  return a.kind === b.kind && isSamePlace(a.place, b.place) && a.side === b.side && wordAt(a) === wordAt(b);
}

/** What `after` says that `before` did not say, or only warned of where it now holds back cutting. */
export function newFindings<Found extends Finding>(before: readonly Finding[], after: readonly Found[]): Found[] {
  return after.filter(
    (found) => !before.some((had) => sameFinding(had, found) && !(had.weight === 'warn' && found.weight === 'stop')),
  );
}

/** A finding of any room. Where one place can have several they say which by a `side` or a word in `at`. */
interface Finding extends FindingBase {
  readonly kind: string;
  readonly side?: 'left' | 'right';
  readonly at?: unknown;
}

/** An `at` may also be a point of the table, which moves with every change. */
function wordAt({ at }: Finding): string | undefined {
  return typeof at === 'string' ? at : undefined;
}

function isSamePlace(a: Place, b: Place): boolean {
  switch (a.kind) {
    case 'garment':
    case 'paper':
      return a.kind === b.kind;
    case 'measure':
      return a.kind === b.kind && a.measure === b.measure;
    case 'diagram':
      return a.kind === b.kind && a.diagramId === b.diagramId && a.knownLengthId === b.knownLengthId;
    case 'piece':
      return a.kind === b.kind && a.pieceId === b.pieceId;
    case 'edge':
      return a.kind === b.kind && a.pieceId === b.pieceId && a.edgeId === b.edgeId;
    case 'mockup':
      return a.kind === b.kind && a.mockupId === b.mockupId;
    case 'cloth':
      return a.kind === b.kind && a.clothId === b.clothId;
    case 'ring':
      return a.kind === b.kind && a.ringId === b.ringId && a.levelId === b.levelId;
  }
}
