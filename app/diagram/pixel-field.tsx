import { type KeyboardEvent, useState } from 'react';
import type { Vector } from '../../core/geometry/point';
import { say } from '../ui/say';
import { diagramWords as words } from '../words/diagram';
import { arrowStep } from './arrow-step';
import styles from './diagram-room.module.css';

interface PixelFieldProps {
  readonly label: string;
  readonly value: number;
  readonly onCommit: (value: number) => void;
  /** An arrow key, while nothing is half typed. */
  readonly onNudge: (step: Vector) => void;
}

/** A place in pixels of the photo, to a tenth. */
export function PixelField({ label, value, onCommit, onNudge }: PixelFieldProps) {
  const [typed, setTyped] = useState<string>();

  function commit() {
    if (typed === undefined) return;
    setTyped(undefined);
    const read = Number(typed.trim().replace(',', '.'));
    if (typed.trim() === '' || !Number.isFinite(read)) say(words.notANumber);
    else if (Math.abs(read - value) > 0.05) onCommit(read);
  }

  function press(event: KeyboardEvent) {
    if (event.key === 'Enter') commit();
    if (event.key === 'Escape') setTyped(undefined);
    const step = typed === undefined ? arrowStep({ key: event.key, shift: event.shiftKey }) : undefined;
    if (!step) return;
    event.preventDefault();
    onNudge(step);
  }

  return (
    <input
      className={styles.pixels}
      aria-label={label}
      inputMode="decimal"
      autoComplete="off"
      value={typed ?? String(Math.round(value * 10) / 10)}
      onChange={(event) => setTyped(event.target.value)}
      onBlur={commit}
      onKeyDown={press}
    />
  );
}
