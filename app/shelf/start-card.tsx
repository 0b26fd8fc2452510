import { Icon, type IconName } from '../ui/icon';
import styles from './shelf-room.module.css';

interface StartCardProps {
  readonly icon: IconName;
  readonly title: string;
  readonly help: string;
  readonly onPress?: () => void;
  /** Given instead of `onPress`, the card asks for one file or several. */
  readonly onFiles?: (files: readonly File[]) => void;
}

/** One way to begin. */
export function StartCard({ icon, title, help, onPress, onFiles }: StartCardProps) {
  const words = (
    <>
      <Icon name={icon} />
      <span>
        <strong>{title}</strong>
        <span>{help}</span>
      </span>
    </>
  );
  if (!onFiles) {
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
        multiple
        className="only-heard"
        onChange={(event) => {
          // Taken out first: emptying the field empties its list too.
          const files = [...(event.target.files ?? [])];
          event.target.value = '';
          if (files.length > 0) onFiles(files);
        }}
      />
    </label>
  );
}
