import { inches, type ShownIn } from '../../core/units/inch';
import { Button } from '../ui/button';
import { EmptySheet } from '../ui/empty-sheet';
import { RoomLayout } from '../ui/room-layout';
import { clothWords as words } from '../words/cloth';
import { writeLength } from '../words/written';
import styles from './cloth.module.css';
import { newCloth, newRemnant } from './new-cloth';

/** Widths to begin with: the household cotton of the period first. */
const WIDTHS = [36, 39, 45, 54, 60].map(inches);

/** Before there is a cloth: how wide is it? */
export function FirstCloth({ shownIn }: { readonly shownIn: ShownIn }) {
  return (
    <RoomLayout
      tableFirst
      table={
        <EmptySheet title={words.whichTitle} step="cloth">
          <p>{words.which}</p>
          <div className={styles.row}>
            {WIDTHS.map((width) => (
              <Button key={width} onPress={() => newCloth({ width })}>
                {writeLength(width, { shownIn })}
              </Button>
            ))}
          </div>
          <Button onPress={newRemnant}>{words.remnant}</Button>
        </EmptySheet>
      }
      notebook={null}
    />
  );
}
