import { ringPieces } from '../../core/fit/round-body';
import type { WaistNeed } from '../../core/fit/waist-needs';
import type { Garment, Ring } from '../../core/garment/garment';
import { withPiece } from '../../core/garment/with-piece';
import { useGarment } from '../state/garment-store';
import { useTable } from '../state/table-store';
import { Button } from '../ui/button';
import { Card } from '../ui/card';
import { Note } from '../ui/note';
import { say } from '../ui/say';
import { fitWords as words } from '../words/fit';
import { writeLength } from '../words/written';
import styles from './fit-room.module.css';

interface CurvedWaistCardProps {
  readonly garment: Garment;
  readonly ring: Ring;
  readonly needs: readonly WaistNeed[];
}

/** The curve each waist needs, in numbers beside the straight one, with one press to take it. */
export function CurvedWaistCard({ garment, ring, needs }: CurvedWaistCardProps) {
  if (needs.length === 0) return null;
  return (
    <Card title={words.curvedWaist} about="curved-waist">
      <p className={styles.small}>{words.curvedHelp}</p>
      {needs.map((need) => (
        <WaistRow key={need.edgeId} need={need} garment={garment} ring={ring} />
      ))}
    </Card>
  );
}

/** To the Reshape room, with this very waist in hand there. */
function OtherWays({ need: { pieceId, edgeId }, name }: { readonly need: WaistNeed; readonly name: string }) {
  return (
    <Button
      tone="quiet"
      label={words.otherWaysOf(name)}
      onPress={() => useTable.getState().goTo('reshape', { kind: 'edge', pieceId, edgeId })}
    >
      {words.otherWays}
    </Button>
  );
}

function WaistRow({ need, garment, ring }: { need: WaistNeed; garment: Garment; ring: Ring }) {
  const edit = useGarment((state) => state.edit);
  const member = ringPieces(garment, ring).find(({ piece }) => piece.id === need.pieceId);
  const name = member?.piece.name || words.unnamedPiece;
  if (need.kind === 'no-curve') {
    return (
      <section className={styles.level} aria-label={name}>
        <Note tone="warn">{`${name}: ${words.noCurve[need.why]}`}</Note>
        <OtherWays need={need} name={name} />
      </section>
    );
  }
  const { curve } = need;
  const length = (mm: number) => writeLength(mm, { shownIn: garment.shownIn });
  const whole = (mm: number) => words.ofWhole(length(mm * (member?.times ?? 1)));
  if (need.settled) {
    return (
      <section className={styles.level} aria-label={name}>
        <Note tone="good">{`${name}: ${words.isCurved}`}</Note>
        <OtherWays need={need} name={name} />
      </section>
    );
  }
  const take = () => {
    edit(words.takeLabel, (before) => withPiece(before, need.pieceId, () => curve.piece));
    say(words.taken(name));
  };
  return (
    <section className={styles.level} aria-label={name}>
      <h3>{name}</h3>
      <dl className={styles.figures}>
        <div>
          <dt>{words.straight}</dt>
          <dd>
            {length(curve.straightLength)} <small>{whole(curve.straightLength)}</small>
          </dd>
        </div>
        <div>
          <dt>{words.curved}</dt>
          <dd>
            {length(curve.length)} <small>{whole(curve.length)}</small>
          </dd>
        </div>
        <div>
          <dt>{curve.dip === 0 ? words.rise : words.dip}</dt>
          <dd>{length(curve.dip === 0 ? curve.rise : curve.dip)}</dd>
        </div>
      </dl>
      <div className={styles.row}>
        <Button tone="chalk" icon="curve" step="curved-waist" onPress={take}>
          {words.take}
        </Button>
        <OtherWays need={need} name={name} />
      </div>
    </section>
  );
}
