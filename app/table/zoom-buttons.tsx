import { Button } from '../ui/button';
import { tableWords as words } from '../words/table';
import styles from './viewport.module.css';

interface ZoomButtonsProps {
  readonly onStep: (steps: number) => void;
  readonly onFit: () => void;
  readonly handOnly: boolean;
  readonly onHandOnly: (on: boolean) => void;
  /** Present once a pen has been seen. */
  readonly fingersDraw: boolean | undefined;
  readonly onFingersDraw: (on: boolean) => void;
}

/** Half a doubling a press. */
const BUTTON_STEPS = 32;

/** Everything the wheel, the pinch and the middle button do, to press. */
export function ZoomButtons(props: ZoomButtonsProps) {
  const { onStep, onFit, handOnly, onHandOnly, fingersDraw, onFingersDraw } = props;
  return (
    <div className={styles.zoom}>
      {fingersDraw !== undefined && (
        <Button pressed={fingersDraw} onPress={() => onFingersDraw(!fingersDraw)}>
          {fingersDraw ? words.fingersDraw : words.fingersMove}
        </Button>
      )}
      <Button icon="hand" title={words.hand} pressed={handOnly} onPress={() => onHandOnly(!handOnly)} />
      <Button icon="minus" title={words.farther} onPress={() => onStep(-BUTTON_STEPS)} />
      <Button icon="plus" title={words.nearer} onPress={() => onStep(BUTTON_STEPS)} />
      <Button icon="fit" title={words.fit} onPress={onFit} />
    </div>
  );
}
