import type { Garment } from '../../core/garment/garment';
import type { Mockup, PinnedChange, PinnedWhat } from '../../core/garment/mockup';
import { putPinned } from '../../core/garment/mockup-edits';
import { useGarment } from '../state/garment-store';
import { Button } from '../ui/button';
import { Card } from '../ui/card';
import { Choice } from '../ui/choice';
import { say } from '../ui/say';
import { TextField } from '../ui/text-field';
import { pinnedSentence, mockupWords as words } from '../words/mockup';
import { EdgeForm } from './edge-form';
import { LengthForm } from './length-form';
import styles from './mockup.module.css';
import { leave, note } from './mockup-store';
import { isSaid, pinnableEdge } from './new-change';
import { PhotoField } from './photo-field';
import { PointForm } from './point-form';

const SIDES = ['both', 'left', 'right'] as const;

interface NotingCardProps {
  /** The pieces it is pinned on: as the mock-up was cut. */
  readonly shown: Garment;
  readonly draft: Garment;
  readonly mockup: Mockup;
  readonly noting: PinnedChange;
}

/** A change being noted, as it is said, with all that can be said of it; then noted or left. */
export function NotingCard({ shown, draft, mockup, noting }: NotingCardProps) {
  const { what } = noting;
  const isSet = isSaid(noting);
  const keep = () => {
    const isKnown = mockup.pinned.some(({ id }) => id === noting.id);
    const whole = { ...noting, what: withLength(shown, draft, what) };
    const { edit } = useGarment.getState();
    edit(isKnown ? words.labels.change : words.labels.note, (now) => putPinned(now, mockup.id, whole));
    // What was not taken stays in hand, so that nothing said is lost.
    const { mockups = [] } = useGarment.getState().garment ?? {};
    const isKept = mockups.some(({ pinned }) => pinned.some((one) => one.id === noting.id));
    if (!isKept) return;
    leave();
    say(words.noted);
  };
  const { photoId, ...bare } = noting;
  const isPlaced = what.kind !== 'edge' || what.edge.edgeId !== '';
  return (
    <Card title={words.noting[what.kind]} about="noting">
      {what.kind === 'edge' && <EdgeForm shown={shown} draft={draft} noting={noting} what={what} />}
      {what.kind === 'length' && (
        <LengthForm garment={shown} what={what} onChange={(next) => note({ ...noting, what: next })} />
      )}
      {what.kind === 'point' && (
        <PointForm garment={shown} what={what} onChange={(next) => note({ ...noting, what: next })} />
      )}
      {isSet && <p className={styles.readBack}>{pinnedSentence(shown, noting)}</p>}
      {isPlaced && (
        <>
          <Choice
            label={words.side}
            value={noting.side}
            options={SIDES.map((side) => ({ value: side, words: words.sides[side] }))}
            onChange={(side) => note({ ...noting, side })}
          />
          <TextField
            label={words.note}
            value={noting.note}
            multiline
            onCommit={(text) => note({ ...noting, note: text })}
          />
          <PhotoField photoId={photoId} onChange={(id) => note(id === undefined ? bare : { ...bare, photoId: id })} />
        </>
      )}
      {!isSet && isPlaced && <p className={styles.help}>{words.notYet}</p>}
      <div className={styles.foot}>
        <Button tone="chalk" icon="done" disabled={!isSet} onPress={keep}>
          {words.noteIt}
        </Button>
        <Button icon="close" onPress={leave}>
          {words.leaveIt}
        </Button>
      </div>
    </Card>
  );
}

/** What was pinned, with the length of the edge it was pinned on. */
function withLength(shown: Garment, draft: Garment, what: PinnedWhat): PinnedWhat {
  if (what.kind !== 'edge') return what;
  const at = pinnableEdge(shown, what.edge) ?? pinnableEdge(draft, what.edge);
  return at ? { ...what, edgeLength: at.length } : what;
}
