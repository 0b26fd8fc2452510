import { useMemo } from 'react';
import { beforeYouCut } from '../../core/check/before-you-cut';
import { newlyFound } from '../../core/check/newly-found';
import type { Garment } from '../../core/garment/garment';
import { Note } from '../ui/note';
import { findingSentence } from '../words/findings';
import { trialWords as words } from '../words/trial';
import styles from './trial.module.css';

interface NewlyOpenProps {
  readonly before: Garment;
  readonly after: Garment;
}

/** All checks again, on the garment as it would be: what would newly be open, and what would be settled. */
export function NewlyOpen({ before, after }: NewlyOpenProps) {
  const had = useMemo(() => beforeYouCut(before), [before]);
  const { appears, settled } = useMemo(() => newlyFound(had, beforeYouCut(after)), [had, after]);
  return (
    <section aria-label={words.checks} className={styles.findings}>
      {appears.length === 0 && <Note tone="good">{words.nothingNew}</Note>}
      {appears.map((finding) => (
        <Note key={`${finding.kind} ${JSON.stringify(finding.place)}`} tone={finding.weight}>
          {words.wouldBe(findingSentence(finding, after))}
        </Note>
      ))}
      {settled.map((finding) => (
        <Note key={`${finding.kind} ${JSON.stringify(finding.place)}`} tone="good">
          {words.wouldSettle(findingSentence(finding, before))}
        </Note>
      ))}
    </section>
  );
}
