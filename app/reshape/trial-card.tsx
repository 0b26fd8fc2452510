import { useMemo } from 'react';
import { beforeYouCut } from '../../core/check/before-you-cut';
import { newlyFound } from '../../core/check/newly-found';
import type { Garment } from '../../core/garment/garment';
import { useGarment } from '../state/garment-store';
import { Button } from '../ui/button';
import { Card } from '../ui/card';
import { Note } from '../ui/note';
import { say } from '../ui/say';
import { findingSentence } from '../words/findings';
import { reshapeWords as words } from '../words/reshape';
import type { Trying } from './change';
import { ChangedLengths } from './changed-lengths';
import styles from './reshape.module.css';
import { tryChange } from './reshape-store';
import { triedOn } from './tried';

interface TrialCardProps {
  readonly garment: Garment;
  readonly trying: Trying;
}

/** The change being tried: its fields, what it does in numbers, what it would newly bring up; then take it or leave it. */
export function TrialCard({ garment, trying }: TrialCardProps) {
  const tried = triedOn(garment, trying);
  return (
    <Card title={words.changes[trying.name].name}>
      <p className={styles.help}>{words.changes[trying.name].help}</p>
      {trying.fields(garment, tryChange)}
      {tried.kind === 'not-tried' ? (
        <Note tone="warn">{tried.sentence}</Note>
      ) : (
        <>
          <ChangedLengths before={garment} after={tried.garment} figures={tried.figures ?? []} />
          <Findings before={garment} after={tried.garment} />
        </>
      )}
      <div className={styles.row}>
        <Button
          tone="chalk"
          icon="done"
          disabled={tried.kind === 'not-tried' || tried.garment === garment}
          onPress={() => take(trying)}
        >
          {words.take}
        </Button>
        <Button icon="close" onPress={() => tryChange(undefined)}>
          {words.leave}
        </Button>
      </div>
    </Card>
  );
}

function take(trying: Trying): void {
  const { garment, edit } = useGarment.getState();
  if (!garment) return;
  const tried = triedOn(garment, trying);
  if (tried.kind !== 'tried') return;
  const label = trying.label(garment);
  edit(label, () => tried.garment);
  tryChange(undefined);
  say(words.taken(label));
}

/** All checks again, on the garment as it would be. */
function Findings({ before, after }: { readonly before: Garment; readonly after: Garment }) {
  const had = useMemo(() => beforeYouCut(before), [before]);
  const found = useMemo(() => newlyFound(had, beforeYouCut(after)), [had, after]);
  if (before === after) return null;
  // With a panel missing little else can be looked at; what is no longer said then is not settled.
  const settled = found.appears.some(({ kind }) => kind === 'panel-missing') ? [] : found.settled;
  return (
    <section aria-label={words.checks} className={styles.findings}>
      {found.appears.length === 0 && <Note tone="good">{words.nothingNew}</Note>}
      {found.appears.map((finding) => (
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
