import type { ClothRefusal } from '../../core/cloth/cloth-task';
import { piecesFrom } from '../../core/cloth/garment-laying';
import { joinForWidth, stripInLengths, waysOut } from '../../core/cloth/ways-out';
import type { Garment } from '../../core/garment/garment';
import type { GarmentCloth } from '../../core/garment/garment-cloth';
import { USUAL_ALLOWANCES, withUsualAllowances } from '../../core/garment/usual-allowances';
import { withPiece } from '../../core/garment/with-piece';
import { DEGREE } from '../../core/units/degree';
import { inches } from '../../core/units/inch';
import { useGarment } from '../state/garment-store';
import { useTable } from '../state/table-store';
import { Button } from '../ui/button';
import { Card } from '../ui/card';
import { Choice } from '../ui/choice';
import { Note } from '../ui/note';
import { NumberField } from '../ui/number-field';
import { Switch } from '../ui/switch';
import { clothWords as words } from '../words/cloth';
import { writeLength } from '../words/written';
import styles from './cloth.module.css';
import { useCloth } from './cloth-store';
import { laidName } from './names';
import { editCloth, without } from './new-cloth';
import type { ShownLay } from './shown-lay';

const GRAINS = ['straight', 'cross', 'bias'] as const;
const TIMES = ['10', '60', '300'] as const;

/** The most a piece may be tilted off its grain: more would twist when it hangs. */
const MOST_TILT = 5;

/** Beside each join: half an inch, common practice. */
export const JOIN_ALLOWANCE = inches(0.5);

interface HowCardProps {
  readonly garment: Garment;
  readonly cloth: GarmentCloth;
  readonly lay: ShownLay;
}

/** How the grain lies, what is allowed, how long to try, and why something cannot be laid. */
export function HowCard({ garment, cloth, lay }: HowCardProps) {
  const seconds = useCloth((state) => state.seconds);
  const { made } = lay.laying;
  return (
    <Card title={words.how} about="lay-how">
      {made.kind === 'cannot-lay' && <Refused garment={garment} cloth={cloth} lay={lay} reasons={made.reasons} />}
      <Choice
        label={words.grain}
        value={cloth.grain}
        options={GRAINS.map((value) => ({ value, words: words.grains[value] }))}
        onChange={(grain) => editCloth(cloth, (now) => ({ ...now, grain }), words.labels.grain)}
      />
      <p className={styles.small}>{words.grainHelp[cloth.grain]}</p>
      <NumberField
        label={words.tilt}
        value={(cloth.tilt ?? 0) / DEGREE}
        least={0}
        most={MOST_TILT}
        onCommit={(degrees) =>
          editCloth(cloth, (now) => (degrees === 0 ? without(now, 'tilt') : { ...now, tilt: degrees * DEGREE }))
        }
      />
      {cloth.tilt ? (
        <Note tone="warn">{words.tiltWarning(cloth.tilt / DEGREE)}</Note>
      ) : (
        <p className={styles.small}>{words.tiltNone}</p>
      )}
      {cloth.folded !== 'open' && !cloth.shape && (
        <Switch
          label={words.openedOut}
          on={cloth.openedOut === true}
          onChange={(on) => editCloth(cloth, (now) => (on ? { ...now, openedOut: true } : without(now, 'openedOut')))}
        />
      )}
      {made.kind === 'task' && made.spare.size > 0 && (
        <Note tone="plain">
          {words.spare(
            words.lettered([...made.spare].map(([id, count]) => words.spareOf(count, laidName(id, garment, cloth)))),
          )}
        </Note>
      )}
      {cloth.pieced?.map(({ id }) => (
        <Note
          key={id}
          tone="plain"
          action={{
            words: words.unjoin,
            onPress: () => editCloth(cloth, (now) => withoutJoin(now, id), words.labels.unjoin),
          }}
        >
          {words.joined(laidName(id, garment, cloth))}
        </Note>
      ))}
      <Choice
        label={words.time}
        value={String(seconds) as (typeof TIMES)[number]}
        options={TIMES.map((value) => ({ value, words: words.times[value] }))}
        onChange={(value) => useCloth.setState({ seconds: Number(value) })}
      />
    </Card>
  );
}

function withoutJoin(cloth: GarmentCloth, id: string): GarmentCloth {
  const pieced = (cloth.pieced ?? []).filter((join) => join.id !== id);
  return pieced.length === 0 ? without(cloth, 'pieced') : { ...cloth, pieced };
}

