import { useEffect, useState } from 'react';

/** Whether the screen is kept from falling asleep: `cannot` where the browser has no way, `refused` where it would not. */
export type Awake = 'asking' | 'kept' | 'refused' | 'cannot';

/** Keeps the screen awake as long as the component is there. See: W3C Screen Wake Lock API; a hidden page loses its lock. */
export function useAwake(): Awake {
  const [awake, setAwake] = useState<Awake>('asking');
  useEffect(() => {
    if (!('wakeLock' in navigator)) {
      setAwake('cannot');
      return;
    }
    let isLeft = false;
    let lock: WakeLockSentinel | undefined;
    async function ask() {
      if (document.visibilityState !== 'visible') return;
      try {
        const got = await navigator.wakeLock.request('screen');
        if (isLeft) return void got.release();
        lock = got;
        setAwake('kept');
        got.addEventListener('release', () => !isLeft && setAwake('asking'), { once: true });
      } catch {
        if (!isLeft) setAwake('refused');
      }
    }
    const shownAgain = () => void ask();
    document.addEventListener('visibilitychange', shownAgain);
    void ask();
    return () => {
      isLeft = true;
      document.removeEventListener('visibilitychange', shownAgain);
      void lock?.release();
    };
  }, []);
  return awake;
}
