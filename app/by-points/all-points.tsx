import type { DrawingStep } from '../../core/paper/drawing-steps';
import type { PaperWords } from '../../core/paper/paper-words';
import { byPointsWords as words } from '../words/by-points';
import styles from './by-points.module.css';
import { stepSaid } from './step-said';
import type { TicksInHand } from './use-ticks';

interface AllPointsProps {
  readonly steps: readonly DrawingStep[];
  readonly paperWords: PaperWords;
  readonly byLine: boolean;
  readonly shownIn: 'in' | 'cm';
  readonly ticks: TicksInHand;
  readonly at: number;
  readonly onChoose: (index: number) => void;
}

/** Every step with its figures; a press takes it in hand. */
export function AllPoints({ steps, paperWords, byLine, shownIn, ticks, at, onChoose }: AllPointsProps) {
  return (
    <ol className={styles.all}>
      {steps.map((step, index) => {
        const { name, figures } = stepSaid(step, paperWords, byLine, shownIn);
        return (
          <li key={step.key}>
            <button type="button" aria-current={index === at || undefined} onClick={() => onChoose(index)}>
              <strong>
                {ticks.has(step.key) && (
                  <>
                    ✓ <span className="only-heard">{words.isDone} </span>
                  </>
                )}
                {name}
              </strong>
              {figures.map(({ label, figure }) => (
                <span key={label}>
                  <small>{label}</small> {figure}
                </span>
              ))}
            </button>
          </li>
        );
      })}
    </ol>
  );
}
