import { useId } from 'react';
import type { ChoiceProps } from './choice';
import styles from './field.module.css';

/** One of many, from a list. */
export function Pick<Value extends string>({ label, value, options, onChange, labelHidden }: ChoiceProps<Value>) {
  const id = useId();
  return (
    <div className={styles.field}>
      <label htmlFor={id} className={labelHidden ? 'only-heard' : undefined}>
        {label}
      </label>
      <select
        id={id}
        value={value}
        onChange={(event) => {
          const picked = options.find((option) => option.value === event.target.value);
          if (picked) onChange(picked.value);
        }}
      >
        {options.map((option) => (
          <option key={option.value} value={option.value}>
            {option.words}
          </option>
        ))}
      </select>
    </div>
  );
}
