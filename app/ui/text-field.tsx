import { useId, useState } from 'react';
import { asOneStep } from '../state/garment-store';
import { newId } from '../state/new-id';
import styles from './field.module.css';
import { useRest } from './use-rest';

interface TextFieldProps {
  readonly label: string;
  readonly value: string;
  readonly onCommit: (text: string) => void;
  readonly multiline?: boolean;
  readonly hint?: string;
  readonly type?: 'text' | 'date';
  readonly labelHidden?: boolean;
}

/**
 * Words in her own hand. They are taken when the field is left, at Enter in a single line, and after each short rest, so
 * that a page that is closed or lost loses nothing; what is written before the field is left is one step to undo.
 */
export function TextField(props: TextFieldProps) {
  const { label, value, onCommit, multiline, hint, type = 'text', labelHidden } = props;
  const id = useId();
  const [typed, setTyped] = useState<string>();
  const [sitting, setSitting] = useState(newId);
  const shared = {
    id,
    value: typed ?? value,
    maxLength: multiline ? 4000 : 200,
    onChange: (event: { target: { value: string } }) => setTyped(event.target.value),
    onBlur: commit,
    'aria-describedby': hint ? `${id}-hint` : undefined,
  };

  function take() {
    if (typed !== undefined && typed !== value) asOneStep(sitting, () => onCommit(typed));
  }

  function commit() {
    take();
    setTyped(undefined);
    setSitting(newId);
  }

  // A date half typed is another date.
  useRest(type === 'text' && typed !== undefined && typed !== value ? typed : undefined, take);

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
