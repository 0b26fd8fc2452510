import type { JournalRow } from './database';

/**
 * The journal is written while the page lives on; of what happens in the very moment it is closed nothing would arrive.
 * The browser's small store writes at once, and holds those last entries until the garment is opened again.
 */
const keyOf = (garmentId: string) => `inchsquare not yet kept ${garmentId}`;

/** Sets the entries of a garment aside that are not on the device yet; without any nothing is left there. */
export function setAside(garmentId: string, rows: readonly JournalRow[]): void {
  try {
    if (rows.length === 0) localStorage.removeItem(keyOf(garmentId));
    else localStorage.setItem(keyOf(garmentId), JSON.stringify(rows));
  } catch {
    // A browser without such a store, or a full one, loses that moment; what stood there before it is kept.
  }
}

/** The entries of a garment that were set aside. What they say is looked at when they are followed. */
export function rowsAside(garmentId: string): readonly JournalRow[] {
  try {
    const rows: unknown = JSON.parse(localStorage.getItem(keyOf(garmentId)) ?? '[]');
    return Array.isArray(rows) ? rows.filter((row) => row?.garmentId === garmentId && Number.isInteger(row.seq)) : [];
  } catch {
    return [];
  }
}
