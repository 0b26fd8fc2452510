import { uiWords as words } from '../words/ui';
import { writeLength } from '../words/written';
import { Button } from './button';
import styles from './field.module.css';
import { LengthField } from './length-field';

interface LengthStepperProps {
  readonly label: string;
  /** Millimetres; `undefined` when nothing is said. */
  readonly value: number | undefined;
  /** What one press takes off or adds (mm). */
  readonly step: number;
  /** Where the first press begins when nothing is said. */
  readonly begin?: number;
  readonly min?: number;
  readonly max?: number;
  readonly shownIn: 'in' | 'cm';
  readonly hint?: string;
  /** With this the field may be left empty, which commits `undefined`. */
  readonly allowEmpty?: true;
  readonly onCommit: (length: number | undefined) => void;
}

/** A length between two large buttons that take a step off or add one, for a thumb; it can be typed as well. */
export function LengthStepper(props: LengthStepperProps) {
  const { label, value, step, begin = 0, min = 0, max = Infinity, shownIn, hint, allowEmpty, onCommit } = props;
  const within = (length: number) => Math.min(max, Math.max(min, length));
  const stepped = (way: 1 | -1) => {
    const from = value ?? begin;
    // From a place between two steps to the next of them.
    const next = way > 0 ? Math.floor(from / step + 1e-6) + 1 : Math.ceil(from / step - 1e-6) - 1;
    return within(next * step);
  };
  const said = writeLength(step, { shownIn });
  return (
    <div className={styles.stepper}>
      <Button
        icon="minus"
        label={words.stepDown(label, said)}
        disabled={(value ?? begin) <= min}
        onPress={() => onCommit(stepped(-1))}
      />
      <LengthField
        label={label}
        value={value}
        shownIn={shownIn}
        min={min}
        {...(hint === undefined ? {} : { hint })}
        {...(allowEmpty ? { allowEmpty } : {})}
        onCommit={(length) => onCommit(length === undefined ? undefined : within(length))}
      />
      <Button
        icon="plus"
        label={words.stepUp(label, said)}
        disabled={(value ?? begin) >= max}
        onPress={() => onCommit(stepped(1))}
      />
    </div>
  );
}
