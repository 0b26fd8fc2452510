import { useState } from 'react';
import { barsMeasured, type Calibration, SHORTEST_SIDE } from '../../core/screen/calibration';
import type { ScreenSize } from '../../core/screen/pan-steps';
import { Button } from '../ui/button';
import { LengthField } from '../ui/length-field';
import { screenPaperWords as words } from '../words/screen-paper';
import styles from './screen-paper.module.css';

interface MeasureBarsProps {
  readonly size: ScreenSize;
  readonly shownIn: 'in' | 'cm';
  readonly onMeasured: (calibration: Calibration) => void;
  readonly onClose: () => void;
}

/** Bars as long as the screen allows, in whole pixels; their length is told by a ruler, never assumed. */
export function MeasureBars({ size, shownIn, onMeasured, onClose }: MeasureBarsProps) {
  const [across, setAcross] = useState<number>();
  const [down, setDown] = useState<number>();
  const corner = { x: EDGE, y: EDGE };
  const [acrossPx, downPx] = [Math.floor(size.width - 2 * EDGE), Math.floor(size.height - 2 * EDGE)];
  return (
    <>
      <svg className={styles.whole} width={size.width} height={size.height} aria-hidden="true">
        <path className={styles.bar} d={`M${EDGE} ${EDGE}h${acrossPx}M${EDGE} ${EDGE}v${downPx}`} />
        <path
          className={styles.tick}
          d={`M${EDGE} 4V${2 * EDGE}M${EDGE + acrossPx} 4V${2 * EDGE}M4 ${EDGE}H${2 * EDGE}M4 ${EDGE + downPx}H${2 * EDGE}`}
        />
      </svg>
      <section className={styles.panel}>
        <h2>{words.barsTitle}</h2>
        <p>{words.barsHelp}</p>
        <LengthField
          label={words.barAcross}
          value={across}
          shownIn={shownIn}
          min={SHORTEST_SIDE}
          onCommit={setAcross}
        />
        <LengthField label={words.barDown} value={down} shownIn={shownIn} min={SHORTEST_SIDE} onCommit={setDown} />
        <div className={styles.row}>
          <Button
            tone="chalk"
            disabled={across === undefined || down === undefined}
            onPress={() =>
              across !== undefined &&
              down !== undefined &&
              onMeasured(barsMeasured({ corner, acrossPx, downPx }, { across, down }))
            }
          >
            {words.use}
          </Button>
          <Button onPress={onClose}>{words.close}</Button>
        </div>
      </section>
    </>
  );
}

/** From the edge of the screen to the bars, and half the length of their ticks (CSS px). */
const EDGE = 24;
