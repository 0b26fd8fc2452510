import { startTransition, useEffect, useState } from 'react';
import type { Garment } from '../../core/garment/garment';
import { isDragging, useGarment } from '../state/garment-store';

/** How often at most the garment is looked at anew while it is being dragged, so that a drag is never held up. */
const REST_MS = 80;

/** The garment as it is, or a moment ago: it follows a drag in steps instead of frame by frame, a single change at once. */
export function useRestedGarment(): Garment | undefined {
  const [garment, setGarment] = useState(() => useGarment.getState().garment);
  useEffect(() => {
    let timer: ReturnType<typeof setTimeout> | undefined;
    let looked = Number.NEGATIVE_INFINITY;
    const look = () => {
      timer = undefined;
      looked = performance.now();
      const { garment } = useGarment.getState();
      // During a drag the numbers may come a little later; the point under the pointer may not.
      if (isDragging()) startTransition(() => setGarment(garment));
      else setGarment(garment);
    };
    const stop = useGarment.subscribe((now, before) => {
      if (now.garment === before.garment) return;
      // A field that is left and a choice that is pressed right after it are two changes, each shown at once.
      if (!isDragging()) {
        clearTimeout(timer);
        look();
        return;
      }
      if (timer !== undefined) return;
      const rest = REST_MS - (performance.now() - looked);
      if (rest <= 0) look();
      else timer = setTimeout(look, rest);
    });
    setGarment(useGarment.getState().garment);
    return () => {
      stop();
      clearTimeout(timer);
    };
  }, []);
  return garment;
}
