import { useShownIn } from '../state/shown-in';
import { Note } from '../ui/note';
import { guideWords as words } from '../words/guide/guide';
import { howTos } from '../words/guide/how-to';
import { inFull } from '../words/written';
import { Drawing } from './drawing';
import styles from './guide.module.css';
import type { HowToName } from './pages';

/** One page of the book: why, then step by step with small drawings, then what to take care of. */
export function HowToPage({ name }: { readonly name: HowToName }) {
  const { why, steps, care } = howTos[name];
  const shownIn = useShownIn();
  return (
    <>
      <p className={styles.why}>{inFull(why, shownIn)}</p>
      <ol className={styles.steps}>
        {steps.map(({ say, drawing }) => (
          <li key={inFull(say, shownIn)}>
            {drawing && <Drawing name={drawing} />}
            <p>{inFull(say, shownIn)}</p>
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
