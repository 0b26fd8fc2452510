import { useEffect } from 'react';
import { ensureInk, leaveInk } from './picture-ink';
import type { ReadyPicture } from './picture-store';

/** Parts of the screen that want the ink of a picture just now. */
let wanting = 0;

/** Reads the ink of a picture while it is wanted; when nobody wants it any longer, it is forgotten. */
export function useInk(photo: ReadyPicture | undefined, isWanted: boolean): void {
  useEffect(() => {
    if (!photo || !isWanted) return;
    wanting += 1;
    void ensureInk(photo);
    return () => {
      wanting -= 1;
      if (wanting === 0) leaveInk();
    };
  }, [photo, isWanted]);
}
