import { isPlace } from '../../core/cloth/lay-by-hand';
import type { LayStanding } from '../../core/cloth/lay-standing';
import type { Garment } from '../../core/garment/garment';
import type { GarmentCloth } from '../../core/garment/garment-cloth';
import { Button } from '../ui/button';
import { clothWords as words } from '../words/cloth';
import styles from './cloth.module.css';
import { useCloth } from './cloth-store';
import { pinPlace, turnPlace } from './lay-tool';
import { startLaying, stopLaying } from './laying';
import { laidName } from './names';
import { laidWay, placeSaid, saidOf } from './place-said';
import type { ShownLay } from './shown-lay';

interface LayStripProps {
  readonly garment: Garment;
  readonly cloth: GarmentCloth;
  readonly lay: ShownLay;
}

/** Over the cloth: what the lay takes, whether that fits, the button that lays, and the piece in hand. */
export function LayStrip({ garment, cloth, lay }: LayStripProps) {
  const running = useCloth((state) => state.running);
  const trouble = useCloth((state) => state.trouble);
  const isRunning = running?.clothId === cloth.id;
  const { standing, task } = lay;
  const pins = lay.standing?.lay.placed.filter(({ pinned }) => pinned).length ?? 0;
  const canLay = task !== undefined && task.toLay.length > 0;
  const begin = !standing || standing.changed ? words.layIt : pins > 0 ? words.layRest : words.layAgain;
  return (
    <section className={styles.strip} aria-label={words.strip}>
      <div className={styles.says}>
        <Takes garment={garment} cloth={cloth} lay={lay} />
        {trouble && <p className={styles.wrong}>{trouble}</p>}
      </div>
      <div className={styles.row}>
        {isRunning ? (
          <>
            <progress value={running.share} max={1} aria-label={words.laying(running.share)} />
            <Button tone="chalk" icon="close" onPress={stopLaying}>
              {words.stop}
            </Button>
          </>
        ) : (
          <Button
            tone="chalk"
            icon="piece"
            step="lay"
            disabled={!canLay}
            onPress={() => void startLaying(garment, cloth)}
          >
            {begin}
          </Button>
        )}
      </div>
      <InHand garment={garment} cloth={cloth} lay={lay} />
    </section>
  );
}

function Takes({ garment, cloth, lay }: LayStripProps) {
  const { shownIn } = garment;
  const { standing, faults } = lay;
  const { folded, shape } = cloth;
  if (!lay.lay) return <p className={styles.takes}>{words.notLaid}</p>;
  const isLive = lay.lay !== standing?.lay;
  const double = folded === 'crosswise' && !shape ? 2 : 1;
  const shrunk = 1 - (cloth.shrinks?.along ?? 0);
  const needed = (double * lay.lay.length) / shrunk;
  const { atHand, changed } = standing ?? {};
  if (changed && !isLive) {
    // Cloth that lies otherwise lays its pieces otherwise: they are not what changed.
    const what = changed.cloth ? [words.staleCloth] : changed.ids.map((id) => laidName(id, garment, cloth));
    return <p className={styles.takes}>{words.stale(words.lettered(what))}</p>;
  }
  return (
    <>
      <p className={styles.takes}>
        {words.takes} <strong>{words.exactly(needed, shownIn)}</strong>
        {!cloth.shape && <span>{words.toBuyOf(words.bought(needed, shownIn))}</span>}
      </p>
      <p className={styles.small}>
        {!isLive && atHand && <Enough cloth={cloth} atHand={atHand} shownIn={shownIn} />}{' '}
        {!isLive && standing && (
          <>
            {words.used(standing.sums.used)}.{' '}
            <span className={faults.length > 0 ? styles.wrong : undefined}>
              {faults.length > 0 ? words.faults(faults.length) : words.noFaults}.
            </span>
          </>
        )}
      </p>
    </>
  );
}

interface EnoughProps {
  readonly cloth: GarmentCloth;
  readonly atHand: NonNullable<LayStanding['atHand']>;
  readonly shownIn: Garment['shownIn'];
}

/** Whether the length at hand, or the remnant, is enough. */
function Enough({ cloth, atHand, shownIn }: EnoughProps) {
  if (cloth.shape) {
    return atHand.kind === 'enough' ? (
      words.onRemnant
    ) : (
      <span className={styles.wrong}>{words.offRemnant(atHand.by, shownIn)}</span>
    );
  }
  if (cloth.atHand === undefined) return null;
  return atHand.kind === 'enough'
    ? words.fits(atHand.over, cloth.atHand, shownIn)
    : words.short(atHand.by, cloth.atHand, shownIn);
}

function InHand({ garment, cloth, lay }: LayStripProps) {
  const inHand = useCloth((state) => state.inHand);
  const one = lay.shown.find(({ place }) => isPlace(place, inHand));
  if (!one || !inHand || lay.standing?.changed) return null;
  const worked = { garment, cloth, lay };
  return (
    <div className={styles.inHand}>
      <output className={styles.held}>
        <strong>{saidOf(one, garment, cloth)}</strong>{' '}
        <span className={styles.small}>
          {[placeSaid(one, garment, cloth), laidWay(one)].filter((part) => part !== '').join(', ')}
        </span>
        <span className="only-heard">
          . {lay.faults.length > 0 ? words.faults(lay.faults.length) : words.noFaults}.
        </span>
      </output>
      <Button
        icon="turn"
        disabled={one.piece.stances.length < 2 || one.place.pinned === true}
        onPress={() => turnPlace(worked, inHand)}
      >
        {words.turn}
      </Button>
      <Button icon="pin" pressed={one.place.pinned === true} onPress={() => pinPlace(worked, inHand)}>
        {one.place.pinned ? words.unpin : words.pin}
      </Button>
      <Button
        tone="quiet"
        icon="close"
        title={words.putDown}
        onPress={() => useCloth.setState({ inHand: undefined })}
      />
    </div>
  );
}
