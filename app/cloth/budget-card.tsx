import { useState } from 'react';
import { READY_MADE_1941, rationPerYard } from '../../core/cloth/budget-presets';
import type { Garment } from '../../core/garment/garment';
import type { ClothPriced, GarmentCloth } from '../../core/garment/garment-cloth';
import { Button } from '../ui/button';
import { Card } from '../ui/card';
import { Choice } from '../ui/choice';
import { NumberField } from '../ui/number-field';
import { TextField } from '../ui/text-field';
import { clothWords as words } from '../words/cloth';
import styles from './cloth.module.css';
import { costSaid } from './cost';
import { editCloth, without } from './new-cloth';
import type { ShownLay } from './shown-lay';

interface BudgetCardProps {
  readonly garment: Garment;
  readonly cloth: GarmentCloth;
  readonly lay: ShownLay;
}

const PERS = ['yard', 'metre'] as const;
const RATIONED = ['woollen', 'other'] as const;

/** What cloth costs, in money, coupons or points, and what this lay comes to. */
export function BudgetCard({ garment, cloth, lay }: BudgetCardProps) {
  const [open, setOpen] = useState(cloth.price !== undefined);
  const price: ClothPriced = cloth.price ?? { each: 0, per: garment.shownIn === 'in' ? 'yard' : 'metre', in: '' };
  const set = (next: Partial<ClothPriced>) =>
    editCloth(
      cloth,
      (now) => {
        const after = { ...price, ...next };
        return after.each === 0 && after.in === '' ? without(now, 'price') : { ...now, price: after };
      },
      words.labels.price,
    );
  const { standing } = lay;
  const needed = standing && !standing.changed ? standing.needed : undefined;
  const said = needed !== undefined && cloth.price ? costSaid(cloth, needed, garment.shownIn) : undefined;
  return (
    <Card
      title={words.budget}
      about="budget"
      open={open}
      onToggle={setOpen}
      {...(said === undefined ? {} : { aside: said })}
    >
      <div className={styles.pair}>
        <NumberField
          label={words.priceEach}
          value={price.each}
          least={0}
          most={100_000}
          onCommit={(each) => set({ each })}
        />
        <TextField label={words.priceIn} value={price.in} onCommit={(of) => set({ in: of.trim() })} />
      </div>
      <p className={styles.small}>{words.priceInHint}</p>
      <Choice
        label={words.per}
        value={price.per}
        options={PERS.map((value) => ({ value, words: words.pers[value] }))}
        onChange={(per) => set({ per })}
      />
      {said !== undefined && needed !== undefined && (
        <p>
          {words.costs} <strong>{said}</strong> {words.costAs(words.bought(needed, garment.shownIn))}.
        </p>
      )}
      {!cloth.shape && (
        <>
          <h3 className={styles.part}>{words.ration}</h3>
          <div className={styles.row}>
            {RATIONED.map((kind) => {
              const { each, known } = rationPerYard(cloth.width, kind);
              return (
                <Button key={kind} onPress={() => set({ each, per: 'yard', in: words.coupons })}>
                  {words.rationNames[kind]}: {words.rationEach(each, known)}
                </Button>
              );
            })}
          </div>
          <p className={styles.small}>{words.rationHelp}</p>
          <h3 className={styles.part}>{words.readyMade}</h3>
          <dl className={styles.figures}>
            {READY_MADE_1941.map(({ garment: name, woman, girl }) => (
              <div key={name}>
                <dt>{words.readyMadeNames[name]}</dt>
                <dd>{words.readyMadeSaid(woman, girl)}</dd>
              </div>
            ))}
          </dl>
        </>
      )}
    </Card>
  );
}
