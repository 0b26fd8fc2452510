import { SEWING_TOLERANCE } from '../../core/fit/fit-findings';
import { type GirthAtLevel, girthsOf, hemSweep } from '../../core/fit/round-body';
import type { Garment, Ring } from '../../core/garment/garment';
import { setEase } from '../../core/garment/ring-edits';
import { writeLength } from '../../core/units/write-length';
import { useGarment } from '../state/garment-store';
import { useTable } from '../state/table-store';
import { Card } from '../ui/card';
import { LengthField } from '../ui/length-field';
import { Note } from '../ui/note';
import { fitWords as words } from '../words/fit';
import { fieldOf } from '../words/measures';
import styles from './fit-room.module.css';

interface LevelsCardProps {
  readonly garment: Garment;
  readonly ring: Ring;
}

/** The pieces against the body at each level, in numbers. */
export function LevelsCard({ garment, ring }: LevelsCardProps) {
  const length = (mm: number) => writeLength(mm, { shownIn: garment.shownIn });
  const sweep = hemSweep(garment, ring);
  return (
    <Card title={words.levels}>
      {girthsOf(garment, ring).map((girth) => (
        <LevelRow key={girth.level.id} girth={girth} ring={ring} shownIn={garment.shownIn} />
      ))}
      {sweep > 0 && <p>{words.sweep(length(sweep))}</p>}
    </Card>
  );
}

interface LevelRowProps {
  readonly girth: GirthAtLevel;
  readonly ring: Ring;
  readonly shownIn: 'in' | 'cm';
}

function LevelRow({ girth, ring, shownIn }: LevelRowProps) {
  const edit = useGarment((state) => state.edit);
  const goTo = useTable((table) => table.goTo);
  const name = words.girth[girth.level.girth];
  const length = (mm: number) => writeLength(mm, { shownIn });
  if (girth.kind !== 'measured') {
    return (
      <Note tone="warn" action={{ words: words.toWearer, onPress: () => goTo('wearer') }}>
        {words.notMeasured(name, fieldOf(girth.missing))}
      </Note>
    );
  }
  const off = girth.total - girth.wanted;
  const verdict =
    Math.abs(off) <= SEWING_TOLERANCE ? words.exact : off > 0 ? words.over(length(off)) : words.short(length(-off));
  return (
    <section className={styles.level} aria-label={name}>
      <h3>
        {name}
        {girth.depth > 0 && <span>{words.atDepth(length(girth.depth))}</span>}
        <strong data-short={off < -SEWING_TOLERANCE || undefined}>{verdict}</strong>
      </h3>
      <dl>
        <div>
          <dt>{words.pieces}</dt>
          <dd>{length(girth.total)}</dd>
        </div>
        <div>
          <dt>{words.body}</dt>
          <dd>{length(girth.body)}</dd>
        </div>
      </dl>
      <LengthField
        label={words.ease}
        value={girth.level.ease}
        shownIn={shownIn}
        onCommit={(ease) => {
          if (ease !== undefined) edit(words.easeLabel, (before) => setEase(before, ring.id, girth.level.id, ease));
        }}
      />
    </section>
  );
}
