import { useMemo } from 'react';
import type { Garment } from '../../core/garment/garment';
import type { Mockup } from '../../core/garment/mockup';
import type { Carried, NotCarried } from '../../core/mockup/carried-over';
import { changedFigures } from '../trial/changed-figures';
import { Figures } from '../trial/figures';
import { NewlyOpen } from '../trial/newly-open';
import { TakeOrLeave } from '../trial/take-or-leave';
import { Button } from '../ui/button';
import { Card } from '../ui/card';
import { Note } from '../ui/note';
import { carryNoteSentence, notCarriedSentence, pinnedSentence, mockupWords as words } from '../words/mockup';
import { writeLength } from '../words/written';
import styles from './mockup.module.css';
import { carry, carryNext, leave } from './mockup-store';

interface CarryCardProps {
  readonly garment: Garment;
  /** The pieces as the mock-up was cut. */
  readonly shown: Garment;
  readonly mockup: Mockup;
  readonly ids: readonly string[];
  readonly toCome: readonly string[];
  /** What it comes to; `undefined` while the version is still being opened. */
  readonly tried: Carried | NotCarried | undefined;
}

/** Carrying over, shown first: the sentences, what it does in numbers and to the checks; then taken or left. */
export function CarryCard({ garment, shown, mockup, ids, toCome, tried }: CarryCardProps) {
  const changes = mockup.pinned.filter(({ id }) => ids.includes(id));
  return (
    <Card title={words.carrying(ids.length)} about="carrying">
      <ol className={styles.list}>
        {changes.map((change) => (
          <li key={change.id} className={styles.sentence}>
            <span className={styles.number} aria-hidden="true">
              {mockup.pinned.indexOf(change) + 1}
            </span>
            <span>{pinnedSentence(shown, change)}</span>
          </li>
        ))}
      </ol>
      {tried === undefined && <p className={styles.help}>{words.loading}</p>}
      {tried?.kind === 'not-carried' && <Refused {...{ garment, shown, mockup, ids, toCome, refusal: tried }} />}
      {tried?.kind === 'carried' && <Shown before={garment} carried={tried} />}
      <TakeOrLeave
        garment={garment}
        after={tried?.kind === 'carried' ? tried.garment : undefined}
        label={words.labels.carry(ids.length)}
        onDone={carryNext}
      />
      {toCome.length > 0 && (
        <>
          <p className={styles.help}>{words.toCome(toCome.length)}</p>
          <div className={styles.row}>
            <Button tone="quiet" onPress={leave}>
              {words.stopHere}
            </Button>
          </div>
        </>
      )}
    </Card>
  );
}

function Shown({ before, carried }: { readonly before: Garment; readonly carried: Carried }) {
  const { shownIn } = before;
  const rows = useMemo(
    () => changedFigures(before, carried.garment, (mm) => writeLength(mm, { shownIn })),
    [before, carried, shownIn],
  );
  // That the change itself is settled by carrying it over goes without saying.
  const settled = useMemo(() => ({ ...before, mockups: carried.garment.mockups ?? [] }), [before, carried]);
  const notes = carried.notes.map((one) => carryNoteSentence(before, one));
  return (
    <>
      <p className={styles.help}>{words.carryingHelp}</p>
      {notes.map((sentence) => (
        <Note key={sentence} tone="warn">
          {sentence}
        </Note>
      ))}
      <Figures rows={rows} />
      <NewlyOpen before={settled} after={carried.garment} />
    </>
  );
}

interface RefusedProps extends Pick<CarryCardProps, 'garment' | 'shown' | 'mockup' | 'ids' | 'toCome'> {
  readonly refusal: NotCarried;
}

/** Which change cannot be carried over and why, and the way on without it. */
function Refused({ garment, shown, mockup, ids, toCome, refusal }: RefusedProps) {
  const change = mockup.pinned.find(({ id }) => id === refusal.pinnedId);
  const why = notCarriedSentence(garment, refusal);
  const others = ids.filter((id) => id !== refusal.pinnedId);
  return (
    <>
      <Note tone="stop">{change ? words.cannot(pinnedSentence(shown, change), why) : why}</Note>
      {others.length > 0 && (
        <div className={styles.row}>
          <Button onPress={() => carry(others, toCome)}>{words.without}</Button>
        </div>
      )}
    </>
  );
}
