import { timesRound } from '../../core/fit/times-round';
import { cutPieces } from '../../core/garment/cut-pieces';
import type { Garment, Ring } from '../../core/garment/garment';
import { removeRing, renameRing, setInRing, setTimes } from '../../core/garment/ring-edits';
import { useGarment } from '../state/garment-store';
import { Button } from '../ui/button';
import { Card } from '../ui/card';
import { say } from '../ui/say';
import { Switch } from '../ui/switch';
import { TextField } from '../ui/text-field';
import { fitWords as words } from '../words/fit';
import styles from './fit-room.module.css';
import { HangsFromFields } from './hangs-from';
import { addNewRing } from './new-ring';

interface RingCardProps {
  readonly garment: Garment;
  readonly ring: Ring;
}

/** Which pieces go round, how many drawn widths of each, and other rings beside this one. */
export function RingCard({ garment, ring }: RingCardProps) {
  const edit = useGarment((state) => state.edit);
  const name = ring.name || words.unnamedRing;
  const remove = () => {
    edit(words.ringRemovedLabel, (before) => removeRing(before, ring.id));
    say(words.ringRemoved(name));
  };
  return (
    <Card title={words.roundTheBody} about="ring" step="ring">
      <p className={styles.small}>{words.roundHelp}</p>
      <TextField
        label={words.ringNamed}
        value={ring.name}
        onCommit={(text) => edit(words.ringRenamedLabel, (before) => renameRing(before, ring.id, text.trim()))}
      />
      {cutPieces(garment).map((piece) => {
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
            {member && <HangsFromFields piece={piece} ring={ring} from={member.from} shownIn={garment.shownIn} />}
          </div>
        );
      })}
      <p className={styles.small}>{words.moreRings}</p>
      <div className={styles.row}>
        <Button icon="plus" onPress={() => addNewRing('below')}>
          {words.addBelow}
        </Button>
        <Button icon="plus" onPress={() => addNewRing('above')}>
          {words.addAbove}
        </Button>
        <Button icon="bin" tone="wrong" onPress={remove}>
          {words.removeRing}
        </Button>
      </div>
    </Card>
  );
}
