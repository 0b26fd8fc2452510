import type { FindingBase, Place } from '../garment/finding';
import type { Finding } from './before-you-cut';

/** What a change of the garment would bring up, and what it would settle. */
export interface NewlyFound {
  readonly appears: readonly Finding[];
  readonly settled: readonly Finding[];
}

/**
 * What is open after a change and was not before, and the other way round. A finding is the same when it speaks of the
 * same thing at the same place with the same weight, whatever its numbers are now.
 */
export function newlyFound(before: readonly Finding[], after: readonly Finding[]): NewlyFound {
  const [had, has] = [new Set(before.map(keyOf)), new Set(after.map(keyOf))];
  return {
    appears: after.filter((finding) => !had.has(keyOf(finding))),
    settled: before.filter((finding) => !has.has(keyOf(finding))),
  };
}

function keyOf({ kind, weight, place }: FindingBase & { readonly kind: string }): string {
  return [kind, weight, ...placeParts(place)].join('\n');
}

function placeParts(place: Place): readonly (string | undefined)[] {
  switch (place.kind) {
    case 'garment':
    case 'paper':
      return [place.kind];
    case 'measure':
      return [place.measure];
    case 'diagram':
      return [place.diagramId, place.knownLengthId];
    case 'piece':
      return [place.pieceId];
    case 'edge':
      return [place.pieceId, place.edgeId];
    case 'ring':
      return [place.ringId, place.levelId];
  }
}
