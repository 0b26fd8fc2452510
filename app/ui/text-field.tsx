import { useId, useState } from 'react';
import styles from './field.module.css';

interface TextFieldProps {
  readonly label: string;
  readonly value: string;
  readonly onCommit: (text: string) => void;
  readonly multiline?: boolean;
  readonly hint?: string;
  readonly type?: 'text' | 'date';
  readonly labelHidden?: boolean;
}

/** Words in her own hand. They are taken when the field is left, or at Enter in a single line. */
export function TextField({ label, value, onCommit, multiline, hint, type = 'text', labelHidden }: TextFieldProps) {
  const id = useId();
  const [typed, setTyped] = useState<string>();
  const shared = {
    id,
    value: typed ?? value,
    maxLength: multiline ? 4000 : 200,
    onChange: (event: { target: { value: string } }) => setTyped(event.target.value),
    onBlur: commit,
    'aria-describedby': hint ? `${id}-hint` : undefined,
  };

  function commit() {
    if (typed !== undefined && typed !== value) onCommit(typed);
    setTyped(undefined);
  }

  return (
    <div className={styles.field}>
      <label htmlFor={id} className={labelHidden ? 'only-heard' : undefined}>
        {label}
      </label>
      {multiline ? (
        <textarea rows={3} {...shared} />
      ) : (
        <input type={type} {...shared} onKeyDown={(event) => event.key === 'Enter' && commit()} />
      )}
      {hint && (
        <p id={`${id}-hint`} className={styles.hint}>
          {hint}
        </p>
      )}
    </div>
  );
}
