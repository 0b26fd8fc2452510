import type { DrawingStep } from '../../core/paper/drawing-steps';
import type { PaperWords } from '../../core/paper/paper-words';
import { byPointsWords as words } from '../words/by-points';
import styles from './by-points.module.css';
import { stepSaid } from './step-said';

interface OnePointProps {
  readonly step: DrawingStep;
  readonly paperWords: PaperWords;
  readonly byLine: boolean;
  readonly shownIn: 'in' | 'cm';
  readonly isDone: boolean;
}

/** The point in hand, as large as the screen allows, and heard when it changes. */
export function OnePoint({ step, paperWords, byLine, shownIn, isDone }: OnePointProps) {
  const { name, figures, more } = stepSaid(step, paperWords, byLine, shownIn);
  return (
    <div className={styles.point} aria-live="polite" data-long={name.length > 4 || undefined}>
      <h2 className={styles.name}>
        {name} {isDone && <span className={styles.done}>✓ {words.isDone}</span>}
      </h2>
      <dl className={styles.figures} data-many={figures.length > 2 || undefined}>
        {figures.map(({ label, figure }) => (
          <div key={label}>
            <dt>{label}</dt>
            <dd>{figure}</dd>
          </div>
        ))}
      </dl>
      {more && <p className={styles.more}>{more}</p>}
    </div>
  );
}
