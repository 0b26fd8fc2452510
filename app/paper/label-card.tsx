import { useState } from 'react';
import type { Garment } from '../../core/garment/garment';
import { versionSaid } from '../../core/garment/version-said';
import { today } from '../state/today';
import { download, fileName } from '../storage/download';
import { getPhoto } from '../storage/photos';
import { versionsOf } from '../storage/versions';
import { Button } from '../ui/button';
import { Card } from '../ui/card';
import { Choice } from '../ui/choice';
import { Note } from '../ui/note';
import { say } from '../ui/say';
import { labelCardWords as words } from '../words/label';
import { fontAddresses, pdfWork } from '../workers/pdf-calls';
import { jpegOf } from './jpeg-of';
import styles from './paper-room.module.css';

type State = 'resting' | 'making' | 'failed' | 'no-photo';

/** The label of the envelope in which the pattern is filed. */
export function LabelCard({ garment }: { readonly garment: Garment }) {
  const [isOpen, setOpen] = useState(false);
  const [wants, setWants] = useState<'photo' | 'pieces'>('photo');
  const [state, setState] = useState<State>('resting');
  const { coverPhotoId } = garment;

  async function make() {
    setState('making');
    const row =
      coverPhotoId !== undefined && wants === 'photo' ? await getPhoto(coverPhotoId).catch(() => undefined) : undefined;
    const picture = row && (await jpegOf(new Blob([row.bytes], { type: row.type })));
    const answer = await pdfWork.call('label', {
      garment,
      version: versionSaid(await versionsOf(garment.id).catch(() => []), garment),
      today: today(),
      fonts: fontAddresses(),
      ...(picture ? { picture } : {}),
    });
    if (!('bytes' in answer)) {
      setState('failed');
      return;
    }
    setState(coverPhotoId !== undefined && wants === 'photo' && !picture ? 'no-photo' : 'resting');
    download(new Uint8Array(answer.bytes), `${fileName(`${garment.name} ${words.file}`)}.pdf`, 'application/pdf');
    say(words.made(answer.pages));
  }

  return (
    <Card title={words.title} about="envelope" open={isOpen} onToggle={setOpen}>
      <p className={styles.small}>{words.help}</p>
      {coverPhotoId !== undefined && (
        <Choice
          label={words.picture}
          value={wants}
          options={[
            { value: 'photo', words: words.photo },
            { value: 'pieces', words: words.pieces },
          ]}
          onChange={setWants}
        />
      )}
      <Button icon="label" disabled={state === 'making'} onPress={() => void make()}>
        {state === 'making' ? words.making : words.make}
      </Button>
      {state === 'failed' && <Note tone="stop">{words.failed}</Note>}
      {state === 'no-photo' && <Note tone="warn">{words.noPhoto}</Note>}
    </Card>
  );
}
