import { useEffect, useRef } from 'react';

/** A rest this long between two letters, and what stands there is taken. */
const REST_MS = 400;

/**
 * Calls `take` when something `pending` has rested a while, and when the page is hidden or left. Nothing happens while
 * there is nothing pending.
 */
export function useRest(pending: string | undefined, take: () => void): void {
  const now = useRef({ pending, take });
  now.current = { pending, take };

  useEffect(() => {
    if (pending === undefined) return;
    const timer = setTimeout(() => now.current.take(), REST_MS);
    return () => clearTimeout(timer);
  }, [pending]);

  useEffect(() => {
    const takeNow = () => now.current.pending !== undefined && now.current.take();
    document.addEventListener('visibilitychange', takeNow);
    window.addEventListener('pagehide', takeNow);
    return () => {
      document.removeEventListener('visibilitychange', takeNow);
      window.removeEventListener('pagehide', takeNow);
    };
  }, []);
}
