import { useState } from 'react';
import type { Garment } from '../../core/garment/garment';
import type { StoredVersion } from '../../core/garment/version';
import { versionSaid } from '../../core/garment/version-said';
import { Button } from '../ui/button';
import { Card } from '../ui/card';
import { Note } from '../ui/note';
import { Switch } from '../ui/switch';
import { TextField } from '../ui/text-field';
import { versionsWords as words } from '../words/versions';
import { useLooking } from './looked-at';
import { keepNow } from './versions-actions';

interface KeepCardProps {
  readonly garment: Garment;
  readonly versions: readonly StoredVersion[];
}

/** Which version the draft is, and a way to keep it as the next. */
export function KeepCard({ garment, versions }: KeepCardProps) {
  const [name, setName] = useState('');
  const [note, setNote] = useState('');
  const beneath = useLooking((looking) => looking.tracedBeneath);
  const said = versionSaid(versions, garment);
  const keep = async () => {
    if (!(await keepNow({ name: name.trim(), note }))) return;
    setName('');
    setNote('');
  };
  return (
    <Card title={words.now} about="version-now">
      <Note tone={said.kind === 'kept' ? 'good' : 'plain'}>{words.said(said)}</Note>
      <TextField label={words.name} hint={words.nameHint} value={name} onCommit={setName} />
      <TextField label={words.note} value={note} onCommit={setNote} multiline />
      <Button tone="chalk" icon="done" onPress={() => void keep()}>
        {words.keep}
      </Button>
      <Switch label={words.beneath} on={beneath} onChange={(tracedBeneath) => useLooking.setState({ tracedBeneath })} />
    </Card>
  );
}
