import { useEffect } from 'react';
import { useGarment } from '../state/garment-store';
import { say } from '../ui/say';
import { shellWords as words } from '../words/shell';

/** Says when a change was not taken, so that no field springs back without a word. */
export function SayRefused() {
  const refused = useGarment((state) => state.refused);
  useEffect(() => {
    if (refused) say(words.refused(refused.label));
  }, [refused]);
  return null;
}
