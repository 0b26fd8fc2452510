/** What a search knows besides how its field lies: the best lay, near misses, and how it stands with the present length. */
import type { FirstLay } from './first-lay';
import type { LayField } from './lay-field';
import type { Lay } from './lay-task';
import type { Random } from './place-search';
import type { Round } from './separate';

/** Where everything lay at some time. */
export interface Kept {
  readonly shape: Int32Array;
  readonly x: Float64Array;
  readonly y: Float64Array;
}

/** What the next step goes on with: the first lay, working out how deep pieces lie, or a round of taking them apart. */
export type Doing =
  | { readonly kind: 'first'; readonly first: FirstLay; readonly hers?: Lay }
  | { readonly kind: 'depths'; next: number }
  | { readonly kind: 'round'; readonly round: Round };

/** A search under way. It changes with every step and belongs to whoever steps it. */
export interface LaySearch {
  readonly kind: 'search';
  readonly field: LayField;
  readonly random: Random;
  /** No lay can be shorter: by area, by the longest piece, by the pinned ones. */
  readonly least: number;
  doing: Doing;
  best: Kept & { readonly length: number };
  /** The lay the search began from, and the best since it last began there: the cloth is shortened from that. */
  begun: Kept & { readonly length: number };
  reached: Kept & { readonly length: number };
  /** Rounds since it last began, and how many there had been when it came to what is reached. */
  roundsGone: number;
  roundsTaken: number;
  /** The nearest to a lay on the cloth's present length. */
  nearest: Kept & { readonly depth: number };
  /** Near misses since what is reached, the nearest first. */
  misses: (Kept & { readonly depth: number })[];
  /** The share the cloth is shortened by. */
  shorten: number;
  /** Rounds on the present length. */
  rounds: number;
  /** Rounds since it came nearer, and how often there were too many of them. */
  roundsInVain: number;
  strikes: number;
}

/** How a field lies now, to be come back to. */
export function keptOf(field: LayField): Kept {
  return { shape: field.shape.slice(), x: field.x.slice(), y: field.y.slice() };
}

/** Lays a field as it was kept. Depths are not worked out anew. */
export function restore(field: LayField, from: Kept): void {
  field.shape.set(from.shape);
  field.x.set(from.x);
  field.y.set(from.y);
}
