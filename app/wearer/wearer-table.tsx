import { MEASURES, type MeasureName, type MeasureSet } from '../../core/garment/measure';
import { measureOf } from '../../core/garment/measure-value';
import type { ShownIn } from '../../core/units/inch';
import { measureNames } from '../words/measures';
import { wearerWords as words } from '../words/wearer';
import { writeLength } from '../words/written';
import { MeasureFigure } from './measure-figure';
import styles from './wearer-room.module.css';

interface WearerTableProps {
  readonly set: MeasureSet;
  readonly shown: MeasureName;
  readonly shownIn: ShownIn;
}

/** The body from both sides, with every measure taken so far and the one in hand drawn strongly. */
export function WearerTable({ set, shown, shownIn }: WearerTableProps) {
  const taken = MEASURES.filter((name) => set.measures[name] !== undefined && name !== shown);
  const measure = measureOf(set, shown);
  return (
    <div className={styles.table}>
      <div className={styles.bodies} role="img" aria-label={words.figure}>
        {(['front', 'back'] as const).map((view) => (
          <figure key={view} className={styles.body}>
            <MeasureFigure view={view} chosen={shown} others={taken} />
            <figcaption>{words[view]}</figcaption>
          </figure>
        ))}
      </div>
      <div className={styles.inHand}>
        <p className={styles.inHandName}>
          {measureNames[shown]}
          {measure !== undefined && ` ${writeLength(measure, { shownIn })}`}
        </p>
        <p>{words.how[shown]}</p>
      </div>
    </div>
  );
}
