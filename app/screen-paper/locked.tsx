import { useEffect, useState } from 'react';
import { Button } from '../ui/button';
import { screenPaperWords as words } from '../words/screen-paper';
import styles from './screen-paper.module.css';

/** The question goes away by itself, so that a sleeve that touched the first button has done nothing (ms). */
const ASKS_FOR = 6000;

/** Over everything: nothing answers but two presses, one after the other in two places. */
export function Locked({ onUnlock }: { readonly onUnlock: () => void }) {
  const [asks, setAsks] = useState(false);
  useEffect(() => {
    if (!asks) return;
    const clock = setTimeout(() => setAsks(false), ASKS_FOR);
    return () => clearTimeout(clock);
  }, [asks]);
  return (
    <div className={styles.locked}>
      <Button onPress={() => setAsks(true)}>{words.locked}</Button>
      {asks && (
        <div className={styles.unlock}>
          <Button tone="chalk" onPress={onUnlock}>
            {words.unlock}
          </Button>
        </div>
      )}
    </div>
  );
}
