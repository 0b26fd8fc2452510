import { Icon, type IconName } from '../ui/icon';
import styles from './shelf-room.module.css';

interface StartCardProps {
  readonly icon: IconName;
  readonly title: string;
  readonly help: string;
  readonly onPress?: () => void;
  /** Given instead of `onPress`, the card asks for a file. */
  readonly onFile?: (file: File) => void;
}

/** One way to begin. */
export function StartCard({ icon, title, help, onPress, onFile }: StartCardProps) {
  const words = (
    <>
      <Icon name={icon} />
      <span>
        <strong>{title}</strong>
        <span>{help}</span>
      </span>
    </>
  );
  if (!onFile) {
    return (
      <button type="button" className={styles.start} onClick={onPress}>
        {words}
      </button>
    );
  }
  return (
    <label className={styles.start}>
      {words}
      <input
        type="file"
        className="only-heard"
        onChange={(event) => {
          const file = event.target.files?.[0];
          event.target.value = '';
          if (file) onFile(file);
        }}
      />
    </label>
  );
}
