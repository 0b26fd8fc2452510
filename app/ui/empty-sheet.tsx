import type { ReactNode } from 'react';
import styles from './empty-sheet.module.css';

interface EmptySheetProps {
  readonly title: string;
  /** What to do next, and the buttons that do it. */
  readonly children: ReactNode;
  /** What of the job it is for: as on a card. */
  readonly step?: string;
}

/** What lies on a table on which nothing lies yet. */
export function EmptySheet({ title, children, step }: EmptySheetProps) {
  return (
    <div className={styles.empty}>
      <div className={styles.sheet} data-step={step}>
        <h2>{title}</h2>
        {children}
      </div>
    </div>
  );
}
