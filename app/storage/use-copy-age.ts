import { useEffect, useState } from 'react';
import type { CopyAge } from '../state/copy-age';
import { useKept } from '../state/kept-store';
import { copyAges } from './copies';

/** Not after every step: nobody needs to know to the second. */
const LOOK_AFTER_MS = 1500;

/** How old the copy of a garment in a file is, looked at anew a moment after it was last kept. */
export function useCopyAge(garmentId: string | undefined, isKept: boolean): CopyAge | undefined {
  const copies = useKept((kept) => kept.copies);
  const [seen, setSeen] = useState<{ readonly id: string; readonly age: CopyAge | undefined }>();
  // biome-ignore lint/correctness/useExhaustiveDependencies: a copy that was noted is what makes it look again
  useEffect(() => {
    if (garmentId === undefined || !isKept) return;
    let gone = false;
    const look = () =>
      copyAges([garmentId]).then(
        (ages) => gone || setSeen({ id: garmentId, age: ages.get(garmentId) }),
        () => undefined,
      );
    const timer = setTimeout(look, LOOK_AFTER_MS);
    return () => {
      gone = true;
      clearTimeout(timer);
    };
  }, [garmentId, isKept, copies]);
  return seen?.id === garmentId ? seen?.age : undefined;
}
