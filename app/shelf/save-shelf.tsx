import { useState } from 'react';
import { wholeShelf } from '../storage/bring-many';
import { download } from '../storage/download';
import { SHELF_ENDING } from '../storage/whole-shelf';
import { Button } from '../ui/button';
import { say } from '../ui/say';
import { wholeShelfWords as words } from '../words/whole-shelf';
import styles from './shelf-room.module.css';

/** Every garment to one file. */
export function SaveShelf({ onTrouble }: { readonly onTrouble: (sentence: string) => void }) {
  const [busy, setBusy] = useState(false);

  async function save() {
    setBusy(true);
    try {
      const shelf = await wholeShelf();
      if (shelf.kind === 'too-large') onTrouble(words.tooLarge);
      else if (shelf.count === 0) onTrouble(words.noneSaved);
      else {
        download(shelf.file.slice(), `${words.fileName}${SHELF_ENDING}`, 'application/zip');
        if (shelf.leftOut.length > 0) onTrouble(words.leftOut(shelf.leftOut.join(', ')));
        else say(words.saved(shelf.count));
      }
    } catch {
      onTrouble(words.cannotSave);
    }
    setBusy(false);
  }

  return (
    <div className={styles.asked}>
      <Button icon="save" disabled={busy} onPress={() => void save()}>
        {busy ? words.saving : words.save}
      </Button>
      <p className={styles.private}>{words.saveHelp}</p>
    </div>
  );
}
