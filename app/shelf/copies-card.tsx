import { useEffect, useState } from 'react';
import { canChooseFolder, chooseFolder, folderName, forgetFolder } from '../storage/folder';
import { Button } from '../ui/button';
import { say } from '../ui/say';
import { storageWords as words } from '../words/storage';
import { KeptHere } from './kept-here';
import { SaveShelf } from './save-shelf';
import styles from './shelf-room.module.css';

/** Everything about copies outside the browser: the whole shelf to one file, and the folder that files go to. */
export function CopiesCard({ onTrouble }: { readonly onTrouble: (sentence: string) => void }) {
  const [folder, setFolder] = useState<string>();
  useEffect(() => {
    folderName().then(setFolder, () => undefined);
  }, []);

  async function choose() {
    try {
      const chosen = await chooseFolder();
      if (chosen === undefined) return;
      setFolder(chosen);
      say(words.folderChosen(chosen));
    } catch {
      onTrouble(words.folderFailed);
    }
  }

  async function forget() {
    try {
      await forgetFolder();
      setFolder(undefined);
    } catch {
      onTrouble(words.folderFailed);
    }
  }

  return (
    <section className={styles.copies} aria-labelledby="copies-in-files">
      <h2 id="copies-in-files">{words.copies}</h2>
      <SaveShelf onTrouble={onTrouble} />
      {canChooseFolder() && (
        <div className={styles.asked}>
          <p>{folder === undefined ? words.toDownloads : words.toFolder(folder)}</p>
          <Button icon="open" onPress={() => void choose()}>
            {folder === undefined ? words.chooseFolder : words.otherFolder}
          </Button>
          {folder !== undefined && (
            <Button tone="quiet" onPress={() => void forget()}>
              {words.noFolder}
            </Button>
          )}
        </div>
      )}
      <KeptHere />
    </section>
  );
}
