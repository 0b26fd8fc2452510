import { useEffect, useRef, useState } from 'react';
import { createPortal } from 'react-dom';
import type { Garment } from '../../core/garment/garment';
import type { Piece } from '../../core/garment/piece';
import { type Calibration, screenMap } from '../../core/screen/calibration';
import { today } from '../state/today';
import { Note } from '../ui/note';
import { useAwake } from '../ui/use-awake';
import { screenPaperWords as words } from '../words/screen-paper';
import { FullSize } from './full-size';
import { keepScreen, keptScreen } from './kept-screens';
import { MeasureBars } from './measure-bars';
import styles from './screen-paper.module.css';
import { SetCorners } from './set-corners';
import { useFullScreen } from './use-full-screen';
import { useThisScreen } from './use-this-screen';

interface ScreenPaperProps {
  readonly garment: Garment;
  readonly pieces: readonly Piece[];
  readonly kind: 'screen' | 'beam';
  readonly onClose: () => void;
}

/** The screen, or what a beam throws on the table, as paper: measured first, and again whenever it may have changed. */
export function ScreenPaper({ garment, pieces, kind, onClose }: ScreenPaperProps) {
  const screen = useThisScreen();
  const key = kind === 'beam' ? screen.windowKey : screen.key;
  const [used, setUsed] = useState<{
    readonly key: string;
    readonly calibration: Calibration;
    readonly date: string;
  }>();
  const [anew, setAnew] = useState(false);
  const ground = useRef<HTMLElement>(null);
  const fullScreen = useFullScreen(ground);
  const awake = useAwake();
  useEffect(() => {
    const app = document.getElementById('app');
    app?.setAttribute('inert', '');
    ground.current?.focus();
    return () => app?.removeAttribute('inert');
  }, []);

  const known = used?.key === key ? used : keptScreen(kind, key);
  const map = known && screenMap(known.calibration);
  // Another zoom, another screen, another window: what was used holds no more.
  const hasChanged = used !== undefined && used.key !== key && !known;
  const measured = (calibration: Calibration) => {
    const date = today();
    setUsed({ key, calibration, date });
    setAnew(false);
    keepScreen({ kind, key, calibration, date });
  };
  const { size } = screen;
  const asks = anew || !map || map.kind === 'no-screen-map';
  return createPortal(
    <section
      ref={ground}
      className={styles.ground}
      role="dialog"
      aria-modal="true"
      aria-label={words.label}
      tabIndex={-1}
    >
      {asks && kind === 'screen' && (
        <MeasureBars key={key} {...{ size }} shownIn={garment.shownIn} onMeasured={measured} onClose={onClose} />
      )}
      {asks && kind === 'beam' && (
        <SetCorners
          key={key}
          {...{ size }}
          shownIn={garment.shownIn}
          before={known?.calibration}
          onMeasured={measured}
          onClose={onClose}
        />
      )}
      {!asks && (
        <FullSize
          {...{ garment, pieces, kind, size, map, fullScreen, awake, onClose }}
          calibration={known.calibration}
          date={known.date}
          onMend={measured}
          onAnew={() => setAnew(true)}
        />
      )}
      {(hasChanged || screen.isPinched) && (
        <div className={styles.notice}>
          <Note tone="stop">{screen.isPinched ? words.pinched : words.changed}</Note>
        </div>
      )}
    </section>,
    document.body,
  );
}
