import { useState } from 'react';
import { useGarment } from '../state/garment-store';
import { download } from '../storage/download';
import { Button } from '../ui/button';
import { Note } from '../ui/note';
import { TextField } from '../ui/text-field';
import { shellWords as words } from '../words/shell';
import styles from './broken.module.css';
import { faultReport } from './fault-report';
import { saveAndSay } from './save-and-say';

interface BrokenProps {
  /** The room, or the whole workbench. */
  readonly where: string;
  readonly sentence: string;
  readonly fault: unknown;
  readonly onTryAgain: () => void;
}

/** What stands in the place of something that could not be shown: what is known, the file, and a report to read. */
export function Broken({ where, sentence, fault, onTryAgain }: BrokenProps) {
  const garment = useGarment((state) => state.garment);
  const [said, setSaid] = useState('');
  const [when] = useState(() => new Date());
  const report = faultReport({ where, fault, said, browser: navigator.userAgent, when });
  return (
    <main className={styles.broken}>
      <Note tone="stop">{sentence}</Note>
      {garment && <p>{words.knows(garment.name, garment.pieces.length)}</p>}
      <div className={styles.ways}>
        <Button tone="chalk" onPress={onTryAgain}>
          {words.tryAgain}
        </Button>
        {garment && (
          <Button icon="save" onPress={() => void saveAndSay(garment)}>
            {words.saveToFile}
          </Button>
        )}
      </div>
      <details>
        <summary>{words.report}</summary>
        <p>{words.reportHelp}</p>
        <TextField label={words.reportYours} value={said} onCommit={setSaid} multiline />
        <pre>{report}</pre>
        <Button onPress={() => download(new Blob([report]), 'inchsquare-fault.txt', 'text/plain')}>
          {words.reportSave}
        </Button>
      </details>
    </main>
  );
}