/** Why something cannot be laid, and each single change that would let it. */
function Refused({ garment, cloth, lay, reasons }: HowCardProps & { readonly reasons: readonly ClothRefusal[] }) {
  const { shownIn } = garment;
  const goTo = useTable((table) => table.goTo);
  const { from, cloth: washed, choice } = lay.laying;
  const ways = waysOut(from, washed, choice);
  const inDraft = reasons.flatMap((reason) => ('pieceId' in reason ? [reason.pieceId] : []));
  const lacking = garment.pieces.filter((piece) => inDraft.includes(piece.id) && withUsualAllowances(piece) !== piece);
  const tooWide = reasons.flatMap((reason) => (reason.kind === 'too-wide' ? [reason] : []));
  return (
    <>
      <h3 className={styles.part}>{words.refused}</h3>
      {reasons.map((reason) => {
        const id = 'pieceId' in reason ? reason.pieceId : 'id' in reason ? reason.id : '';
        return (
          <Note
            key={`${reason.kind} ${id}`}
            tone="stop"
            {...('pieceId' in reason
              ? {
                  action: {
                    words: words.toDraft,
                    onPress: () => goTo('draft', { kind: 'piece', pieceId: reason.pieceId }),
                  },
                }
              : {})}
          >
            {words.refusal(reason, id === '' ? '' : laidName(id, garment, cloth), shownIn)}
          </Note>
        );
      })}
      {inDraft.length > 0 && (
        <div className={styles.row}>
          {lacking.length > 0 && (
            <Button onPress={() => giveAllowances(lacking.map(({ id }) => id))}>
              {words.wayAllowances(
                writeLength(USUAL_ALLOWANCES.seam, { shownIn }),
                writeLength(USUAL_ALLOWANCES.hem, { shownIn }),
              )}
            </Button>
          )}
          {inDraft.length < from.pieces.length && (
            <Button onPress={() => leaveOut(garment, cloth, inDraft)}>{words.wayLeaveOut}</Button>
          )}
        </div>
      )}
      {inDraft.length === 0 && (
        <div className={styles.row}>
          {ways.openedOut && (
            <Button onPress={() => editCloth(cloth, (now) => ({ ...now, folded: 'open' }))}>{words.wayOpened}</Button>
          )}
          {ways.grains.map((grain) => (
            <Button key={grain} onPress={() => editCloth(cloth, (now) => ({ ...now, grain }), words.labels.grain)}>
              {words.wayGrain(grain)}
            </Button>
          ))}
          {ways.width !== undefined && (
            <Button onPress={() => editCloth(cloth, (now) => ({ ...now, width: ways.width ?? now.width }))}>
              {words.wayWidth(ways.width, shownIn)}
            </Button>
          )}
          {tooWide.map(({ id, across }) => (
            <TooWideWays key={id} {...{ cloth, lay, id, across, shownIn }} name={laidName(id, garment, cloth)} />
          ))}
        </div>
      )}
      {inDraft.length === 0 && <p className={styles.small}>{words.noWay(ways)}</p>}
    </>
  );
}

function giveAllowances(ids: readonly string[]): void {
  useGarment
    .getState()
    .edit(words.labels.allowances, (now) => ids.reduce((after, id) => withPiece(after, id, withUsualAllowances), now));
}

/** Lays the rest: these pieces are not cut from the cloth for now. */
function leaveOut(garment: Garment, cloth: GarmentCloth, ids: readonly string[]): void {
  const pieceIds = piecesFrom(garment, cloth).flatMap(({ id }) => (ids.includes(id) ? [] : [id]));
  editCloth(cloth, (now) => ({ ...now, pieceIds }));
}

interface TooWideProps {
  readonly cloth: GarmentCloth;
  readonly lay: ShownLay;
  readonly id: string;
  readonly across: number;
  readonly shownIn: Garment['shownIn'];
  readonly name: string;
}

/** A piece too wide is joined; a bias strip too long is cut in several lengths. */
function TooWideWays({ cloth, lay, id, across, shownIn, name }: TooWideProps) {
  const strip = cloth.strips.find((one) => one.id === id);
  const lengths = strip && stripInLengths(strip, across, JOIN_ALLOWANCE / 2);
  if (lengths) {
    const inLengths = () =>
      editCloth(
        cloth,
        (now) => ({
          ...now,
          strips: now.strips.map((one) =>
            one.id === id ? { ...one, length: lengths.length, count: lengths.count } : one,
          ),
        }),
        words.labels.strip,
      );
    return <Button onPress={inLengths}>{words.wayLengths(name, lengths.count)}</Button>;
  }
  const { from, cloth: washed, choice } = lay.laying;
  const join = joinForWidth(from, washed, choice, { id, across, allowance: JOIN_ALLOWANCE });
  if (!join) return null;
  return (
    <Button
      onPress={() => editCloth(cloth, (now) => ({ ...now, pieced: [...(now.pieced ?? []), join] }), words.labels.join)}
    >
      {words.wayJoin(name, writeLength(across - JOIN_ALLOWANCE, { shownIn, step: 'eighth' }))}
    </Button>
  );
}
