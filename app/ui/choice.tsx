import { useId } from 'react';
import styles from './field.module.css';
import { Icon, type IconName } from './icon';

export interface Option<Value extends string> {
  readonly value: Value;
  readonly words: string;
  readonly icon?: IconName;
}

export interface ChoiceProps<Value extends string> {
  readonly label: string;
  readonly value: Value;
  readonly options: readonly Option<Value>[];
  readonly onChange: (value: Value) => void;
  readonly labelHidden?: boolean;
}

/** One of a few, all in sight. */
export function Choice<Value extends string>({ label, value, options, onChange, labelHidden }: ChoiceProps<Value>) {
  const name = useId();
  return (
    <fieldset className={styles.set}>
      <legend className={labelHidden ? 'only-heard' : styles.legend}>{label}</legend>
      <div className={styles.row}>
        {options.map((option) => (
          <label key={option.value} className={styles.option}>
            <input
              type="radio"
              name={name}
              value={option.value}
              checked={option.value === value}
              onChange={() => onChange(option.value)}
            />
            <span>
              {option.icon && <Icon name={option.icon} />}
              {option.words}
            </span>
          </label>
        ))}
      </div>
    </fieldset>
  );
}
