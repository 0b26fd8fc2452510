import { useState } from 'react';
import type { Garment } from '../../core/garment/garment';
import type { Mockup, PinnedChange, PinnedState } from '../../core/garment/mockup';
import { removePinned, settlePinned } from '../../core/garment/mockup-edits';
import { useGarment } from '../state/garment-store';
import { today } from '../state/today';
import { Button } from '../ui/button';
import { Icon, type IconName } from '../ui/icon';
import { TextField } from '../ui/text-field';
import { pinnedSentence, mockupWords as words } from '../words/mockup';
import styles from './mockup.module.css';
import { carry, note } from './mockup-store';
import { FittingPhoto } from './photo-field';

const STATE_ICONS: Readonly<Record<PinnedState['kind'], IconName>> = {
  noted: 'pin',
  carried: 'done',
  declined: 'close',
};

interface ChangeEntryProps {
  readonly shown: Garment;
  readonly mockup: Mockup;
  readonly change: PinnedChange;
  readonly number: number;
}

/** One thing pinned: as it is said, what became of it, and what can be done with it. */
export function ChangeEntry({ shown, mockup, change, number }: ChangeEntryProps) {
  const [declining, setDeclining] = useState(false);
  const { state } = change;
  const sentence = pinnedSentence(shown, change);
  return (
    <li className={styles.change} data-state={state.kind}>
      <div className={styles.sentence}>
        <span className={styles.number} aria-hidden="true">
          {number}
        </span>
        <div>
          <p className={styles.said}>{sentence}</p>
          {change.note && <p className={styles.help}>{change.note}</p>}
        </div>
      </div>
      {change.photoId !== undefined && <FittingPhoto photoId={change.photoId} alt={words.photoAlt(sentence)} />}
      <p className={styles.state}>
        <Icon name={STATE_ICONS[state.kind]} />
        {stateWords(state)}
      </p>
      {declining ? (
        <Declining mockupId={mockup.id} pinnedId={change.id} onDone={() => setDeclining(false)} />
      ) : (
        <Actions mockup={mockup} change={change} what={words.number(number)} onDecline={() => setDeclining(true)} />
      )}
    </li>
  );
}

function stateWords(state: PinnedState): string {
  switch (state.kind) {
    case 'noted':
      return words.state.noted();
    case 'carried':
      return words.state.carried(state.date);
    case 'declined':
      return words.state.declined(state.date, state.reason);
  }
}

interface ActionsProps {
  readonly mockup: Mockup;
  readonly change: PinnedChange;
  /** What it is called by those who hear the page. */
  readonly what: string;
  readonly onDecline: () => void;
}

function Actions({ mockup, change, what, onDecline }: ActionsProps) {
  const edit = useGarment((state) => state.edit);
  const again = () => edit(words.labels.again, (now) => settlePinned(now, mockup.id, [change.id], { kind: 'noted' }));
  switch (change.state.kind) {
    case 'carried':
      return (
        <div className={styles.row}>
          <Button tone="quiet" title={words.notAfterAllHelp} onPress={again}>
            {words.notAfterAll}
          </Button>
        </div>
      );
    case 'declined':
      return (
        <div className={styles.row}>
          <Button label={words.againOf(what)} onPress={again}>
            {words.again}
          </Button>
        </div>
      );
    case 'noted':
      return (
        <div className={styles.row}>
          <Button label={words.carryOf(what)} onPress={() => carry([change.id])}>
            {words.carry}
          </Button>
          <Button label={words.changeOf(what)} onPress={() => note(change, 0)}>
            {words.change}
          </Button>
          <Button label={words.declineOf(what)} onPress={onDecline}>
            {words.decline}
          </Button>
          <Button
            tone="quiet"
            icon="bin"
            label={words.removeChangeOf(what)}
            title={words.removeChange}
            onPress={() => edit(words.labels.removeChange, (now) => removePinned(now, mockup.id, change.id))}
          />
        </div>
      );
  }
}

interface DecliningProps {
  readonly mockupId: string;
  readonly pinnedId: string;
  readonly onDone: () => void;
}

/** A change is declined with a reason, so that she knows later why. */
function Declining({ mockupId, pinnedId, onDone }: DecliningProps) {
  const edit = useGarment((state) => state.edit);
  const [reason, setReason] = useState('');
  const decline = () => {
    edit(words.labels.decline, (now) =>
      settlePinned(now, mockupId, [pinnedId], { kind: 'declined', date: today(), reason: reason.trim() }),
    );
    onDone();
  };
  return (
    <>
      <TextField label={words.reason} value={reason} hint={words.reasonFirst} onCommit={setReason} />
      <div className={styles.row}>
        <Button tone="chalk" disabled={reason.trim() === ''} onPress={decline}>
          {words.declineIt}
        </Button>
        <Button onPress={onDone}>{words.leaveIt}</Button>
      </div>
    </>
  );
}
