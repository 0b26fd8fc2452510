import { useState } from 'react';
import type { Garment } from '../../core/garment/garment';
import { versionSaid } from '../../core/garment/version-said';
import { today } from '../state/today';
import { download, fileName } from '../storage/download';
import { versionsOf } from '../storage/versions';
import { Button } from '../ui/button';
import { Note } from '../ui/note';
import { say } from '../ui/say';
import { checkWords as words } from '../words/check';
import { fontAddresses, pdfWork } from '../workers/pdf-calls';

/** Makes the list as a page to tick beside the cloth. */
export function PrintList({ garment }: { readonly garment: Garment }) {
  const [state, setState] = useState<'resting' | 'making' | 'failed'>('resting');
  async function make() {
    setState('making');
    const answer = await pdfWork.call('list', {
      garment,
      version: versionSaid(await versionsOf(garment.id).catch(() => []), garment),
      today: today(),
      fonts: fontAddresses(),
    });
    if (!('bytes' in answer)) {
      setState('failed');
      return;
    }
    setState('resting');
    download(new Uint8Array(answer.bytes), `${fileName(`${garment.name} ${words.file}`)}.pdf`, 'application/pdf');
    say(words.printed(answer.pages));
  }
  return (
    <div>
      <Button icon="page" disabled={state === 'making'} onPress={() => void make()}>
        {state === 'making' ? words.printing : words.print}
      </Button>
      {state === 'failed' && <Note tone="stop">{words.printFailed}</Note>}
    </div>
  );
}
