import { useState } from 'react';
import { useGarment } from '../state/garment-store';
import { type DeviceRoom, useKept } from '../state/kept-store';
import { editHere } from '../storage/bring-in';
import { isShort } from '../storage/device-room';
import { download } from '../storage/download';
import { Note } from '../ui/note';
import { shellWords as words } from '../words/shell';
import { storageWords } from '../words/storage';
import { saveAndSay } from './save-and-say';

/** Says at once when a change could not be kept on this device, or may soon not be, and why; one sentence at a time. */
export function KeptNotice() {
  const elsewhere = useGarment((state) => state.editing === 'elsewhere');
  const failure = useGarment((state) => (state.saving === 'failed' ? state.failure : undefined));
  const garment = useGarment((state) => state.garment);
  const { cleared, laidBeside, blocked, storeIsNewer, asItCame, reserve, room } = useKept();
  const [putBy, setPutBy] = useState(false);
  const save = garment && {
    words: words.saveToFile,
    onPress: () => void saveAndSay(garment),
  };
  if (garment && asItCame?.garmentId === garment.id) {
    const { name, bytes } = asItCame;
    return (
      <Note
        tone="stop"
        action={{ words: words.saveAsItCame, onPress: () => download(bytes.slice(), name, 'application/zip') }}
      >
        {words.newerFile}
      </Note>
    );
  }
  if (garment && elsewhere) {
    return (
      <Note tone="stop" action={{ words: words.editHere, onPress: () => void editHere() }}>
        {words.elsewhere}
      </Note>
    );
  }
  const serious =
    (garment && failure !== undefined && words.notKept(failure)) ||
    (blocked && words.blocked) ||
    (storeIsNewer && words.newerStore) ||
    (garment && cleared && words.cleared) ||
    (garment && laidBeside?.garmentId === garment.id && words.laidBeside(garment.name));
  if (serious) {
    return (
      <Note tone="stop" {...(save && { action: save })}>
        {serious}
      </Note>
    );
  }
  const short = shortage(reserve, room);
  if (!short || putBy) return null;
  const later = { words: words.notNow, onPress: () => setPutBy(true) };
  return (
    <Note tone="warn" action={save ?? later} beside={save && later}>
      {short}
    </Note>
  );
}

/** What is said while everything is still kept, but soon may not be. */
function shortage(reserve: 'laid' | 'spent' | 'not-known', room: DeviceRoom | undefined): string | undefined {
  if (reserve === 'spent') return storageWords.reserveSpent;
  return room && isShort(room) ? storageWords.short(storageWords.bytes(room.left)) : undefined;
}
