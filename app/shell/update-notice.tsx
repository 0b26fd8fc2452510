import { useState } from 'react';
import { flushJournal } from '../storage/journal';
import { Button } from '../ui/button';
import { shellWords as words } from '../words/shell';
import styles from './header.module.css';
import { takeUpdate, useUpdate } from './updates';

/** Offers a newer version once it is here. "Later" leaves everything as it is until the next start. */
export function UpdateNotice() {
  const { take, taken } = useUpdate();
  const [later, setLater] = useState(false);
  const [others, setOthers] = useState(false);
  if (taken === 'elsewhere') {
    return (
      <div className={styles.update} role="status">
        <span>{words.newerElsewhere}</span>
        <Button tone="chalk" onPress={() => void flushJournal().then(() => location.reload())}>
          {words.newerReload}
        </Button>
      </div>
    );
  }
  if (!take || later) return null;
  const change = async () => {
    await flushJournal();
    setOthers((await takeUpdate()) === 'other-windows');
  };
  return (
    <div className={styles.update} role="status">
      <span>{others ? words.newerOthers : words.newer}</span>
      <Button tone="chalk" onPress={() => void change()}>
        {words.newerTake}
      </Button>
      <Button onPress={() => setLater(true)}>{words.newerLater}</Button>
    </div>
  );
}
