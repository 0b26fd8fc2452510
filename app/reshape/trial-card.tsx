import type { Garment } from '../../core/garment/garment';
import { NewlyOpen } from '../trial/newly-open';
import { TakeOrLeave } from '../trial/take-or-leave';
import { Card } from '../ui/card';
import { Note } from '../ui/note';
import { reshapeWords as words } from '../words/reshape';
import type { Trying } from './change';
import { ChangedLengths } from './changed-lengths';
import styles from './reshape.module.css';
import { leaveChange, tryChange } from './reshape-store';
import { triedOn } from './tried';

interface TrialCardProps {
  readonly garment: Garment;
  readonly trying: Trying;
}

/** The change being tried: its fields, what it does in numbers, what it would newly bring up; then take it or leave it. */
export function TrialCard({ garment, trying }: TrialCardProps) {
  const tried = triedOn(garment, trying);
  return (
    <Card title={words.changes[trying.name].name} about="trying">
      <p className={styles.help}>{words.changes[trying.name].help}</p>
      {trying.fields(garment, tryChange)}
      {tried.kind === 'not-tried' ? (
        <Note tone="warn">{tried.sentence}</Note>
      ) : (
        <>
          {tried.questions?.map((question) => (
            <Note key={question} tone="warn">
              {question}
            </Note>
          ))}
          <ChangedLengths before={garment} after={tried.garment} figures={tried.figures ?? []} />
          {tried.garment !== garment && <NewlyOpen before={garment} after={tried.garment} />}
        </>
      )}
      <TakeOrLeave
        garment={garment}
        after={tried.kind === 'tried' ? tried.garment : undefined}
        label={trying.label(garment)}
        onDone={leaveChange}
      />
    </Card>
  );
}
