import { useState } from 'react';
import { isPlace } from '../../core/cloth/lay-by-hand';
import { keepLay } from '../../core/garment/cloth-edits';
import type { Garment } from '../../core/garment/garment';
import type { GarmentCloth } from '../../core/garment/garment-cloth';
import { useGarment } from '../state/garment-store';
import { Button } from '../ui/button';
import { Card } from '../ui/card';
import { clothWords as words } from '../words/cloth';
import styles from './cloth.module.css';
import { useCloth } from './cloth-store';
import { stopLaying } from './laying';
import { placeSaid, saidOf } from './place-said';
import { currentLay, type ShownLay } from './shown-lay';

interface PlacesCardProps {
  readonly garment: Garment;
  readonly cloth: GarmentCloth;
  readonly lay: ShownLay;
}

/** Every piece on the cloth by name, with its place in numbers; a press takes it in hand. */
export function PlacesCard({ garment, cloth, lay }: PlacesCardProps) {
  const [open, setOpen] = useState(false);
  const inHand = useCloth((state) => state.inHand);
  const { shown } = lay;
  if (shown.length === 0) return null;
  const pins = shown.some(({ place }) => place.pinned);
  const unpin = () => {
    stopLaying();
    useGarment.getState().edit(words.labels.unpinAll, (now) => {
      const current = currentLay(now, cloth.id);
      if (!current) return now;
      const placed = current.lay.placed.map(({ pinned: _, ...place }) => place);
      return keepLay(now, { ...current.lay, placed });
    });
  };
  return (
    <Card title={words.pieces} about="places" aside={String(shown.length)} open={open} onToggle={setOpen}>
      <ul className={styles.list}>
        {shown.map((one) => (
          <li key={`${one.place.id} ${one.place.copy}`}>
            <Button
              pressed={isPlace(one.place, inHand)}
              onPress={() => useCloth.setState({ inHand: { id: one.place.id, copy: one.place.copy } })}
            >
              <span>
                {saidOf(one, garment, cloth)}
                <br />
                <span className={styles.small}>{placeSaid(one, garment, cloth)}</span>
              </span>
            </Button>
          </li>
        ))}
      </ul>
      {pins && (
        <div className={styles.row}>
          <Button onPress={unpin}>{words.unpinAll}</Button>
        </div>
      )}
    </Card>
  );
}
