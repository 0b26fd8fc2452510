import type { Garment } from '../../core/garment/garment';
import { useGarment } from '../state/garment-store';
import { Button } from '../ui/button';
import { say } from '../ui/say';
import { trialWords as words } from '../words/trial';
import styles from './trial.module.css';

interface TakeOrLeaveProps {
  /** The garment as it would be; `undefined` or the very garment there is when there is nothing to take. */
  readonly after: Garment | undefined;
  readonly garment: Garment;
  /** What the step is called, for undo. */
  readonly label: string;
  readonly onDone: () => void;
}

/** The end of every trial: the change becomes one step, or nothing has happened. */
export function TakeOrLeave({ after, garment, label, onDone }: TakeOrLeaveProps) {
  const changes = after !== undefined && after !== garment;
  const take = () => {
    if (!changes) return;
    useGarment.getState().edit(label, () => after);
    onDone();
    say(words.taken(label));
  };
  return (
    <div className={styles.row}>
      <Button tone="chalk" icon="done" disabled={!changes} onPress={take}>
        {words.take}
      </Button>
      <Button icon="close" onPress={onDone}>
        {words.leave}
      </Button>
    </div>
  );
}
