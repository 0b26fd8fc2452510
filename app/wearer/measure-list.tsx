import type { KeyboardEvent } from 'react';
import { flushSync } from 'react-dom';
import { withMeasuresChanged } from '../../core/diagram/reseat-for-measures';
import type { MeasureName, MeasureSet } from '../../core/garment/measure';
import { setMeasure } from '../../core/garment/wearer-edits';
import type { ShownIn } from '../../core/units/inch';
import { useGarment } from '../state/garment-store';
import { measureNames } from '../words/measures';
import { wearerWords as words } from '../words/wearer';
import { guessInto } from './guess-into';
import { MeasureRow } from './measure-row';
import styles from './wearer-room.module.css';

interface MeasureListProps {
  readonly names: readonly MeasureName[];
  readonly set: MeasureSet;
  readonly shownIn: ShownIn;
  /** Those that are asked for next. */
  readonly wanted: ReadonlySet<MeasureName>;
  readonly doubts: ReadonlyMap<MeasureName, readonly string[]>;
  readonly onFocus: (name: MeasureName) => void;
}

const NO_DOUBTS: readonly string[] = [];

/** Some measures of the set in use, one below the other. */
export function MeasureList({ names, set, shownIn, wanted, doubts, onFocus }: MeasureListProps) {
  const edit = useGarment((state) => state.edit);
  return (
    <ul className={styles.list} onKeyDown={toNextEmpty}>
      {names.map((name) => (
        <MeasureRow
          // A field half typed belongs to the set it was typed in.
          key={`${set.id} ${name}`}
          name={name}
          measure={set.measures[name]}
          shownIn={shownIn}
          wanted={wanted.has(name)}
          doubts={doubts.get(name) ?? NO_DOUBTS}
          onChange={(measure) =>
            edit(words.labels.measure(measureNames[name]), (garment) =>
              withMeasuresChanged(garment, (now) => setMeasure(now, name, measure)),
            )
          }
          onGuess={() => guessInto(name, set, shownIn)}
          onFocus={() => onFocus(name)}
        />
      ))}
    </ul>
  );
}

/** Enter takes what was typed, and then goes on to the next field that is still empty; what was refused keeps the focus. */
function toNextEmpty({ key, target, currentTarget }: KeyboardEvent<HTMLUListElement>): void {
  if (key !== 'Enter' || !(target instanceof HTMLInputElement) || target.value.trim() === '') return;
  // What was typed is taken or refused now, and may have brought up a field of its own.
  flushSync(() => {});
  if (target.ariaInvalid === 'true') return;
  const fields = [...currentTarget.querySelectorAll('input')];
  const next = fields.slice(fields.indexOf(target) + 1).find((field) => field.value === '' && field.checkVisibility());
  next?.focus();
}
