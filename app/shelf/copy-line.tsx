import { type CopyAge, isOld } from '../state/copy-age';
import { Icon } from '../ui/icon';
import { storageWords as words } from '../words/storage';
import styles from './shelf-room.module.css';

/** When a garment was last copied out of the browser; marked when that is long ago. */
export function CopyLine({ age }: { readonly age: CopyAge }) {
  const old = isOld(age);
  return (
    <span className={styles.copyLine} data-old={old || undefined}>
      {old && <Icon name="look" />}
      <span>{words.copyAge(age)}</span>
    </span>
  );
}
