import type { PaperChoice } from '../../core/garment/garment';
import type { PaperChange } from '../../core/garment/paper-edits';
import { SAFE_MARGIN } from '../../core/paper/page-sizes';
import type { ShownIn } from '../../core/units/inch';
import { LengthField } from '../ui/length-field';
import { Switch } from '../ui/switch';
import { paperWords as words } from '../words/paper';
import styles from './paper-room.module.css';

interface PrinterLosesProps {
  readonly paper: PaperChoice;
  readonly shownIn: ShownIn;
  readonly onChange: (change: PaperChange) => void;
}

const SIDES = ['top', 'right', 'bottom', 'left'] as const;

/** What her printer does not reach: one length for all sides, or one for each. */
export function PrinterLoses({ paper: { loses, losesAt }, shownIn, onChange }: PrinterLosesProps) {
  const all = loses ?? SAFE_MARGIN;
  const allAlike = (measured: number | undefined) =>
    onChange({ loses: measured, losesAt: undefined, margin: measured ?? SAFE_MARGIN });
  return (
    <>
      {losesAt ? (
        <fieldset className={styles.sides}>
          <legend>{words.loses}</legend>
          {SIDES.map((side) => (
            <LengthField
              key={side}
              label={words.losesAt[side]}
              value={losesAt[side]}
              shownIn={shownIn}
              min={0}
              onCommit={(measured) => {
                if (measured === undefined) return;
                const sides = { ...losesAt, [side]: measured };
                const most = Math.max(...SIDES.map((each) => sides[each]));
                onChange({ losesAt: sides, loses: most, margin: most });
              }}
            />
          ))}
        </fieldset>
      ) : (
        <LengthField
          label={words.loses}
          value={loses}
          shownIn={shownIn}
          hint={words.losesHint(shownIn)}
          min={0}
          allowEmpty
          onCommit={allAlike}
        />
      )}
      <Switch
        label={words.losesBySide}
        on={losesAt !== undefined}
        onChange={(on) =>
          on
            ? onChange({ losesAt: { top: all, right: all, bottom: all, left: all }, loses: all, margin: all })
            : allAlike(loses)
        }
      />
    </>
  );
}
