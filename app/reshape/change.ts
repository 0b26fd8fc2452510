import type { ReactNode } from 'react';
import type { Garment } from '../../core/garment/garment';
import type { TablePoint } from '../../core/geometry/point';
import type { Path } from '../../core/geometry/segment';
import type { Chosen } from '../state/table-store';
import type { Figure } from '../trial/figures';
import type { IconName } from '../ui/icon';

/** What a change would make of the garment, or why it makes nothing of it, in a sentence for her. */
export type Tried =
  | {
      readonly kind: 'tried';
      readonly garment: Garment;
      /** Numbers beside those that are shown of every change. */
      readonly figures?: readonly Figure[];
      /** What the change leaves open, in sentences for her. */
      readonly questions?: readonly string[];
    }
  | { readonly kind: 'not-tried'; readonly sentence: string };

/** A line that belongs to a change itself: where a piece is cut through, and where it hinges. */
export interface TrialLine {
  readonly path: Path;
  readonly look: 'cut' | 'aside';
  readonly words?: string;
}

/** A place of a change that can be taken hold of on the table. Its number stands in a field as well. */
export interface Grip {
  readonly at: TablePoint;
  moved(to: TablePoint): Trying;
}

/** A change that is being tried: nothing of it is in the garment until she takes it. */
export interface Trying {
  readonly name: ChangeName;
  /** What the step is called, for undo. */
  label(garment: Garment): string;
  make(garment: Garment): Tried;
  /** Its fields. `set` shows the change with other numbers. */
  fields(garment: Garment, set: (next: Trying) => void): ReactNode;
  lines?(garment: Garment): readonly TrialLine[];
  grips?(garment: Garment): readonly Grip[];
  /** The same change for what she presses on the table; `undefined` when it has no use for that. */
  picks?(garment: Garment, chosen: Chosen): Trying | undefined;
}

export const CHANGES = [
  'lengthen',
  'take-in',
  'slash',
  'fullness',
  'new-dart',
  'move-dart',
  'dart-away',
  'split-dart',
  'waist',
  'hang',
  'sides-apart',
  'base',
  'band',
  'strip',
] as const;
export type ChangeName = (typeof CHANGES)[number];

/** One kind of change. */
export interface Change {
  readonly name: ChangeName;
  readonly icon: IconName;
  /** Begins with what is chosen, or says what must be there or be chosen first. */
  begin(garment: Garment, chosen: Chosen): Trying | { readonly kind: 'first'; readonly sentence: string };
}
