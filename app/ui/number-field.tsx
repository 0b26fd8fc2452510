import { useId, useState } from 'react';
import { uiWords as words } from '../words/ui';
import fields from './field.module.css';

interface NumberFieldProps {
  readonly label: string;
  readonly value: number;
  readonly least: number;
  readonly most: number;
  /** Only whole numbers; any unless said. */
  readonly whole?: true;
  readonly onCommit: (value: number) => void;
}

/** A plain number, such as degrees or parts in a hundred. */
export function NumberField({ label, value, least, most, whole, onCommit }: NumberFieldProps) {
  const id = useId();
  const [typed, setTyped] = useState<string>();
  const [wrong, setWrong] = useState(false);

  function commit() {
    if (typed === undefined) return;
    const read = Number(typed.replace(',', '.'));
    if (typed.trim() === '' || !(read >= least && read <= most) || (whole && !Number.isInteger(read))) {
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
        inputMode={whole ? 'numeric' : 'decimal'}
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
          {whole ? words.countWrong(least, most) : words.numberWrong(least, most)}
        </p>
      )}
    </div>
  );
}
