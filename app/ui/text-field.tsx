import { useId, useState } from 'react';
import styles from './field.module.css';
import { useRest } from './use-rest';

interface TextFieldProps {
  readonly label: string;
  readonly value: string;
  /** `sitting` is the same for all that is written before the field is left: one step that can be undone. */
  readonly onCommit: (text: string, sitting: string) => void;
  /** Taken after each short rest as well, so that a page that is closed or lost loses nothing. */
  readonly keepTyping?: boolean;
  readonly multiline?: boolean;
  readonly hint?: string;
  readonly type?: 'text' | 'date';
  readonly labelHidden?: boolean;
}

/** Words in her own hand. They are taken when the field is left, or at Enter in a single line. */
export function TextField(props: TextFieldProps) {
  const { label, value, onCommit, keepTyping = false, multiline, hint, type = 'text', labelHidden } = props;
  const id = useId();
  const [typed, setTyped] = useState<string>();
  const [sitting, setSitting] = useState(newSitting);
  const shared = {
    id,
    value: typed ?? value,
    maxLength: multiline ? 4000 : 200,
    onChange: (event: { target: { value: string } }) => setTyped(event.target.value),
    onBlur: commit,
    'aria-describedby': hint ? `${id}-hint` : undefined,
  };

  function take() {
    if (typed !== undefined && typed !== value) onCommit(typed, sitting);
  }

  function commit() {
    take();
    setTyped(undefined);
    setSitting(newSitting);
  }

  useRest(keepTyping && typed !== undefined && typed !== value ? typed : undefined, take);

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

function newSitting(): string {
  return crypto.randomUUID();
}
