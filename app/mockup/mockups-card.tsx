import { useState } from 'react';
import type { Garment } from '../../core/garment/garment';
import type { Mockup } from '../../core/garment/mockup';
import { addMockup, changeMockup, removeMockup } from '../../core/garment/mockup-edits';
import { versionNow } from '../../core/garment/version';
import { outstanding } from '../../core/mockup/mockup-findings';
import { useGarment } from '../state/garment-store';
import { newId } from '../state/new-id';
import { today } from '../state/today';
import { keepVersion, versionsOf } from '../storage/versions';
import { Button } from '../ui/button';
import { Card } from '../ui/card';
import { Note } from '../ui/note';
import { Pick } from '../ui/pick';
import { say } from '../ui/say';
import { TextField } from '../ui/text-field';
import { mockupWords as words } from '../words/mockup';
import styles from './mockup.module.css';
import { openMockup } from './mockup-store';
import type { OpenedVersion } from './use-version';

interface MockupsCardProps {
  readonly garment: Garment;
  readonly mockup: Mockup | undefined;
  readonly version: OpenedVersion;
  /** Whether the draft is no longer what the mock-up in hand was cut from. */
  readonly hasMoved: boolean;
}

/** Which mock-up is in hand, what it was cut from, and a new one. */
export function MockupsCard({ garment, mockup, version, hasMoved }: MockupsCardProps) {
  const [open, setOpen] = useState(false);
  const { mockups = [] } = garment;
  return (
    <Card title={words.mockups} about="mock-ups">
      {!mockup && <p>{words.none}</p>}
      {mockup && (
        <>
          {mockups.length > 1 ? (
            <Pick
              label={words.all}
              value={mockup.id}
              options={mockups.map((one) => ({
                value: one.id,
                words: `${one.name}: ${words.open(outstanding(one).length, one.pinned.length)}`,
              }))}
              onChange={openMockup}
            />
          ) : (
            <p>
              <strong>{mockup.name}</strong>: {words.open(outstanding(mockup).length, mockup.pinned.length)}
            </p>
          )}
          {version.kind === 'gone' && <Note tone="warn">{words.versionGone}</Note>}
          {hasMoved && version.kind === 'here' && <p className={styles.help}>{words.moved}</p>}
          <Card title={words.details} open={open} onToggle={setOpen}>
            <Details mockup={mockup} />
          </Card>
        </>
      )}
      <CutMockup garment={garment} isFirst={!mockup} />
    </Card>
  );
}

function Details({ mockup }: { readonly mockup: Mockup }) {
  const edit = useGarment((state) => state.edit);
  const [asked, setAsked] = useState(false);
  const change = (label: string, next: Partial<Mockup>) =>
    edit(label, (now) => changeMockup(now, mockup.id, (one) => ({ ...one, ...next })));
  return (
    <>
      <p className={styles.help}>{words.fromVersion(mockup.version, mockup.mark, mockup.made)}</p>
      <TextField
        label={words.name}
        value={mockup.name}
        onCommit={(name) => name.trim() && change(words.labels.name, { name })}
      />
      <TextField
        label={words.note}
        value={mockup.note}
        multiline
        hint={words.noteHint}
        onCommit={(note) => change(words.labels.remark, { note })}
      />
      {asked ? (
        <>
          <Note tone="warn">{words.removeAsk}</Note>
          <div className={styles.row}>
            <Button tone="wrong" onPress={() => edit(words.labels.remove, (now) => removeMockup(now, mockup.id))}>
              {words.removeYes}
            </Button>
            <Button onPress={() => setAsked(false)}>{words.keep}</Button>
          </div>
        </>
      ) : (
        <div className={styles.row}>
          <Button tone="quiet" icon="bin" onPress={() => setAsked(true)}>
            {words.remove}
          </Button>
        </div>
      )}
    </>
  );
}

interface CutMockupProps {
  readonly garment: Garment;
  readonly isFirst: boolean;
}

/** Keeps the draft as a numbered version, unless it is one already, and begins a mock-up from it. */
function CutMockup({ garment, isFirst }: CutMockupProps) {
  const [state, setState] = useState<'ready' | 'cutting' | 'failed'>('ready');
  const cut = async () => {
    setState('cutting');
    try {
      await cutMockup(garment);
      setState('ready');
    } catch {
      setState('failed');
    }
  };
  return (
    <>
      <p className={styles.help}>{words.cutHelp}</p>
      <div className={styles.row}>
        <Button
          tone={isFirst ? 'chalk' : 'plain'}
          icon="piece"
          step="mock-up"
          disabled={state === 'cutting'}
          onPress={() => void cut()}
        >
          {state === 'cutting' ? words.cutting : words.cut}
        </Button>
      </div>
      {state === 'failed' && <Note tone="stop">{words.cutFailed}</Note>}
    </>
  );
}

async function cutMockup(garment: Garment): Promise<void> {
  const name = words.newName((garment.mockups?.length ?? 0) + 1);
  const there = versionNow(await versionsOf(garment.id), garment);
  const made = today();
  const version = there ?? (await keepVersion(garment, { name: words.versionName(name), made, note: '' }));
  const { number, mark } = version;
  const mockup: Mockup = { id: newId(), name, made, version: number, mark, note: '', pinned: [] };
  const state = useGarment.getState();
  // The shelf may have been gone back to meanwhile; then the version is kept, and no more.
  if (state.garment?.id !== garment.id) return;
  state.edit(words.labels.cut, (now) => addMockup(now, mockup));
  openMockup(mockup.id);
  say(words.cutDone(name, number));
}
