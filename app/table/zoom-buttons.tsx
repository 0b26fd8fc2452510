import { useState } from 'react';
import { Button } from '../ui/button';
import { tableWords as words } from '../words/table';
import type { Looking } from './use-looking';
import styles from './viewport.module.css';

interface ZoomButtonsProps {
  readonly looking: Looking;
  /** Whether there are pieces to look at one by one. */
  readonly withPieces: boolean;
  readonly handOnly: boolean;
  readonly onHandOnly: (on: boolean) => void;
  /** Present once a pen has been seen. */
  readonly fingersDraw: boolean | undefined;
  readonly onFingersDraw: (on: boolean) => void;
}

/** Half a doubling a press. */
const BUTTON_STEPS = 32;

/** Everything the wheel, the pinch and the middle button do, to press; on a narrow screen the rarer ones unfold. */
export function ZoomButtons(props: ZoomButtonsProps) {
  const { looking, withPieces, handOnly, onHandOnly, fingersDraw, onFingersDraw } = props;
  const [more, setMore] = useState(false);
  return (
    <div className={styles.zoom} data-more={more || undefined}>
      <div className={styles.rarer}>
        {fingersDraw !== undefined && (
          <Button pressed={fingersDraw} onPress={() => onFingersDraw(!fingersDraw)}>
            {fingersDraw ? words.fingersDraw : words.fingersMove}
          </Button>
        )}
        <Button icon="back" title={words.back} onPress={looking.back} />
        <Button icon="width" title={words.fitWidth} onPress={looking.fillWidth} />
        {withPieces && <Button icon="fit-piece" title={words.fitPiece} onPress={looking.showPiece} />}
      </div>
      <div className={styles.moreViews}>
        <Button icon="more" title={words.moreViews} pressed={more} onPress={() => setMore(!more)} />
      </div>
      <Button icon="hand" title={words.hand} pressed={handOnly} onPress={() => onHandOnly(!handOnly)} />
      <Button icon="minus" title={words.farther} onPress={() => looking.zoomBy(-BUTTON_STEPS)} />
      <Button icon="plus" title={words.nearer} onPress={() => looking.zoomBy(BUTTON_STEPS)} />
      <Button icon="fit" title={words.fit} onPress={looking.showAll} />
    </div>
  );
}
