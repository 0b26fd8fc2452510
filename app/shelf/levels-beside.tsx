import { Fragment, useMemo } from 'react';
import { type LevelBeside, levelsBeside } from '../../core/check/does-not-fit';
import { SEWING_TOLERANCE } from '../../core/fit/fit-findings';
import type { Garment } from '../../core/garment/garment';
import type { ShownIn } from '../../core/units/inch';
import { Icon } from '../ui/icon';
import { fitWords } from '../words/fit';
import { fieldOf } from '../words/measures';
import { takeUpWords as words } from '../words/shelf';
import { writeLength } from '../words/written';
import styles from './shelf-room.module.css';

interface LevelsBesideProps {
  readonly first: Garment;
  readonly takenUp: Garment;
}

/** Every level of a garment on the body it would be taken up for, in numbers; what is newly too tight is marked. */
export function LevelsBeside({ first, takenUp }: LevelsBesideProps) {
  const rows = useMemo(() => levelsBeside(first, takenUp), [first, takenUp]);
  if (rows.length === 0) return null;
  const manyRings = takenUp.rings.length > 1;
  return (
    <div className={styles.wide}>
      <table className={styles.levels}>
        <caption>{words.levels}</caption>
        <thead>
          <tr>
            <th scope="col">{words.level}</th>
            <th scope="col">{words.pieces}</th>
            <th scope="col">{words.body}</th>
            <th scope="col">{words.wanted}</th>
            <th scope="col">{words.overShort}</th>
          </tr>
        </thead>
        <tbody>
          {rows.map((row, index) => (
            <Fragment key={`${row.ring.id} ${row.girth.level.id}`}>
              {manyRings && rows[index - 1]?.ring !== row.ring && (
                <tr>
                  <th colSpan={5} scope="rowgroup">
                    {row.ring.name || fitWords.unnamedRing}
                  </th>
                </tr>
              )}
              <LevelRow row={row} shownIn={takenUp.shownIn} />
            </Fragment>
          ))}
        </tbody>
      </table>
    </div>
  );
}

function LevelRow({ row, shownIn }: { readonly row: LevelBeside; readonly shownIn: ShownIn }) {
  const { girth, over, firstOver, newlyShort } = row;
  const length = (mm: number) => writeLength(mm, { shownIn });
  const isReached = girth.kind !== 'no-depth' && girth.total > 0;
  return (
    <tr>
      <th scope="row">{fitWords.levelOf(girth.level)}</th>
      <td>{isReached ? length(girth.total) : words.unknown}</td>
      <td>{girth.kind === 'measured' ? length(girth.body) : words.unknown}</td>
      <td>{girth.kind === 'measured' ? length(girth.wanted) : words.unknown}</td>
      <td>
        {girth.kind !== 'measured' ? (
          words.notTaped(fieldOf(girth.missing))
        ) : over === undefined ? (
          words.notReached
        ) : (
          <strong data-short={over < -SEWING_TOLERANCE || undefined}>{verdict(over, shownIn)}</strong>
        )}
        {newlyShort && (
          <span className={styles.fresh}>
            <Icon name="hand" /> {words.newlyShort}
          </span>
        )}
        {firstOver !== undefined && <span className={styles.before}>{words.onFirst(verdict(firstOver, shownIn))}</span>}
      </td>
    </tr>
  );
}

function verdict(over: number, shownIn: ShownIn): string {
  const by = writeLength(Math.abs(over), { shownIn });
  if (Math.abs(over) <= SEWING_TOLERANCE) return fitWords.exact;
  return over > 0 ? fitWords.over(by) : fitWords.short(by);
}
