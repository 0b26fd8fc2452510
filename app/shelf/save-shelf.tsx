import { useState } from 'react';
import { wholeShelf } from '../storage/bring-many';
import { lastCopy, noteCopy } from '../storage/copies';
import { saveFile } from '../storage/save-file';
import { SHELF_ENDING } from '../storage/whole-shelf';
import { Button } from '../ui/button';
import { say } from '../ui/say';
import { storageWords } from '../words/storage';
import { wholeShelfWords as words } from '../words/whole-shelf';
import styles from './shelf-room.module.css';

/** Under this name the file of the whole shelf is noted, beside those of garments. */
const SHELF = 'whole-shelf';

/** Every garment to one file. */
export function SaveShelf({ onTrouble }: { readonly onTrouble: (sentence: string) => void }) {
  const [busy, setBusy] = useState(false);

  async function save() {
    setBusy(true);
    try {
      const shelf = await wholeShelf();
      if (shelf.kind === 'too-large') onTrouble(words.tooLarge);
      else if (shelf.ids.length === 0) onTrouble(words.noneSaved);
      else {
        const last = await lastCopy(SHELF).catch(() => undefined);
        const name = { name: words.fileName, ending: SHELF_ENDING };
        const saved = await saveFile(name, async () => shelf.file, last?.file);
        await noteCopy(SHELF, saved.to === 'folder' ? saved.file : undefined);
        for (const id of shelf.ids) await noteCopy(id);
        if (shelf.leftOut.length > 0) onTrouble(words.leftOut(shelf.leftOut.join(', ')));
        else if (saved.to === 'downloads-instead') onTrouble(storageWords.savedInstead);
        else say(words.saved(shelf.ids.length));
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
