import { useMemo } from 'react';
import { type WhatChanges, whatChanges } from '../../core/check/what-changes';
import type { Garment } from '../../core/garment/garment';
import { writeLength } from '../../core/units/write-length';
import { reshapeWords as words } from '../words/reshape';
import type { Figure } from './change';
import styles from './reshape.module.css';

interface ChangedLengthsProps {
  readonly before: Garment;
  readonly after: Garment;
  readonly figures: readonly Figure[];
}

/** More rows than this are too many to read; the rest is counted. */
const MOST_ROWS = 10;

/** What the change does, in numbers: its own figures, girths all the way round, then edge by edge. */
export function ChangedLengths({ before, after, figures }: ChangedLengthsProps) {
  const changes = useMemo(() => whatChanges(before, after), [before, after]);
  const rows = rowsOf(changes, after);
  const shown = rows.slice(0, MOST_ROWS);
  if (figures.length + rows.length === 0) return null;
  return (
    <>
      <dl className={styles.numbers}>
        {[...figures, ...shown].map((row) => (
          <div key={row.words}>
            <dt>{row.words}</dt>
            <dd>{row.value}</dd>
          </div>
        ))}
      </dl>
      {rows.length > shown.length && <p className={styles.help}>{words.andMore(rows.length - shown.length)}</p>}
    </>
  );
}

function rowsOf({ added, edges, girths }: WhatChanges, { shownIn }: Garment): Figure[] {
  const length = (mm: number) => writeLength(mm, { shownIn });
  // A difference too small to be written is none for the scissors.
  const changes = (said: string, was: number, is: number) =>
    length(was) === length(is) ? undefined : { words: said, value: words.fromTo(length(was), length(is)) };
  const rows = [
    ...girths.map(({ level, before, after }) => changes(words.round(level), before, after)),
    ...edges.map(({ piece, edge, before, after }) => changes(words.edgeOf(piece, edge), before, after)),
    ...added.map((piece) => ({ words: words.newPiece(piece.name), value: words.cut(piece.cut) })),
  ];
  return rows.flatMap((row) => (row ? [row] : []));
}
