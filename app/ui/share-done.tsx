import { uiWords } from '../words/ui';
import { Button } from './button';
import styles from './share-done.module.css';

interface ShareDoneProps {
  readonly label: string;
  /** 0 to 1 */
  readonly share: number;
  readonly onStop: () => void;
}

/** How far something is that takes a moment, and a way to stop it. */
export function ShareDone({ label, share, onStop }: ShareDoneProps) {
  return (
    <div className={styles.done}>
      <label>
        {label} <progress value={share} max={1} />
      </label>
      <Button onPress={onStop}>{uiWords.stop}</Button>
    </div>
  );
}
