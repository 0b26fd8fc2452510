import type { Garment } from '../../core/garment/garment';
import { useGarment } from '../state/garment-store';
import { flushJournal } from '../storage/journal';
import { TextField } from '../ui/text-field';
import { shelfWords as words } from '../words/shelf';
import { CoverChoice } from './cover-choice';
import styles from './shelf-room.module.css';

interface GarmentCardProps {
  readonly garment: Garment;
  /** What the shelf shows of it has changed. */
  readonly onChange: () => void;
}

/** What is written of the garment on the table as a whole: its name, notes, cloth and notions. */
export function GarmentCard({ garment, onChange }: GarmentCardProps) {
  function write(label: string, change: Partial<Pick<Garment, 'name' | 'remarks' | 'cloth' | 'notions'>>) {
    useGarment.getState().edit(label, (now) => ({ ...now, ...change }));
    void flushJournal().then(onChange);
  }
  return (
    <section className={styles.notes} aria-labelledby="garment-on-table">
      <h2 id="garment-on-table">{words.theGarment}</h2>
      <TextField
        label={words.name}
        value={garment.name}
        onCommit={(typed) => typed.trim() !== '' && write(words.rename, { name: typed.trim() })}
        hint={words.nameHint}
      />
      <details className={styles.folded}>
        <summary>{words.aboutIt}</summary>
        <TextField
          label={words.notes}
          value={garment.remarks}
          multiline
          onCommit={(remarks) => write(words.steps.notes, { remarks })}
          hint={words.notesHint}
        />
        <div className={styles.beside}>
          <TextField
            label={words.cloth}
            value={garment.cloth ?? ''}
            multiline
            onCommit={(cloth) => write(words.steps.cloth, { cloth })}
          />
          <TextField
            label={words.notions}
            value={garment.notions ?? ''}
            multiline
            onCommit={(notions) => write(words.steps.notions, { notions })}
          />
        </div>
        <CoverChoice garment={garment} onChange={onChange} />
      </details>
    </section>
  );
}
