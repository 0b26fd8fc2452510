import { useFindings } from '../state/findings-store';
import { useGarment } from '../state/garment-store';
import { useGuide } from '../state/guide-store';
import { useTable } from '../state/table-store';
import { Icon } from '../ui/icon';
import { nextWords as words } from '../words/guide/next';
import { shellWords } from '../words/shell';
import { nextStep } from './next-step';
import styles from './next-strip.module.css';

/** The one thing to do next, at the foot of the notebook: a press leads to it and lights it up. */
export function NextStrip() {
  const room = useTable((table) => table.room);
  const { garment, open } = useFindings();
  const here = useGarment((state) => state.garment?.id);
  const { saysNext, later, walk } = useGuide();
  // A walk says by itself what comes next.
  if (!saysNext || !garment || garment.id !== here || walk?.garmentId === garment.id) return null;
  const putOff = later[garment.id] ?? [];
  const next = nextStep(garment, open, putOff);
  const show = () => {
    useGuide.setState({ pointedAt: next.name });
    useTable.getState().goTo(next.room, next.chosen);
  };
  return (
    <section className={styles.strip} aria-label={words.region}>
      <button type="button" className={styles.next} onClick={show}>
        <span>
          <strong>{words.next}</strong> {words.steps[next.name]}
          {next.room !== room && <small> {words.inRoom(shellWords.rooms[next.room])}</small>}
        </span>
        <Icon name="right" />
      </button>
      {next.name !== 'cut' && (
        <button
          type="button"
          className={styles.later}
          aria-label={words.laterLabel}
          onClick={() => useGuide.setState({ later: { ...later, [garment.id]: [...putOff, next.name] } })}
        >
          {words.later}
        </button>
      )}
    </section>
  );
}
