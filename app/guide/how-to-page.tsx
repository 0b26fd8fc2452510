import { Note } from '../ui/note';
import { guideWords as words } from '../words/guide/guide';
import { howTos } from '../words/guide/how-to';
import { Drawing } from './drawing';
import styles from './guide.module.css';
import type { HowToName } from './pages';

/** One page of the book: why, then step by step with small drawings, then what to take care of. */
export function HowToPage({ name }: { readonly name: HowToName }) {
  const { why, steps, care } = howTos[name];
  return (
    <>
      <p className={styles.why}>{why}</p>
      <ol className={styles.steps}>
        {steps.map(({ say, drawing }) => (
          <li key={say}>
            {drawing && <Drawing name={drawing} />}
            <p>{say}</p>
          </li>
        ))}
      </ol>
      {care && (
        <Note tone="warn">
          <strong>{words.care}.</strong> {care}
        </Note>
      )}
    </>
  );
}
