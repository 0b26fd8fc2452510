import { useMemo, useState } from 'react';
import type { MeasureName } from '../../core/garment/measure';
import { useGarment } from '../state/garment-store';
import { Card } from '../ui/card';
import { RoomLayout } from '../ui/room-layout';
import { wearerWords as words } from '../words/wearer';
import { doubtsOf } from './doubts';
import { essentialMeasures, furtherMeasures } from './measure-groups';
import { MeasureList } from './measure-list';
import { SetCard } from './set-card';
import { wantedOf } from './wanted';
import styles from './wearer-room.module.css';
import { WearerTable } from './wearer-table';

const groups = ['round', 'along', 'bodice'] as const;

/** The Wearer room: a body drawn large, and beside it each measure with where the tape goes. */
export function WearerRoom() {
  const garment = useGarment((state) => state.garment);
  const [shown, setShown] = useState<MeasureName>('waist');
  const [open, setOpen] = useState<Readonly<Record<string, boolean>>>({});
  const set = garment?.wearer.sets.find(({ id }) => id === garment.wearer.currentSetId);
  const doubts = useMemo(() => (garment ? doubtsOf(garment) : undefined), [garment]);
  const wanted = useMemo(() => (garment ? wantedOf(garment) : undefined), [garment]);
  if (!garment || !set || !doubts || !wanted) return null;

  const { shownIn } = garment;
  const count = (names: readonly MeasureName[]) =>
    words.filled(names.filter((name) => set.measures[name] !== undefined).length, names.length);
  const list = (names: readonly MeasureName[]) => (
    <MeasureList {...{ names, set, shownIn, wanted, doubts }} onFocus={setShown} />
  );

  return (
    <RoomLayout
      table={<WearerTable set={set} shown={shown} shownIn={shownIn} />}
      notebook={
        <>
          <SetCard garment={garment} set={set} />
          <Card title={words.essential} about="measures" aside={count(essentialMeasures)}>
            {list(essentialMeasures)}
          </Card>
          {groups.map((group) => (
            <Card
              key={group}
              title={words.more[group]}
              about="measures"
              aside={count(furtherMeasures[group])}
              open={open[group] ?? false}
              onToggle={(isOpen) => setOpen((before) => ({ ...before, [group]: isOpen }))}
            >
              {open[group] && list(furtherMeasures[group])}
            </Card>
          ))}
          <p className={styles.whence}>{words.whence}</p>
        </>
      }
    />
  );
}
