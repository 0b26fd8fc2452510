import { useGarment } from '../state/garment-store';
import { shellWords as words } from '../words/shell';
import styles from './unit-switch.module.css';

const UNITS = ['in', 'cm'] as const;

/** Inches or centimetres, at hand in every room: one press writes every length in the other. */
export function UnitSwitch() {
  const shownIn = useGarment((state) => state.garment?.shownIn);
  const editing = useGarment((state) => state.editing);
  const edit = useGarment((state) => state.edit);
  if (!shownIn) return null;
  const other = shownIn === 'in' ? 'cm' : 'in';
  return (
    <button
      type="button"
      className={styles.units}
      title={words.writeIn[other]}
      aria-label={`${words.units.in} ${words.units.cm}: ${words.writeIn[other]}`}
      disabled={editing !== 'here'}
      onClick={() => edit(words.unitsChanged, (now) => ({ ...now, shownIn: other }))}
    >
      {UNITS.map((unit) => (
        <span key={unit} data-shown={unit === shownIn || undefined}>
          {words.units[unit]}
        </span>
      ))}
    </button>
  );
}
