import type { BroughtIn } from '../storage/bring-many';
import { Button } from '../ui/button';
import { Note } from '../ui/note';
import { wholeShelfWords as words } from '../words/whole-shelf';
import styles from './shelf-room.module.css';

interface BroughtReportProps {
  readonly outcomes: readonly BroughtIn[];
  readonly onClose: () => void;
}

/** What became of the files that were brought in: how many are in, and of each that is not why. */
export function BroughtReport({ outcomes, onClose }: BroughtReportProps) {
  const count = (kind: BroughtIn['kind']) => outcomes.filter((one) => one.kind === kind).length;
  const [beside, here] = [count('beside'), count('here')];
  const inNow = count('in') + beside;
  const refused = outcomes.filter((one) => one.kind === 'refused');
  const lacking = outcomes.reduce((sum, one) => sum + (one.kind === 'refused' ? 0 : one.missingPhotos), 0);
  const good = [
    ...(inNow > 0 ? [words.areIn(inNow)] : []),
    ...(beside > 0 ? [words.besides(beside)] : []),
    ...(here > 0 ? [words.alreadyHere(here)] : []),
  ];
  return (
    <section className={styles.notes} aria-label={words.report} aria-live="polite">
      {good.length > 0 && <Note tone="good">{good.join(' ')}</Note>}
      {lacking > 0 && <Note tone="warn">{words.picturesLacking(lacking)}</Note>}
      {refused.length > 0 && (
        <>
          <Note tone="stop">{words.notIn(refused.length)}</Note>
          <ul>
            {refused.map(({ name, why }, index) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: two files may have one name, and the list never changes.
              <li key={index}>{words.because(name, words.refused[why])}</li>
            ))}
          </ul>
        </>
      )}
      <div className={styles.asked}>
        <Button tone="quiet" onPress={onClose}>
          {words.close}
        </Button>
      </div>
    </section>
  );
}
