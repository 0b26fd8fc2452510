import { keptLay, layingOf } from '../../core/cloth/garment-laying';
import { changeCloth, keepLay } from '../../core/garment/cloth-edits';
import type { Garment } from '../../core/garment/garment';
import type { GarmentCloth } from '../../core/garment/garment-cloth';
import { boxOfPoints } from '../../core/geometry/bounds';
import { writeLength } from '../../core/units/write-length';
import { useGarment } from '../state/garment-store';
import { today } from '../state/today';
import { Button } from '../ui/button';
import { Card } from '../ui/card';
import { Note } from '../ui/note';
import { clothWords as words } from '../words/cloth';
import { layWork } from '../workers/lay-calls';
import styles from './cloth.module.css';
import { useCloth } from './cloth-store';
import { JOIN_ALLOWANCE } from './how-card';
import { laidName } from './names';
import type { ShownLay } from './shown-lay';

interface SumsCardProps {
  readonly garment: Garment;
  readonly cloth: GarmentCloth;
  readonly lay: ShownLay;
}

/** What the lay comes to, whether the cloth at hand is enough, and where a join would help if it is not. */
export function SumsCard({ garment, cloth, lay }: SumsCardProps) {
  const { shownIn } = garment;
  const { standing } = lay;
  if (!standing || standing.changed) return null;
  const { sums, needed, atHand, faults } = standing;
  const length = (mm: number) => writeLength(mm, { shownIn, step: 'eighth' });
  const other = (mm: number) => writeLength(mm, { shownIn: shownIn === 'in' ? 'cm' : 'in', step: 'eighth' });
  const name = (id: string) => laidName(id, garment, cloth);
  return (
    <Card title={words.sums}>
      <dl className={styles.figures}>
        <Figure name={words.needs} said={`${length(needed)} = ${other(needed)}`} />
        {!cloth.shape && <Figure name={words.toBuy} said={words.bought(needed, shownIn)} />}
        <Figure name={words.usedOf} said={`${(100 * sums.used).toFixed(1)} %`} />
        <Figure name={words.bound} said={length(sums.bound)} />
        <Figure
          name={words.beyond}
          said={`${length(sums.beyondBound)}, ${words.percentBeyond(sums.bound > 0 ? sums.beyondBound / sums.bound : 0)}`}
        />
        {atHand && (
          <Figure
            name={atHand.kind === 'enough' ? words.leftOver : words.lacking}
            said={length(atHand.kind === 'enough' ? atHand.over : atHand.by)}
          />
        )}
      </dl>
      {cloth.shrinks && <p className={styles.small}>{words.washed(length(sums.length))}</p>}
      {standing.lay.version !== undefined && <p className={styles.small}>{words.version(standing.lay.version)}</p>}
      {faults.map((fault, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: faults have nothing but their place in the list
        <Note key={i} tone="stop">
          {words.fault(fault, name, shownIn)}
        </Note>
      ))}
      {atHand?.kind === 'short' && <JoinSearch garment={garment} cloth={cloth} lay={lay} />}
    </Card>
  );
}

function Figure({ name, said }: { readonly name: string; readonly said: string }) {
  return (
    <div>
      <dt>{name}</dt>
      <dd>{said}</dd>
    </div>
  );
}

function JoinSearch({ garment, cloth, lay }: SumsCardProps) {
  const join = useCloth((state) => state.join);
  const { made } = lay.laying;
  const { standing, task } = lay;
  if (!standing || !task || made.kind !== 'task' || made.lengthAtHand === undefined) return null;
  const lengthAtHand = made.lengthAtHand;
  const seek = async () => {
    useCloth.setState({ join: { kind: 'seeking' } });
    const args = { task, lay: standing.lay, lengthAtHand, allowance: JOIN_ALLOWANCE, seed: 1 };
    const answer = await layWork.call('join', args);
    if (useCloth.getState().join?.kind !== 'seeking') return;
    useCloth.setState({
      join: answer.kind === 'join' ? { kind: 'found', piecing: answer.piecing, lay: answer.lay } : { kind: 'none' },
    });
  };
  if (!join) {
    return (
      <div className={styles.row}>
        <Button icon="look" onPress={() => void seek()}>
          {words.seekJoin}
        </Button>
      </div>
    );
  }
  if (join.kind === 'seeking') return <Note tone="plain">{words.seeking}</Note>;
  if (join.kind === 'none') return <Note tone="warn">{words.joinNone}</Note>;
  const { piecing, lay: found } = join;
  const piece = task.toLay.find(({ id }) => id === piecing.id);
  const box = boxOfPoints(piece?.outline ?? []);
  const at = writeLength(piecing.at - (box?.minY ?? 0), { shownIn: garment.shownIn, step: 'eighth' });
  const own = piecing.id.split('/')[0] ?? piecing.id;
  const take = () => {
    const level = piecing.id === own ? piecing.at : -piecing.at;
    useGarment.getState().edit(words.labels.join, (now) => {
      const joined = changeCloth(now, cloth.id, (one) => ({
        ...one,
        pieced: [...(one.pieced ?? []), { id: own, at: level, allowance: JOIN_ALLOWANCE }],
      }));
      const changed = joined.cloths?.find(({ id }) => id === cloth.id);
      const laid = changed && layingOf(joined, changed).made;
      if (laid?.kind !== 'task' || piecing.id.includes('/')) return joined;
      return keepLay(joined, keptLay(cloth.id, laid.task, found, { made: today(), pinned: [] }));
    });
    useCloth.setState({ join: undefined });
  };
  return (
    <Note tone="good" action={{ words: words.takeJoin, onPress: take }}>
      {words.joinFound(
        laidName(piecing.id, garment, cloth),
        words.joinAt(at, piece?.onFold !== undefined),
        writeLength(found.length, { shownIn: garment.shownIn, step: 'eighth' }),
      )}
    </Note>
  );
}
