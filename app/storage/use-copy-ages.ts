import { useEffect, useState } from 'react';
import type { CopyAge } from '../state/copy-age';
import { useKept } from '../state/kept-store';
import { copyAges } from './copies';
import type { ShelfRow } from './database';

const NONE: ReadonlyMap<string, CopyAge> = new Map();

/** How old the copies of garments are, by their ids; looked at anew when one was made or the shelf changed. */
export function useCopyAges(rows: readonly ShelfRow[]): ReadonlyMap<string, CopyAge> {
  const copies = useKept((kept) => kept.copies);
  const [ages, setAges] = useState(NONE);
  // biome-ignore lint/correctness/useExhaustiveDependencies: a copy that was noted is what makes it look again
  useEffect(() => {
    let gone = false;
    copyAges(rows.map(({ id }) => id)).then(
      (found) => gone || setAges(found),
      () => undefined,
    );
    return () => {
      gone = true;
    };
  }, [rows, copies]);
  return ages;
}
