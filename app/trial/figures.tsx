import styles from './trial.module.css';

/** A number beside what it is of. */
export interface Figure {
  readonly words: string;
  readonly value: string;
  /** Tells two rows of the same words apart. */
  readonly key?: string;
}

interface FiguresProps {
  readonly rows: readonly Figure[];
  /** What the numbers are, for those who hear the page. */
  readonly label?: string;
}

/** Numbers in rows, each beside what it is of; nothing where there are none. */
export function Figures({ rows, label }: FiguresProps) {
  if (rows.length === 0) return null;
  return (
    <dl className={styles.numbers} aria-label={label}>
      {rows.map((row) => (
        <div key={row.key ?? row.words}>
          <dt>{row.words}</dt>
          <dd>{row.value}</dd>
        </div>
      ))}
    </dl>
  );
}
