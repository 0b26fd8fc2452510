import { useMemo } from 'react';
import type { Garment } from '../../core/garment/garment';
import { changedFigures } from '../trial/changed-figures';
import { type Figure, Figures } from '../trial/figures';
import { reshapeWords as words } from '../words/reshape';
import { writeLength } from '../words/written';
import styles from './reshape.module.css';

interface ChangedLengthsProps {
  readonly before: Garment;
  readonly after: Garment;
  readonly figures: readonly Figure[];
}

/** More rows than this are too many to read; the rest is counted. */
const MOST_ROWS = 10;

/** What the change does, in numbers: its own figures, then what becomes longer or shorter. */
export function ChangedLengths({ before, after, figures }: ChangedLengthsProps) {
  const { shownIn } = after;
  const rows = useMemo(
    () => changedFigures(before, after, (mm) => writeLength(mm, { shownIn })),
    [before, after, shownIn],
  );
  const shown = rows.slice(0, MOST_ROWS);
  return (
    <>
      <Figures rows={[...figures, ...shown]} />
      {rows.length > shown.length && <p className={styles.help}>{words.andMore(rows.length - shown.length)}</p>}
    </>
  );
}
