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
  function write(
    label: string,
    change: Partial<Pick<Garment, 'name' | 'remarks' | 'cloth' | 'notions'>>,
    sitting: string,
  ) {
    useGarment.getState().edit(label, (now) => ({ ...now, ...change }), { merge: sitting, merges: 'always' });
    void flushJournal().then(onChange);
  }
  return (
    <section className={styles.notes} aria-labelledby="garment-on-table">
      <h2 id="garment-on-table">{words.theGarment}</h2>
      <TextField
        label={words.name}
        value={garment.name}
        keepTyping
        onCommit={(typed, sitting) => typed.trim() !== '' && write(words.rename, { name: typed.trim() }, sitting)}
        hint={words.nameHint}
      />
      <details className={styles.folded}>
        <summary>{words.aboutIt}</summary>
        <TextField
          label={words.notes}
          value={garment.remarks}
          multiline
          keepTyping
          onCommit={(remarks, sitting) => write(words.steps.notes, { remarks }, sitting)}
          hint={words.notesHint}
        />
        <div className={styles.beside}>
          <TextField
            label={words.cloth}
            value={garment.cloth ?? ''}
            multiline
            keepTyping
            onCommit={(cloth, sitting) => write(words.steps.cloth, { cloth }, sitting)}
          />
          <TextField
            label={words.notions}
            value={garment.notions ?? ''}
            multiline
            keepTyping
            onCommit={(notions, sitting) => write(words.steps.notions, { notions }, sitting)}
          />
        </div>
        <CoverChoice garment={garment} onChange={onChange} />
      </details>
    </section>
  );
}
