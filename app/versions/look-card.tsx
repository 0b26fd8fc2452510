import type { Garment } from '../../core/garment/garment';
import type { VersionHead } from '../../core/garment/version';
import { useGarment } from '../state/garment-store';
import { Button } from '../ui/button';
import { Card } from '../ui/card';
import { Note } from '../ui/note';
import { TextField } from '../ui/text-field';
import { versionsWords as words } from '../words/versions';
import { Differences } from './differences';
import { useLooking } from './looked-at';
import styles from './versions.module.css';
import { bringBack, setSaid } from './versions-actions';

interface LookCardProps {
  readonly garment: Garment;
  readonly head: VersionHead;
  /** What is kept of it; nothing when that cannot be read. */
  readonly version: Garment | undefined;
}

/** The version that lies on the table: what is different now, its name and note, and the way back to it. */
export function LookCard({ garment, head, version }: LookCardProps) {
  const editing = useGarment((state) => state.editing);
  const stop = () => useLooking.setState({ at: { kind: 'now' } });
  const back = async () => {
    if (!version) return;
    await bringBack(head.number, version);
    stop();
  };
  const title = words.numbered(head);
  return (
    <Card title={title} about="one-version" aside={words.date(head.made)}>
      {version ? (
        <>
          <p>{words.lookingAt(title)}</p>
          <Differences before={version} after={garment} />
          <div className={styles.row}>
            <Button tone="chalk" icon="undo" disabled={editing !== 'here'} onPress={() => void back()}>
              {words.bringBack}
            </Button>
            <Button icon="close" onPress={stop}>
              {words.stop}
            </Button>
          </div>
          <p className={styles.small}>{words.bringBackHelp}</p>
        </>
      ) : (
        <>
          <Note tone="stop">{words.damaged}</Note>
          <Button onPress={stop}>{words.stop}</Button>
        </>
      )}
      <TextField
        label={words.name}
        value={head.name}
        onCommit={(name) => void setSaid(garment.id, head.number, { name: name.trim() })}
      />
      <TextField
        label={words.note}
        value={head.note}
        onCommit={(note) => void setSaid(garment.id, head.number, { note })}
        multiline
      />
    </Card>
  );
}
