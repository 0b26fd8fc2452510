import type { ReactNode } from 'react';
import styles from './card.module.css';

interface CardProps {
  readonly title: string;
  readonly children: ReactNode;
  /** Given together with `onToggle`, the card folds. */
  readonly open?: boolean;
  readonly onToggle?: (open: boolean) => void;
  /** A word or number at the right of the title. */
  readonly aside?: ReactNode;
  /** What of the job is done in it, so that it can be led to: names of `NextStepName`, apart by a space. */
  readonly step?: string;
}

/** One entry of the notebook. */
export function Card({ title, children, open, onToggle, aside, step }: CardProps) {
  if (onToggle === undefined) {
    return (
      <section className={styles.card} data-step={step}>
        <h2 className={styles.title}>
          {title}
          {aside !== undefined && <span className={styles.aside}>{aside}</span>}
        </h2>
        <div className={styles.body}>{children}</div>
      </section>
    );
  }
  return (
    <section className={styles.card} data-step={step}>
      <details open={open} onToggle={(event) => onToggle(event.currentTarget.open)}>
        <summary className={styles.summary}>
          <h2 className={styles.title}>
            {title}
            {aside !== undefined && <span className={styles.aside}>{aside}</span>}
          </h2>
        </summary>
        <div className={styles.body}>{children}</div>
      </details>
    </section>
  );
}
