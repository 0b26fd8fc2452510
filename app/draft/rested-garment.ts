import { useEffect, useState } from 'react';
import type { Garment } from '../../core/garment/garment';
import { useGarment } from '../state/garment-store';

/** How often at most the garment is looked at anew while it is being dragged, so that a drag is never held up. */
const REST_MS = 80;

/** The garment a moment ago: it follows a drag in steps instead of frame by frame. */
export function useRestedGarment(): Garment | undefined {
  const [garment, setGarment] = useState(() => useGarment.getState().garment);
  useEffect(() => {
    let timer: ReturnType<typeof setTimeout> | undefined;
    const look = () => {
      timer = undefined;
      setGarment(useGarment.getState().garment);
    };
    const stop = useGarment.subscribe((now, before) => {
      if (now.garment !== before.garment) timer ??= setTimeout(look, REST_MS);
    });
    look();
    return () => {
      stop();
      clearTimeout(timer);
    };
  }, []);
  return garment;
}
