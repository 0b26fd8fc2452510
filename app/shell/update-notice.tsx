import { useState } from 'react';
import { flushJournal } from '../storage/journal';
import { Button } from '../ui/button';
import { shellWords as words } from '../words/shell';
import styles from './header.module.css';
import { useUpdate } from './updates';

/** Offers a newer version once it is here. "Later" leaves everything as it is until the next start. */
export function UpdateNotice() {
  const take = useUpdate((update) => update.take);
  const [later, setLater] = useState(false);
  if (!take || later) return null;
  return (
    <div className={styles.update} role="status">
      <span>{words.newer}</span>
      <Button tone="chalk" onPress={() => void flushJournal().then(take)}>
        {words.newerTake}
      </Button>
      <Button onPress={() => setLater(true)}>{words.newerLater}</Button>
    </div>
  );
}
