import { useState } from 'react';
import type { Finding } from '../../core/check/before-you-cut';
import { findingKey, type LeftFinding, mayBeLeft } from '../../core/check/left-knowingly';
import type { PointToBeSureOf } from '../../core/check/points-to-be-sure-of';
import type { Garment } from '../../core/garment/garment';
import { leaveKnowingly, takeUpAgain } from '../../core/garment/knowingly-edits';
import { roomOf, roomOfPoint } from '../state/findings-store';
import { useGarment } from '../state/garment-store';
import { chosenAt, useTable } from '../state/table-store';
import { today } from '../state/today';
import { Button } from '../ui/button';
import { Note } from '../ui/note';
import { TextField } from '../ui/text-field';
import { checkWords as words } from '../words/check';
import { pointFigures } from '../words/check-page';
import { findingSentence } from '../words/findings';
import { shellWords } from '../words/shell';
import styles from './check-room.module.css';

/** One point to be sure of: its state, the figures behind it, what is open and what is left knowingly. */
export function PointCard({ point, garment }: { readonly point: PointToBeSureOf; readonly garment: Garment }) {
  const goTo = useTable((table) => table.goTo);
  const room = roomOfPoint[point.name];
  const title = words.point[point.name];
  return (
    <li className={styles.point} data-state={point.state}>
      <h3>
        {title}
        <span className={styles.state}>{words.state[point.state]}</span>
      </h3>
      <div className={styles.under}>
        <div>
          {pointFigures(point, garment).map((sentence) => (
            <p key={sentence} className={styles.figure}>
              {sentence}
            </p>
          ))}
        </div>
        {point.open.length === 0 && (
          <Button tone="quiet" label={words.seen(title, shellWords.rooms[room])} onPress={() => goTo(room)}>
            {words.goSee(shellWords.rooms[room])}
          </Button>
        )}
      </div>
      {point.open.map((finding) => (
        <OpenFinding key={findingKey(finding)} finding={finding} garment={garment} />
      ))}
      {point.left.map((left) => (
        <Left key={left.left.finding} {...left} garment={garment} />
      ))}
    </li>
  );
}

function OpenFinding({ finding, garment }: { readonly finding: Finding; readonly garment: Garment }) {
  const goTo = useTable((table) => table.goTo);
  const edit = useGarment((state) => state.edit);
  const [why, setWhy] = useState<string>();
  const [isAsked, setAsked] = useState(false);
  const room = roomOf(finding);
  const leave = () => {
    const reason = why?.trim() ?? '';
    if (reason === '') return setAsked(true);
    edit(words.leaveLabel, (before) =>
      leaveKnowingly(before, { finding: findingKey(finding), date: today(), why: reason }),
    );
  };
  return (
    <div className={styles.finding}>
      <Note
        tone={finding.weight}
        action={{
          words: words.mend(shellWords.rooms[room]),
          onPress: () => goTo(room, chosenAt(finding.place)),
        }}
        beside={mayBeLeft(finding) && why === undefined ? { words: words.leave, onPress: () => setWhy('') } : undefined}
      >
        {findingSentence(finding, garment)}
      </Note>
      {why !== undefined && (
        <>
          <TextField label={words.why} value={why} hint={words.whyHint} onCommit={setWhy} />
          <div className={styles.buttons}>
            <Button onPress={leave}>{words.leaveNow}</Button>
            <Button tone="quiet" onPress={() => setWhy(undefined)}>
              {words.notAfterAll}
            </Button>
          </div>
          {/* Below the buttons: going away as the field is left, it must not move the one being pressed. */}
          {isAsked && why.trim() === '' && <Note tone="warn">{words.whyNeeded}</Note>}
        </>
      )}
    </div>
  );
}

function Left({ finding, left, garment }: LeftFinding & { readonly garment: Garment }) {
  const edit = useGarment((state) => state.edit);
  return (
    <Note
      tone="plain"
      action={{
        words: words.takeUp,
        onPress: () => edit(words.takeUpLabel, (before) => takeUpAgain(before, left)),
      }}
    >
      {findingSentence(finding, garment)} <strong>{words.leftSince(left.date, left.why)}</strong>
    </Note>
  );
}
