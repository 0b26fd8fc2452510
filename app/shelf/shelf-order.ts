import { isFound } from '../../core/garment/shelf-text';
import type { OnShelf } from '../storage/shelf';

/** In what order the shelf stands. */
export const ORDERS = ['changed', 'name', 'made'] as const;
export type Order = (typeof ORDERS)[number];

/** The garments that speak of what is sought, in that order: the newest first, names by the alphabet. */
export function onShelf(
  rows: readonly OnShelf[],
  { sought, order }: { readonly sought: string; readonly order: Order },
): readonly OnShelf[] {
  const found = rows.filter((row) => isFound(row.text ?? row.name.toLowerCase(), sought.trim()));
  return found.sort(compare[order]);
}

const compare: Readonly<Record<Order, (a: OnShelf, b: OnShelf) => number>> = {
  changed: (a, b) => b.changed - a.changed,
  name: (a, b) => a.name.localeCompare(b.name),
  made: (a, b) => (b.made ?? '').localeCompare(a.made ?? ''),
};
