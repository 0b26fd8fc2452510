import type { Measure, MeasureName } from '../../core/garment/measure';
import { halvesOf, withHalf, withHalvesAlike } from '../../core/garment/measure-halves';
import type { ShownIn } from '../../core/units/inch';
import { Button } from '../ui/button';
import { LengthField } from '../ui/length-field';
import { measureNames } from '../words/measures';
import { wearerWords as words } from '../words/wearer';
import styles from './wearer-room.module.css';

interface HalvesFieldsProps {
  readonly name: MeasureName;
  readonly measure: Measure;
  readonly shownIn: ShownIn;
  readonly onChange: (measure: Measure) => void;
}

/** A half shorter than this (mm) is a slip. */
const LEAST = 5;

/** The two halves of a girth, folded away until she needs them. */
export function HalvesFields({ name, measure, shownIn, onChange }: HalvesFieldsProps) {
  const halves = halvesOf(measure);
  const called = measureNames[name];
  const commit = (side: 'left' | 'right', half: number | undefined) => {
    const taped = half === undefined ? undefined : withHalf(measure, side, half);
    if (taped) onChange(taped);
  };
  return (
    <details className={styles.halves} open={halves !== undefined}>
      <summary aria-label={words.halvesApartOf(called)}>{words.halvesApart}</summary>
      <div className={styles.fields}>
        <p className={styles.whence}>{words.halvesHelp}</p>
        {(['left', 'right'] as const).map((side) => (
          <LengthField
            key={side}
            label={words.half[side](called)}
            value={halves?.[side]}
            shownIn={shownIn}
            min={LEAST}
            {...(halves ? {} : { max: measure.length - LEAST, allowEmpty: true })}
            onCommit={(half) => commit(side, half)}
          />
        ))}
        {halves && (
          <Button
            tone="quiet"
            label={words.sidesLabel(words.halvesAlike, called)}
            onPress={() => onChange(withHalvesAlike(measure))}
          >
            {words.halvesAlike}
          </Button>
        )}
      </div>
    </details>
  );
}
