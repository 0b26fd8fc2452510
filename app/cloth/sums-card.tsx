import type { Garment } from '../../core/garment/garment';
import type { GarmentCloth } from '../../core/garment/garment-cloth';
import { Card } from '../ui/card';
import { Note } from '../ui/note';
import { clothWords as words } from '../words/cloth';
import { writeLength, writeNumber } from '../words/written';
import styles from './cloth.module.css';
import { FitSearch } from './fit-search';
import { laidName } from './names';
import type { ShownLay } from './shown-lay';

interface SumsCardProps {
  readonly garment: Garment;
  readonly cloth: GarmentCloth;
  readonly lay: ShownLay;
}

/** What the lay comes to, whether the cloth at hand is enough, and what would help if it is not. */
export function SumsCard({ garment, cloth, lay }: SumsCardProps) {
  const { shownIn } = garment;
  const { standing } = lay;
  if (!standing || standing.changed) return null;
  const { sums, needed, atHand, faults } = standing;
  const length = (mm: number) => writeLength(mm, { shownIn, step: 'eighth' });
  const other = (mm: number) => writeLength(mm, { shownIn: shownIn === 'in' ? 'cm' : 'in', step: 'eighth' });
  const name = (id: string) => laidName(id, garment, cloth);
  return (
    <Card title={words.sums} about="lay-sums">
      <dl className={styles.figures}>
        <Figure name={words.needs} said={`${length(needed)} = ${other(needed)}`} />
        {!cloth.shape && <Figure name={words.toBuy} said={words.bought(needed, shownIn)} />}
        <Figure name={words.usedOf} said={`${writeNumber(100 * sums.used, 1)} %`} />
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
      {atHand?.kind === 'short' && <FitSearch garment={garment} cloth={cloth} lay={lay} />}
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
