import { useId, useState } from 'react';
import { uiWords as words } from '../words/ui';
import fields from './field.module.css';

interface CountFieldProps {
  readonly label: string;
  readonly value: number;
  /** The smallest number that makes sense here; 1 unless said. */
  readonly least?: number;
  readonly onCommit: (count: number) => void;
}

/** How many: a whole number up to 99. */
export function CountField({ label, value, least = 1, onCommit }: CountFieldProps) {
  const id = useId();
  const [typed, setTyped] = useState<string>();
  const [wrong, setWrong] = useState(false);

  function commit() {
    if (typed === undefined) return;
    const count = Number(typed);
    if (!Number.isInteger(count) || count < least || count > 99) {
      setWrong(true);
      return;
    }
    setTyped(undefined);
    setWrong(false);
    if (count !== value) onCommit(count);
  }

  return (
    <div className={fields.field}>
      <label htmlFor={id}>{label}</label>
      <input
        id={id}
        className={fields.short}
        inputMode="numeric"
        autoComplete="off"
        value={typed ?? String(value)}
        aria-invalid={wrong || undefined}
        aria-describedby={wrong ? `${id}-wrong` : undefined}
        onChange={(event) => setTyped(event.target.value)}
        onFocus={(event) => event.target.select()}
        onBlur={commit}
        onKeyDown={(event) => event.key === 'Enter' && commit()}
      />
      {wrong && (
        <p id={`${id}-wrong`} className={fields.trouble}>
          {words.countWrong(least)}
        </p>
      )}
    </div>
  );
}
