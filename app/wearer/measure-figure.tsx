import type { MeasureName } from '../../core/garment/measure';
import styles from './measure-figure.module.css';
import { bodyHalf, bodyMarks, measureLines } from './measure-lines';

interface MeasureFigureProps {
  readonly view: 'front' | 'back';
  /** The line drawn strongly. */
  readonly chosen: MeasureName | undefined;
  /** Lines drawn faintly beside it. */
  readonly others?: readonly MeasureName[];
}

/** One simple body, with the line along which a measure is taken. Nothing to hear: the words stand beside it. */
export function MeasureFigure({ view, chosen, others = [] }: MeasureFigureProps) {
  const line = chosen && measureLines[chosen];
  return (
    <svg className={styles.figure} viewBox="0 0 100 240" aria-hidden="true" focusable="false">
      <path className={styles.floor} d="M8 232H92" />
      <path className={styles.body} d={bodyHalf} />
      <path className={styles.body} d={bodyHalf} transform="matrix(-1 0 0 1 100 0)" />
      <path className={styles.mark} d={bodyMarks[view]} />
      {others.map((name) => measureLines[name].view === view && <Line key={name} d={measureLines[name].d} />)}
      {line?.view === view && <path className={styles.chosen} d={line.d} />}
    </svg>
  );
}

function Line({ d }: { readonly d: string }) {
  return <path className={styles.other} d={d} />;
}

/** The small drawing beside a field: only the side of the body on which the measure is taken. */
export function SmallFigure({ measure }: { readonly measure: MeasureName }) {
  return (
    <div className={styles.small}>
      <MeasureFigure view={measureLines[measure].view} chosen={measure} />
    </div>
  );
}
