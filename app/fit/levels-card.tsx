import { SEWING_TOLERANCE } from '../../core/fit/fit-findings';
import { type GirthAtLevel, girthsOf, type SideGirth } from '../../core/fit/round-body';
import type { Garment, Ring } from '../../core/garment/garment';
import { currentSet, halfGirths } from '../../core/garment/measure-value';
import { setEase } from '../../core/garment/ring-edits';
import type { ShownIn } from '../../core/units/inch';
import { useGarment } from '../state/garment-store';
import { useTable } from '../state/table-store';
import { Card } from '../ui/card';
import { LengthField } from '../ui/length-field';
import { Note } from '../ui/note';
import { fitWords as words } from '../words/fit';
import { fieldOf } from '../words/measures';
import { writeLength } from '../words/written';
import styles from './fit-room.module.css';
import { LevelFields } from './level-fields';
import { NewLevel } from './new-level';

interface LevelsCardProps {
  readonly garment: Garment;
  readonly ring: Ring;
}

/** The pieces against the body at each level, in numbers, the highest first. */
export function LevelsCard({ garment, ring }: LevelsCardProps) {
  const depth = (girth: GirthAtLevel) => (girth.kind === 'no-depth' ? Number.MAX_VALUE : girth.depth);
  const girths = girthsOf(garment, ring).toSorted((a, b) => depth(a) - depth(b));
  return (
    <Card title={words.levels} about="levels">
      {girths.length === 0 && <p>{words.noLevels}</p>}
      {girths.map((girth) => (
        <LevelRow key={girth.level.id} girth={girth} ring={ring} garment={garment} />
      ))}
      <NewLevel key={ring.id} ring={ring} shownIn={garment.shownIn} />
    </Card>
  );
}

interface LevelRowProps {
  readonly girth: GirthAtLevel;
  readonly ring: Ring;
  readonly garment: Garment;
}

function LevelRow({ girth, ring, garment }: LevelRowProps) {
  const goTo = useTable((table) => table.goTo);
  const { shownIn } = garment;
  const name = words.levelOf(girth.level);
  const length = (mm: number) => writeLength(mm, { shownIn });
  const fields = <LevelFields girth={girth} ring={ring} shownIn={shownIn} />;
  if (girth.kind !== 'measured') {
    return (
      <section className={styles.level} aria-label={name}>
        <h3>{name}</h3>
        <Note tone="warn" action={{ words: words.toWearer, onPress: () => goTo('wearer') }}>
          {words.notMeasured(name, fieldOf(girth.missing))}
        </Note>
        {fields}
      </section>
    );
  }
  const { depth, sides, level } = girth;
  const isReached = girth.pieces.some(({ line, times }) => line && times > 0);
  const halves =
    level.body === undefined && sides.length === 0 ? halfGirths(currentSet(garment), level.girth) : undefined;
  return (
    <section className={styles.level} aria-label={name}>
      <h3>
        {name}
        {depth !== 0 && <span>{depth > 0 ? words.atDepth(length(depth)) : words.atHeight(length(-depth))}</span>}
        {isReached && <Verdict off={girth.total - girth.wanted} within={SEWING_TOLERANCE} shownIn={shownIn} />}
      </h3>
      {!isReached && <p className={styles.small}>{words.noneHere}</p>}
      <dl className={styles.figures}>
        {isReached && (
          <div>
            <dt>{words.pieces}</dt>
            <dd>{length(girth.total)}</dd>
          </div>
        )}
        <div>
          <dt>{level.body === undefined ? words.body : words.bodyTaped}</dt>
          <dd>{length(girth.body)}</dd>
        </div>
        {sides.map((side) => (
          <SideRow key={side.side} side={side} shownIn={shownIn} />
        ))}
      </dl>
      {girth.lap > 0 && <p className={styles.small}>{words.lapLeftOut(length(girth.lap))}</p>}
      {halves && <p className={styles.small}>{words.sidesTogether(length(halves.left), length(halves.right))}</p>}
      <Ease level={level} ring={ring} shownIn={shownIn} />
      {fields}
    </section>
  );
}

function Ease({
  level,
  ring,
  shownIn,
}: Pick<GirthAtLevel, 'level'> & { readonly ring: Ring; readonly shownIn: ShownIn }) {
  const edit = useGarment((state) => state.edit);
  return (
    <LengthField
      label={words.ease}
      value={level.ease}
      shownIn={shownIn}
      onCommit={(ease) => {
        if (ease !== undefined) edit(words.easeLabel, (before) => setEase(before, ring.id, level.id, ease));
      }}
    />
  );
}

/** One side of the body; half of the tolerance of the whole is its own. */
function SideRow({ side, shownIn }: { readonly side: SideGirth; readonly shownIn: ShownIn }) {
  const { total, body, wanted } = side;
  return (
    <div>
      <dt>{words.side[side.side]}</dt>
      <dd>
        {words.sideIs(writeLength(total, { shownIn }), writeLength(body, { shownIn }))}{' '}
        <Verdict off={total - wanted} within={SEWING_TOLERANCE / 2} shownIn={shownIn} />
      </dd>
    </div>
  );
}

interface VerdictProps {
  /** What there is beyond body and ease (mm). */
  readonly off: number;
  readonly within: number;
  readonly shownIn: ShownIn;
}

function Verdict({ off, within, shownIn }: VerdictProps) {
  const by = writeLength(Math.abs(off), { shownIn });
  const said = Math.abs(off) <= within ? words.exact : off > 0 ? words.over(by) : words.short(by);
  return <strong data-short={off < -within || undefined}>{said}</strong>;
}
