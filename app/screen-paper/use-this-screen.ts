import { useEffect, useState } from 'react';
import type { ScreenSize } from '../../core/screen/pan-steps';

/** What can be told of the screen a page is on; two screens that say the same cannot be told apart. */
export interface ThisScreen {
  readonly size: ScreenSize;
  /** Changes with the screen, its resolution and the zoom of the page: what was measured holds no more. */
  readonly key: string;
  /** The same and the size of the window, on which the corners of a beam depend. */
  readonly windowKey: string;
  /** Drawn larger by two fingers, over the zoom of the page: nothing measures true. */
  readonly isPinched: boolean;
}

const LOOK_EVERY = 1000;

/** The screen the page is on, followed as the window is moved, zoomed, turned or filled. */
export function useThisScreen(): ThisScreen {
  const [now, setNow] = useState(look);
  useEffect(() => {
    const changed = () =>
      setNow((before) => {
        const after = look();
        return after.windowKey === before.windowKey && after.isPinched === before.isPinched ? before : after;
      });
    const ratio = window.matchMedia(`(resolution: ${window.devicePixelRatio}dppx)`);
    ratio.addEventListener('change', changed);
    window.addEventListener('resize', changed);
    window.visualViewport?.addEventListener('resize', changed);
    // Not every browser tells of every change, and cloth is cut by this.
    const clock = setInterval(changed, LOOK_EVERY);
    return () => {
      clearInterval(clock);
      ratio.removeEventListener('change', changed);
      window.removeEventListener('resize', changed);
      window.visualViewport?.removeEventListener('resize', changed);
    };
  });
  return now;
}

function look(): ThisScreen {
  const size = { width: window.innerWidth, height: window.innerHeight };
  const key = `${screen.width} by ${screen.height} at ${Math.round(window.devicePixelRatio * 1000) / 1000}`;
  const isPinched = Math.abs((window.visualViewport?.scale ?? 1) - 1) > 0.001;
  return { size, key, windowKey: `${key}, ${size.width} by ${size.height}`, isPinched };
}
