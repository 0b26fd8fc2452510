import { useState } from 'react';
import { Button } from '../ui/button';
import { LengthField } from '../ui/length-field';
import { screenPaperWords as words } from '../words/screen-paper';
import styles from './screen-paper.module.css';

interface SquareCheckProps {
  /** mm */
  readonly side: number;
  readonly said: string;
  readonly shownIn: 'in' | 'cm';
  readonly onMend: (measured: { readonly across: number; readonly down: number }) => void;
  readonly onClose: () => void;
}

/** What the test square measures in truth; the calibration is mended by it. */
export function SquareCheck({ side, said, shownIn, onMend, onClose }: SquareCheckProps) {
  const [across, setAcross] = useState(side);
  const [down, setDown] = useState(side);
  const field = { shownIn, min: side * 0.8, max: side * 1.25 };
  return (
    <section className={styles.panel}>
      <h2>{words.squareTitle(said)}</h2>
      <p>{words.squareHelp}</p>
      <LengthField label={words.squareAcross} value={across} {...field} onCommit={(mm) => mm && setAcross(mm)} />
      <LengthField label={words.squareDown} value={down} {...field} onCommit={(mm) => mm && setDown(mm)} />
      <div className={styles.row}>
        <Button tone="chalk" onPress={() => onMend({ across, down })}>
          {words.mend}
        </Button>
        <Button onPress={onClose}>{words.leave}</Button>
      </div>
    </section>
  );
}
