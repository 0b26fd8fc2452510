import { useId } from 'react';
import styles from './field.module.css';

interface SearchFieldProps {
  readonly label: string;
  readonly hint: string;
  readonly value: string;
  readonly onChange: (sought: string) => void;
}

/** Words that are sought, taken at every letter. */
export function SearchField({ label, hint, value, onChange }: SearchFieldProps) {
  const id = useId();
  return (
    <div className={styles.field}>
      <label htmlFor={id}>{label}</label>
      <input
        id={id}
        type="search"
        value={value}
        maxLength={200}
        onChange={(event) => onChange(event.target.value)}
        aria-describedby={`${id}-hint`}
      />
      <p id={`${id}-hint`} className={styles.hint}>
        {hint}
      </p>
    </div>
  );
}
