import styles from './field.module.css';

interface SwitchProps {
  readonly label: string;
  readonly on: boolean;
  readonly onChange: (on: boolean) => void;
}

/** Something that is on or off. */
export function Switch({ label, on, onChange }: SwitchProps) {
  return (
    <label className={styles.switch}>
      <input type="checkbox" checked={on} onChange={(event) => onChange(event.target.checked)} />
      {label}
    </label>
  );
}
