import { useState } from 'react';
import { USUAL_WIDTHS } from '../../core/cloth/usual-widths';
import { removeCloth } from '../../core/garment/cloth-edits';
import type { Garment } from '../../core/garment/garment';
import type { GarmentCloth } from '../../core/garment/garment-cloth';
import { inches } from '../../core/units/inch';
import { useGarment } from '../state/garment-store';
import { Button } from '../ui/button';
import { Card } from '../ui/card';
import { Choice } from '../ui/choice';
import { LengthField } from '../ui/length-field';
import { Note } from '../ui/note';
import { Pick } from '../ui/pick';
import { Switch } from '../ui/switch';
import { TextField } from '../ui/text-field';
import { clothWords as words } from '../words/cloth';
import styles from './cloth.module.css';
import { MoreOfCloth } from './cloth-more';
import { takeCloth } from './cloth-store';
import { editCloth, newCloth, newRemnant, without } from './new-cloth';

const FOLDS = ['lengthwise', 'open', 'crosswise'] as const;

interface ClothCardProps {
  readonly garment: Garment;
  readonly cloth: GarmentCloth;
}

/** Which cloth is in hand, how wide and long it is, and how it lies. */
export function ClothCard({ garment, cloth }: ClothCardProps) {
  const { shownIn, cloths = [] } = garment;
  const [more, setMore] = useState(cloth.shape !== undefined || cloth.flaws.length > 0 || cloth.repeat !== undefined);
  const change = (next: Partial<GarmentCloth>) => editCloth(cloth, (now) => ({ ...now, ...next }));
  return (
    <Card title={words.cloth} about="cloth">
      {cloths.length > 1 && (
        <Pick
          label={words.cloths}
          value={cloth.id}
          options={cloths.map((one) => ({ value: one.id, words: words.clothName(one) }))}
          onChange={takeCloth}
        />
      )}
      <TextField label={words.name} value={cloth.name} onCommit={(name) => change({ name })} />
      {!cloth.shape && (
        <>
          <div className={styles.pair}>
            <LengthField
              label={words.width}
              value={cloth.width}
              shownIn={shownIn}
              min={inches(1)}
              onCommit={(width) => width !== undefined && change({ width })}
            />
            <LengthField
              label={words.selvedge}
              value={cloth.selvedge}
              shownIn={shownIn}
              min={0}
              onCommit={(selvedge) => selvedge !== undefined && change({ selvedge })}
            />
          </div>
          <Pick
            label={words.usual}
            value={String(USUAL_WIDTHS.findIndex(({ width }) => Math.abs(width - cloth.width) < 0.01))}
            options={[
              { value: '-1', words: words.usualNone },
              ...USUAL_WIDTHS.map((one, i) => ({
                value: String(i),
                words: `${words.usualWidth(one)}: ${words.usualWhen[one.when]}`,
              })),
            ]}
            onChange={(value) => {
              const usual = USUAL_WIDTHS[Number(value)];
              if (usual) change({ width: usual.width });
            }}
          />
          <LengthField
            label={words.atHand}
            value={cloth.atHand}
            shownIn={shownIn}
            min={inches(1)}
            allowEmpty
            hint={words.atHandHint(cloth.atHand, shownIn)}
            onCommit={(atHand) =>
              editCloth(cloth, (now) => (atHand === undefined ? without(now, 'atHand') : { ...now, atHand }))
            }
          />
          <Choice
            label={words.folded}
            value={cloth.folded}
            options={FOLDS.map((value) => ({ value, words: words.foldedWays[value] }))}
            onChange={(folded) => change({ folded })}
          />
          <p className={styles.small}>{words.foldedHelp[cloth.folded]}</p>
        </>
      )}
      <Switch
        label={words.nap}
        on={cloth.nap === 'one-way'}
        onChange={(on) => change({ nap: on ? 'one-way' : 'none' })}
      />
      {cloth.nap === 'one-way' && <p className={styles.small}>{words.napHelp}</p>}
      <Card title={words.more} about="cloth-more" open={more} onToggle={setMore}>
        <MoreOfCloth shownIn={shownIn} cloth={cloth} />
      </Card>
      <div>
        <h3 className={styles.part}>{words.another}</h3>
        <div className={styles.row}>
          <Button icon="plus" onPress={() => newCloth({ name: words.liningName })}>
            {words.addLining}
          </Button>
          <Button icon="plus" onPress={() => newCloth({ name: words.interfacingName })}>
            {words.addInterfacing}
          </Button>
          <Button icon="plus" onPress={newRemnant}>
            {words.addRemnant}
          </Button>
        </div>
      </div>
      <RemoveCloth cloth={cloth} />
    </Card>
  );
}

function RemoveCloth({ cloth }: { readonly cloth: GarmentCloth }) {
  const [asked, setAsked] = useState(false);
  if (!asked) {
    return (
      <div className={styles.row}>
        <Button tone="quiet" icon="bin" onPress={() => setAsked(true)}>
          {words.remove}
        </Button>
      </div>
    );
  }
  return (
    <>
      <Note tone="warn">{words.removeAsk}</Note>
      <div className={styles.row}>
        <Button
          tone="wrong"
          onPress={() => useGarment.getState().edit(words.labels.remove, (now) => removeCloth(now, cloth.id))}
        >
          {words.removeYes}
        </Button>
        <Button onPress={() => setAsked(false)}>{words.keep}</Button>
      </div>
    </>
  );
}
