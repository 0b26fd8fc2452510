import { useState } from 'react';
import { halvesOf } from '../../core/diagram/halves';
import { usePictureInk } from '../photo/picture-ink';
import { useGarment } from '../state/garment-store';
import { useShownIn } from '../state/shown-in';
import { diagramInHand, useTable } from '../state/table-store';
import { writeSquares } from '../table/write-squares';
import { Button } from '../ui/button';
import { Card } from '../ui/card';
import { LengthField } from '../ui/length-field';
import { Note } from '../ui/note';
import { say } from '../ui/say';
import { draftWords as words } from '../words/draft';
import styles from './draft.module.css';
import { useDraft } from './draft-store';
import { typePoint } from './trace-tool';

/** The piece being traced, in words: its points so far, and the next one by typing. */
export function TraceCard() {
  const shownIn = useShownIn();
  const trace = useDraft((draft) => draft.trace);
  const [across, setAcross] = useState<number>();
  const [down, setDown] = useState<number>();
  const ready = across !== undefined && down !== undefined;
  return (
    <Card title={words.trace} about="tracing" aside={words.pointCount(trace.length)}>
      <p>{words.modeHelp.trace}</p>
      <FollowNote />
      <fieldset className={styles.group}>
        <legend>{words.typePoint}</legend>
        <div className={styles.pair}>
          <LengthField label={words.across} value={across} shownIn={shownIn} onCommit={setAcross} allowEmpty />
          <LengthField label={words.down} value={down} shownIn={shownIn} onCommit={setDown} allowEmpty />
        </div>
        <div>
          <Button
            icon="plus"
            onPress={() => {
              if (!ready) {
                say(words.said.bothNumbers);
                return;
              }
              typePoint(across, down);
              setAcross(undefined);
              setDown(undefined);
            }}
          >
            {words.putDown}
          </Button>
        </div>
        <p className={styles.help}>{words.fromZero}</p>
      </fieldset>
      <ol className={styles.list}>
        {trace.map(({ at, kind }, index) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: points have no other name, and are only added at the end
          <li key={index}>
            {words.next[kind]}
            <span className={styles.aside}>
              {words.place(writeSquares(at.x, shownIn), writeSquares(at.y, shownIn))}
            </span>
          </li>
        ))}
      </ol>
    </Card>
  );
}

/** How following a printed line works, or why there is none to follow. */
function FollowNote() {
  const following = useDraft((draft) => draft.following);
  const ink = usePictureInk((state) => state.ink);
  if (!following) return null;
  if (ink.kind === 'reading') return <Note tone="plain">{words.followReading(Math.round(ink.share * 100))}</Note>;
  if (ink.kind === 'unreadable') return <Note tone="warn">{words.followUnreadable}</Note>;
  if (ink.kind === 'none') return <Note tone="plain">{words.followNoPicture}</Note>;
  return (
    <>
      <p className={styles.help}>{words.followHelp}</p>
      <OverGutter />
    </>
  );
}

/** With halves joined over a gutter, whose lines are followed and how to go on in the other half. */
function OverGutter() {
  const diagrams = useGarment((state) => state.garment?.diagrams) ?? [];
  const inHand = useTable((table) => diagramInHand(diagrams, table.diagramInHand));
  if (!inHand || halvesOf(diagrams, inHand.id).length < 2) return null;
  const name = words.pictureOf(diagrams.indexOf(inHand) + 1, inHand.name);
  return <Note tone="plain">{words.followOverGutter(name)}</Note>;
}
