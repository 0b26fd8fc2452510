import { useId, useState } from 'react';
import { readLength } from '../../core/units/read-length';
import type { WrittenStep } from '../../core/units/write-length';
import { uiWords } from '../words/ui';
import { writeLength } from '../words/written';
import styles from './field.module.css';

interface LengthFieldProps {
  readonly label: string;
  /** Millimetres; `undefined` when nothing is known. */
  readonly value: number | undefined;
  readonly shownIn: 'in' | 'cm';
  readonly onCommit: (length: number | undefined) => void;
  readonly hint?: string;
  readonly id?: string;
  /** The smallest length that makes sense here, in millimetres. */
  readonly min?: number;
  /** And the largest. */
  readonly max?: number;
  /** Whether the field may be left empty, which commits `undefined`. */
  readonly allowEmpty?: boolean;
  /** The finest step it is written to. */
  readonly step?: WrittenStep;
  /** Label for the ear only, where the eye has one already. */
  readonly labelHidden?: boolean;
}

/** A length as a dressmaker writes it: 7 1/2, 7½, 19 cm. What cannot be read is said under the field, and kept. */
export function LengthField(props: LengthFieldProps) {
  const { label, value, shownIn, onCommit, hint, min, max, allowEmpty, step, labelHidden } = props;
  const ownId = useId();
  const id = props.id ?? ownId;
  const [typed, setTyped] = useState<string>();
  const [trouble, setTrouble] = useState<string>();
  const shown =
    typed ?? (value === undefined ? '' : writeLength(value, { shownIn, spaces: 'typed', ...(step && { step }) }));

  function commit() {
    if (typed === undefined) return;
    if (typed.trim() === '' && allowEmpty) {
      settle();
      if (value !== undefined) onCommit(undefined);
      return;
    }
    const read = readLength(typed, { bare: shownIn });
    if (read.kind === 'refused') {
      setTrouble(uiWords.lengthRefused(read.why, shownIn));
      return;
    }
    if (min !== undefined && read.length < min) {
      setTrouble(uiWords.lengthTooSmall(writeLength(min, { shownIn })));
      return;
    }
    if (max !== undefined && read.length > max) {
      setTrouble(uiWords.lengthTooLarge(writeLength(max, { shownIn })));
      return;
    }
    settle();
    if (value === undefined || Math.abs(read.length - value) > 1e-6) onCommit(read.length);
  }

  function settle() {
    setTyped(undefined);
    setTrouble(undefined);
  }

  return (
    <div className={styles.field}>
      <label htmlFor={id} className={labelHidden ? 'only-heard' : undefined}>
        {label}
      </label>
      <input
        id={id}
        className={styles.short}
        value={shown}
        inputMode="text"
        autoComplete="off"
        spellCheck={false}
        aria-invalid={trouble ? true : undefined}
        aria-describedby={trouble || hint ? `${id}-more` : undefined}
        onChange={(event) => setTyped(event.target.value)}
        onFocus={(event) => event.target.select()}
        onBlur={commit}
        onKeyDown={(event) => {
          if (event.key === 'Enter') commit();
          if (event.key === 'Escape') settle();
        }}
      />
      {(trouble || hint) && (
        <p id={`${id}-more`} className={trouble ? styles.trouble : styles.hint}>
          {trouble ?? hint}
        </p>
      )}
    </div>
  );
}
