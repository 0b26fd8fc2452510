import { type RefObject, useEffect, useState } from 'react';

export interface FullScreen {
  /** Some phones have no way to fill the screen. */
  readonly can: boolean;
  readonly is: boolean;
  readonly toggle: () => void;
}

/** Lets an element fill the whole screen, and lets the screen go when the element is left. */
export function useFullScreen(element: RefObject<HTMLElement | null>): FullScreen {
  const [is, setIs] = useState(false);
  useEffect(() => {
    const changed = () => setIs(document.fullscreenElement !== null);
    document.addEventListener('fullscreenchange', changed);
    return () => {
      document.removeEventListener('fullscreenchange', changed);
      if (document.fullscreenElement) void document.exitFullscreen();
    };
  }, []);
  return {
    can: document.fullscreenEnabled === true,
    is,
    toggle: () => {
      // A refusal leaves the window as it is, which works as well.
      if (document.fullscreenElement) void document.exitFullscreen();
      else element.current?.requestFullscreen().catch(() => undefined);
    },
  };
}
