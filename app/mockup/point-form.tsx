import { cutPieces } from '../../core/garment/cut-pieces';
import type { Garment } from '../../core/garment/garment';
import type { PinnedPoint } from '../../core/mockup/pinned-point';
import { Choice } from '../ui/choice';
import { LengthStepper } from '../ui/length-stepper';
import { Pick } from '../ui/pick';
import { mockupWords as words } from '../words/mockup';
import styles from './mockup.module.css';
import { STEPS } from './new-change';

interface PointFormProps {
  readonly garment: Garment;
  readonly what: PinnedPoint;
  readonly onChange: (what: PinnedPoint) => void;
}

/** A corner that must go elsewhere: which, and how far across and down on the table. */
export function PointForm({ garment, what, onChange }: PointFormProps) {
  const { shownIn } = garment;
  const { dx, dy } = what.by;
  const corners = cutPieces(garment).flatMap((piece) =>
    piece.corners.map(({ id }, i) => ({
      value: `${piece.id} ${id}`,
      words: words.corner(piece.name, i + 1),
      ref: { pieceId: piece.id, cornerId: id },
    })),
  );
  const chosen = `${what.pieceId} ${what.cornerId}`;
  const isChosen = corners.some(({ value }) => value === chosen);
  const to = (by: Partial<PinnedPoint['by']>) => onChange({ ...what, by: { ...what.by, ...by } });
  return (
    <div className={styles.thumbs}>
      <Pick
        label={words.point}
        value={chosen}
        options={[...(isChosen ? [] : [{ value: chosen, words: words.noEdge }]), ...corners]}
        onChange={(key) => {
          const corner = corners.find(({ value }) => value === key);
          if (corner) onChange({ ...what, ...corner.ref });
        }}
      />
      {isChosen && (
        <>
          <Signed
            way={words.across}
            ways={[words.acrossWays.right, words.acrossWays.left]}
            by={words.acrossBy}
            value={dx}
            shownIn={shownIn}
            onChange={(next) => to({ dx: next })}
          />
          <Signed
            way={words.downWay}
            ways={[words.downWays.down, words.downWays.up]}
            by={words.downBy}
            value={dy}
            shownIn={shownIn}
            onChange={(next) => to({ dy: next })}
          />
        </>
      )}
    </div>
  );
}

interface SignedProps {
  readonly way: string;
  readonly ways: readonly [more: string, less: string];
  readonly by: string;
  readonly value: number;
  readonly shownIn: 'in' | 'cm';
  readonly onChange: (value: number) => void;
}

/** A length with the way it goes. */
function Signed({ way, ways, by, value, shownIn, onChange }: SignedProps) {
  const step = STEPS[shownIn].by;
  const isLess = value < 0;
  return (
    <>
      <LengthStepper
        label={by}
        value={Math.abs(value)}
        step={step}
        shownIn={shownIn}
        onCommit={(length) => length !== undefined && onChange(isLess ? -length : length)}
      />
      {value !== 0 && (
        <Choice
          label={way}
          value={isLess ? 'less' : 'more'}
          options={(['more', 'less'] as const).map((one, i) => ({ value: one, words: ways[i] ?? '' }))}
          onChange={(next) => onChange(next === 'less' ? -Math.abs(value) : Math.abs(value))}
        />
      )}
    </>
  );
}
