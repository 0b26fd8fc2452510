import { useEffect, useRef } from 'react';
import { keptLay, layingOf } from '../../core/cloth/garment-laying';
import type { Lay } from '../../core/cloth/lay-task';
import { piecedAt } from '../../core/cloth/piecing';
import { changeCloth, keepLay } from '../../core/garment/cloth-edits';
import type { Garment } from '../../core/garment/garment';
import type { GarmentCloth } from '../../core/garment/garment-cloth';
import { boxOfPoints } from '../../core/geometry/bounds';
import { useGarment } from '../state/garment-store';
import { today } from '../state/today';
import { Button } from '../ui/button';
import { Note } from '../ui/note';
import { clothWords as words } from '../words/cloth';
import { writeLength } from '../words/written';
import { layWork } from '../workers/lay-calls';
import styles from './cloth.module.css';
import { type HelpSought, useCloth } from './cloth-store';
import { JOIN_ALLOWANCE } from './how-card';
import { laidName } from './names';
import type { ShownLay } from './shown-lay';

/** How long the cloth opened out is laid without a join first, in seconds. */
const OPENED_SECONDS = 3;

interface FitSearchProps {
  readonly garment: Garment;
  readonly cloth: GarmentCloth;
  readonly lay: ShownLay;
}

/** Where the cloth is short: would it do opened out, or with one piece joined along its grain? */
export function FitSearch({ garment, cloth, lay }: FitSearchProps) {
  const helps = useCloth((state) => state.helps);
  const stopper = useRef<AbortController>(undefined);
  useEffect(() => () => stopper.current?.abort(), []);
  const { standing } = lay;
  if (!standing) return null;
  const seek = async () => {
    stopper.current = new AbortController();
    const { signal } = stopper.current;
    useCloth.setState({ helps: { kind: 'seeking' } });
    const found = await whatHelps(garment, cloth, standing.lay, signal);
    if (useCloth.getState().helps?.kind !== 'seeking') return;
    useCloth.setState({ helps: signal.aborted ? undefined : found });
  };
  if (!helps) {
    return (
      <div className={styles.row}>
        <Button icon="look" onPress={() => void seek()}>
          {words.seekHelp}
        </Button>
      </div>
    );
  }
  if (helps.kind === 'seeking') {
    return (
      <Note tone="plain" action={{ words: words.stop, onPress: () => stopper.current?.abort() }}>
        {words.seeking}
      </Note>
    );
  }
  if (helps.kind === 'none') return <Note tone="warn">{words.helpNone}</Note>;
  return (
    <Note tone="plain" action={{ words: words.takeHelp(helps.join !== undefined), onPress: () => take(cloth, helps) }}>
      {helpSaid(garment, cloth, helps)}
    </Note>
  );
}

type Helps = Extract<HelpSought, { readonly kind: 'found' }>;

/** Tries the cloth as it lies with a join, then opened out without one, then opened out with one. */
async function whatHelps(
  garment: Garment,
  cloth: GarmentCloth,
  now: Lay,
  signal: AbortSignal,
): Promise<Helps | { readonly kind: 'none' }> {
  const asItLies = await joinOn(garment, cloth, now, signal);
  if (asItLies || cloth.folded === 'open' || cloth.shape || signal.aborted) return asItLies ?? { kind: 'none' };
  const opened: GarmentCloth = { ...cloth, folded: 'open' };
  const { made } = layingOf(garment, opened);
  if (made.kind !== 'task') return { kind: 'none' };
  let lay: Lay | undefined;
  await layWork.call(
    'beside',
    { tasks: [{ key: 'open', task: made.task }], seconds: OPENED_SECONDS },
    { signal, onPart: (part) => (lay = part.lay ?? lay) },
  );
  if (!lay || signal.aborted) return { kind: 'none' };
  if (made.lengthAtHand !== undefined && lay.length <= made.lengthAtHand) {
    return { kind: 'found', folded: 'open', join: undefined, lay };
  }
  return (await joinOn(garment, opened, lay, signal)) ?? { kind: 'none' };
}

async function joinOn(
  garment: Garment,
  cloth: GarmentCloth,
  lay: Lay,
  signal: AbortSignal,
): Promise<Helps | undefined> {
  const { made } = layingOf(garment, cloth);
  if (made.kind !== 'task' || made.lengthAtHand === undefined) return undefined;
  const { task, lengthAtHand } = made;
  const answer = await layWork.call(
    'join',
    { task, lay, lengthAtHand, allowance: JOIN_ALLOWANCE, seed: 1 },
    { signal },
  );
  if (answer.kind !== 'join') return undefined;
  const { id, at } = answer.piecing;
  return { kind: 'found', folded: cloth.folded, join: { id, at }, lay: answer.lay };
}

/** What is found, in words: which piece, how large the part is that is joined on, and where. */
function helpSaid(garment: Garment, cloth: GarmentCloth, { folded, join, lay }: Helps): string {
  const length = (mm: number) => writeLength(mm, { shownIn: garment.shownIn, step: 'eighth' });
  const opened = folded !== cloth.folded;
  if (!join) return words.helpOpened(length(lay.length));
  const { made } = layingOf(garment, { ...cloth, folded });
  const piece = made.kind === 'task' ? made.task.toLay.find(({ id }) => id === join.id) : undefined;
  const box = boxOfPoints(piece?.outline ?? []);
  const [near, far] = box ? [join.at - box.minY, box.maxY - join.at] : [0, 0];
  const [before, beyond] = (piece && piecedAt(piece, join.at, JOIN_ALLOWANCE)?.parts) ?? [];
  const part = boxOfPoints((piece?.onFold || far < near ? beyond : before) ?? []);
  return words.helpJoin({
    name: laidName(join.id, garment, cloth),
    at: length(piece?.onFold ? near : Math.min(near, far)),
    from: piece?.onFold ? 'fold' : 'edge',
    wide: length(part ? part.maxY - part.minY : 0),
    long: length(part ? part.maxX - part.minX : 0),
    length: length(lay.length),
    allowance: length(JOIN_ALLOWANCE),
    opened,
  });
}

/** Lays as was found. */
function take(cloth: GarmentCloth, { folded, join, lay }: Helps): void {
  useGarment.getState().edit(join ? words.labels.join : words.labels.change, (now) => {
    const after = changeCloth(now, cloth.id, (one) => {
      const pieced = [...(one.pieced ?? []), ...(join ? [{ ...join, allowance: JOIN_ALLOWANCE }] : [])];
      return { ...one, folded, ...(pieced.length > 0 ? { pieced } : {}) };
    });
    const changed = after.cloths?.find(({ id }) => id === cloth.id);
    const made = changed && layingOf(after, changed).made;
    if (made?.kind !== 'task') return after;
    return keepLay(after, keptLay(cloth.id, made.task, lay, { made: today(), pinned: [] }));
  });
  useCloth.setState({ helps: undefined });
}
