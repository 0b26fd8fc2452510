import { useGarment } from '../state/garment-store';
import { Button } from '../ui/button';
import { Note } from '../ui/note';
import { shellWords as words } from '../words/shell';
import styles from './broken.module.css';
import { FaultWords } from './fault-words';
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
      <FaultWords where={where} fault={fault} />
    </main>
  );
}
