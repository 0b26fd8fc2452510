import { useId, useState } from 'react';
import fields from '../ui/field.module.css';
import { reshapeWords as words } from '../words/reshape';

interface NumberFieldProps {
  readonly label: string;
  readonly value: number;
  readonly least: number;
  readonly most: number;
  readonly onCommit: (value: number) => void;
}

/** A plain number, such as degrees or parts in a hundred. */
export function NumberField({ label, value, least, most, onCommit }: NumberFieldProps) {
  const id = useId();
  const [typed, setTyped] = useState<string>();
  const [wrong, setWrong] = useState(false);

  function commit() {
    if (typed === undefined) return;
    const read = Number(typed.replace(',', '.'));
    if (typed.trim() === '' || !(read >= least && read <= most)) {
      setWrong(true);
      return;
    }
    setTyped(undefined);
    setWrong(false);
    if (read !== value) onCommit(read);
  }

  return (
    <div className={fields.field}>
      <label htmlFor={id}>{label}</label>
      <input
        id={id}
        className={fields.short}
        inputMode="decimal"
        autoComplete="off"
        value={typed ?? String(Math.round(value * 100) / 100)}
        aria-invalid={wrong || undefined}
        aria-describedby={wrong ? `${id}-wrong` : undefined}
        onChange={(event) => setTyped(event.target.value)}
        onFocus={(event) => event.target.select()}
        onBlur={commit}
        onKeyDown={(event) => event.key === 'Enter' && commit()}
      />
      {wrong && (
        <p id={`${id}-wrong`} className={fields.trouble}>
          {words.numberWrong(least, most)}
        </p>
      )}
    </div>
  );
}
