import { useState } from 'react';
import { piecesFrom } from '../../core/cloth/garment-laying';
import { cutPieces } from '../../core/garment/cut-pieces';
import type { Garment } from '../../core/garment/garment';
import type { ClothStrip, GarmentCloth } from '../../core/garment/garment-cloth';
import { inches, type ShownIn } from '../../core/units/inch';
import { newId } from '../state/new-id';
import { Button } from '../ui/button';
import { Card } from '../ui/card';
import { CountField } from '../ui/count-field';
import { LengthField } from '../ui/length-field';
import { Note } from '../ui/note';
import { Pick } from '../ui/pick';
import { Switch } from '../ui/switch';
import { TextField } from '../ui/text-field';
import { clothWords as words } from '../words/cloth';
import styles from './cloth.module.css';
import { editCloth, without } from './new-cloth';

interface WhatCardProps {
  readonly garment: Garment;
  readonly cloth: GarmentCloth;
}

/** The size each kind of strip begins with: common practice. */
const NEW_STRIPS: Readonly<
  Record<'placket' | 'facing' | 'binding' | 'band', Pick<ClothStrip, 'length' | 'width' | 'cut'>>
> = {
  placket: { length: inches(20), width: inches(3), cut: 'along' },
  facing: { length: inches(36), width: inches(2), cut: 'bias' },
  binding: { length: inches(36), width: inches(1.5), cut: 'bias' },
  band: { length: inches(30), width: inches(3), cut: 'along' },
};

const KINDS = ['placket', 'facing', 'binding', 'band'] as const;
const CUTS = ['along', 'across', 'bias'] as const;

/** Which pieces and strips are cut from the cloth. */
export function WhatCard({ garment, cloth }: WhatCardProps) {
  const from = piecesFrom(garment, cloth);
  const all = cutPieces(garment);
  const toggle = (id: string, on: boolean) =>
    editCloth(cloth, (now) => {
      const chosen = all.filter((piece) => (piece.id === id ? on : from.includes(piece))).map((piece) => piece.id);
      return chosen.length === all.length && garment.cloths?.[0]?.id === cloth.id
        ? without(now, 'pieceIds')
        : { ...now, pieceIds: chosen };
    });
  return (
    <Card title={words.what} about="cut-from-it">
      {from.length + cloth.strips.length === 0 && <Note tone="plain">{words.nothingCut}</Note>}
      <div>
        {all.map((piece) => (
          <div key={piece.id} className={styles.entry}>
            <Switch
              label={piece.name || words.unnamed}
              on={from.includes(piece)}
              onChange={(on) => toggle(piece.id, on)}
            />
            <span className={styles.small}>{words.count(piece.cut)}</span>
          </div>
        ))}
      </div>
      <h3 className={styles.part}>{words.strips}</h3>
      {cloth.strips.map((strip) => (
        <StripEntry key={strip.id} shownIn={garment.shownIn} cloth={cloth} strip={strip} />
      ))}
      <p className={styles.small}>{words.stripsHelp}</p>
      <div className={styles.row}>
        {KINDS.map((kind) => (
          <Button
            key={kind}
            icon="plus"
            onPress={() => addStrip(cloth, { name: words.stripNew[kind], ...NEW_STRIPS[kind] })}
          >
            {words.stripNew[kind]}
          </Button>
        ))}
      </div>
    </Card>
  );
}

/** Adds a strip to what is cut from a cloth. */
export function addStrip(
  cloth: GarmentCloth,
  strip: Pick<ClothStrip, 'name' | 'length' | 'width' | 'cut'> & Partial<Pick<ClothStrip, 'count'>>,
): void {
  editCloth(
    cloth,
    (now) => ({ ...now, strips: [...now.strips, { id: newId(), count: 1, ...strip }] }),
    words.labels.strip,
  );
}

interface StripEntryProps {
  readonly shownIn: ShownIn;
  readonly cloth: GarmentCloth;
  readonly strip: ClothStrip;
}

function StripEntry({ shownIn, cloth, strip }: StripEntryProps) {
  const [open, setOpen] = useState(false);
  const change = (next: Partial<ClothStrip>) =>
    editCloth(
      cloth,
      (now) => ({ ...now, strips: now.strips.map((one) => (one.id === strip.id ? { ...one, ...next } : one)) }),
      words.labels.strip,
    );
  return (
    <Card title={strip.name} about="strip" aside={words.stripSaid(strip, shownIn)} open={open} onToggle={setOpen}>
      <TextField label={words.stripName} value={strip.name} onCommit={(name) => change({ name })} />
      <div className={styles.pair}>
        <LengthField
          label={words.stripLength}
          value={strip.length}
          shownIn={shownIn}
          min={1}
          onCommit={(length) => length !== undefined && change({ length })}
        />
        <LengthField
          label={words.stripWidth}
          value={strip.width}
          shownIn={shownIn}
          min={1}
          onCommit={(width) => width !== undefined && change({ width })}
        />
        <CountField label={words.stripCount} value={strip.count} onCommit={(count) => change({ count })} />
      </div>
      <Pick
        label={words.stripCut}
        value={strip.cut}
        options={CUTS.map((value) => ({ value, words: words.stripCuts[value] }))}
        onChange={(cut) => change({ cut })}
      />
      <div className={styles.row}>
        <Button
          tone="quiet"
          icon="bin"
          onPress={() =>
            editCloth(
              cloth,
              (now) => ({ ...now, strips: now.strips.filter(({ id }) => id !== strip.id) }),
              words.labels.strip,
            )
          }
        >
          {words.takeAway(strip.name || words.aStrip)}
        </Button>
      </div>
    </Card>
  );
}
