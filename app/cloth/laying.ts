/** Lays a cloth in the worker, keeping the best lay in the garment as it goes; one laying at a time. */

import { changedSince, keptLay, layingOf, pinnedOf } from '../../core/cloth/garment-laying';
import type { Lay, LayTask } from '../../core/cloth/lay-task';
import { keepLay, layOf } from '../../core/garment/cloth-edits';
import type { Garment } from '../../core/garment/garment';
import type { GarmentCloth, KeptLay } from '../../core/garment/garment-cloth';
import { versionSaid } from '../../core/garment/version-said';
import { useGarment } from '../state/garment-store';
import { newId } from '../state/new-id';
import { today } from '../state/today';
import { versionsOf } from '../storage/versions';
import { say } from '../ui/say';
import { clothWords as words } from '../words/cloth';
import { layWork } from '../workers/lay-calls';
import { useCloth } from './cloth-store';
import { laidName } from './names';

/** The garment takes a better lay at most so often, in ms: looking it over costs time on the page. */
const KEPT_MS = 1000;

interface Run {
  readonly stopper: AbortController;
  readonly garmentId: string;
  readonly clothId: string;
  readonly task: LayTask;
  readonly key: string;
  readonly version: number | undefined;
  best: Lay | undefined;
  kept: KeptLay | undefined;
  keptAt: number;
}

let run: Run | undefined;

/** Lays a cloth for so many seconds, round what is pinned, from the lay there is if that still holds. */
export async function startLaying(garment: Garment, cloth: GarmentCloth): Promise<void> {
  stopLaying();
  const { made } = layingOf(garment, cloth);
  if (made.kind !== 'task' || made.task.toLay.length === 0) return;
  const had = layOf(garment, cloth.id);
  const isOf = had !== undefined && !changedSince(had, made.task);
  const task = { ...made.task, pinned: isOf ? pinnedOf(had) : [] };
  const { runs, seconds } = useCloth.getState();
  const mine: Run = {
    stopper: new AbortController(),
    garmentId: garment.id,
    clothId: cloth.id,
    task: made.task,
    key: `lay ${newId()}`,
    version: await versionNumber(garment),
    best: undefined,
    kept: had,
    keptAt: 0,
  };
  run = mine;
  useCloth.setState({
    running: { clothId: cloth.id, share: 0, live: undefined },
    trouble: undefined,
    helps: undefined,
    runs: runs + 1,
  });
  const from = isOf
    ? { from: { placed: had.placed.map(({ pinned: _, ...placed }) => placed), length: had.length } }
    : {};
  const answer = await layWork.call(
    'lay',
    { task, seconds, seed: runs + 1, ...from },
    {
      signal: mine.stopper.signal,
      onProgress: (share) => run === mine && showRunning({ share }),
      onPart: (lay) => {
        if (run !== mine) return;
        mine.best = lay;
        showRunning({ live: lay });
        if (performance.now() - mine.keptAt > KEPT_MS) keepBest(mine);
      },
    },
  );
  if (run !== mine) return;
  if (answer.kind === 'laid') mine.best = answer.lay;
  keepBest(mine);
  run = undefined;
  useCloth.setState({ running: undefined });
  if (answer.kind === 'laid') {
    const now = useGarment.getState().garment ?? garment;
    say(words.laid(answer.lay.length, now.shownIn, answer.shortest));
  } else if (answer.kind === 'broken') useCloth.setState({ trouble: words.broken });
  else if (answer.kind === 'not-across' || answer.kind === 'no-room-on-fold') {
    const names = answer.ids.map((id) => laidName(id, garment, cloth));
    useCloth.setState({ trouble: words.refusedIn[answer.kind](names) });
  }
}

/** Stops at once and keeps the best lay found; nothing where nothing is being laid. */
export function stopLaying(): void {
  if (!run) return;
  const mine = run;
  run = undefined;
  mine.stopper.abort();
  keepBest(mine);
  useCloth.setState({ running: undefined });
}

/** Forgets a laying whose ground has gone: other pieces, another cloth, a step taken back. */
function dropLaying(): void {
  run?.stopper.abort();
  run = undefined;
  useCloth.setState({ running: undefined });
}

function showRunning(change: { readonly share?: number; readonly live?: Lay }): void {
  const { running } = useCloth.getState();
  if (running) useCloth.setState({ running: { ...running, ...change } });
}

function keepBest(mine: Run): void {
  const { garment, edit } = useGarment.getState();
  if (!mine.best || garment?.id !== mine.garmentId) return;
  mine.keptAt = performance.now();
  const pinned = pinnedOf(mine.kept);
  const said = { made: today(), pinned, ...(mine.version === undefined ? {} : { version: mine.version }) };
  const lay = keptLay(mine.clothId, mine.task, mine.best, said);
  mine.best = undefined;
  mine.kept = lay;
  edit(words.labels.lay, (now) => keepLay(now, lay), { merge: mine.key, merges: 'always' });
  // A lay that is as the one before is not taken, and the one before stays.
  const { garment: after } = useGarment.getState();
  mine.kept = after && layOf(after, mine.clothId);
}

async function versionNumber(garment: Garment): Promise<number | undefined> {
  const version = versionSaid(await versionsOf(garment.id).catch(() => []), garment);
  return version.kind === 'kept' ? version.number : undefined;
}

useGarment.subscribe(({ garment }, before) => {
  if (!run || garment === before.garment) return;
  const cloth = garment?.cloths?.find(({ id }) => id === run?.clothId);
  const { made } = garment && cloth ? layingOf(garment, cloth) : {};
  const isSame = garment?.id === run.garmentId && made?.kind === 'task' && made.task === run.task;
  if (!isSame || (garment && layOf(garment, run.clothId)?.placed !== run.kept?.placed)) dropLaying();
});
