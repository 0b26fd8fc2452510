import { timesRound } from '../../core/fit/times-round';
import type { Garment, Ring } from '../../core/garment/garment';
import { setInRing, setTimes } from '../../core/garment/ring-edits';
import { useGarment } from '../state/garment-store';
import { Card } from '../ui/card';
import { Switch } from '../ui/switch';
import { fitWords as words } from '../words/fit';
import styles from './fit-room.module.css';

interface RingCardProps {
  readonly garment: Garment;
  readonly ring: Ring;
}

/** Which pieces go round, and how many drawn widths of each. */
export function RingCard({ garment, ring }: RingCardProps) {
  const edit = useGarment((state) => state.edit);
  return (
    <Card title={words.roundTheBody}>
      <p className={styles.small}>{words.roundHelp}</p>
      {garment.pieces.map((piece) => {
        const member = ring.members.find((one) => one.pieceId === piece.id);
        return (
          <div key={piece.id} className={styles.member}>
            <Switch
              label={piece.name || words.unnamedPiece}
              on={member !== undefined}
              onChange={(on) =>
                edit(words.ringLabel, (before) => setInRing(before, ring.id, piece.id, on ? 'in' : 'out'))
              }
            />
            {member && (
              <label className={styles.times}>
                {words.times}
                <input
                  type="number"
                  min={0}
                  max={99}
                  step={0.5}
                  aria-label={words.timesFor(piece.name)}
                  value={timesRound(piece, member)}
                  onChange={(event) => {
                    const times = event.target.valueAsNumber;
                    if (!(times >= 0 && times <= 99)) return;
                    edit(words.ringLabel, (before) => setTimes(before, ring.id, piece.id, times), {
                      merge: `times-${piece.id}`,
                    });
                  }}
                />
              </label>
            )}
          </div>
        );
      })}
    </Card>
  );
}
