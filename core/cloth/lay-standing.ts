import { layOf } from '../garment/cloth-edits';
import type { Garment } from '../garment/garment';
import type { GarmentCloth, KeptLay } from '../garment/garment-cloth';
import { againstAtHand, type LaySums, laySums } from './cloth-sums';
import { type ChangedSince, changedSince, layingOf } from './garment-laying';
import { type LayFault, layFaults } from './lay-check';
import type { LayTask } from './lay-task';
import { beforeShrinking } from './shrinkage';

/** How a lay that was made stands now. */
export interface LayStanding {
  readonly lay: KeptLay;
  readonly changed: ChangedSince | undefined;
  /** What is wrong with it; nothing is said of one that is out of date. */
  readonly faults: readonly LayFault[];
  readonly sums: LaySums;
  /** The length of cloth it takes before washing, and how that stands to what is at hand. */
  readonly needed: number;
  readonly atHand: ReturnType<typeof againstAtHand> | undefined;
}

/** How the lay kept of a cloth stands; `undefined` where there is none, or where it can be laid no longer. */
export function layStanding(garment: Pick<Garment, 'pieces' | 'lays'>, cloth: GarmentCloth): LayStanding | undefined {
  const lay = layOf(garment, cloth.id);
  const { made, cloth: washed } = layingOf(garment, cloth);
  if (!lay || made.kind !== 'task') return undefined;
  const changed = changedSince(lay, made.task);
  const sums = laySums(made.task, lay, washed);
  const needed = beforeShrinking(sums.length, cloth.shrinks?.along ?? 0);
  const length = cloth.shape ? made.lengthAtHand : cloth.atHand;
  return {
    lay,
    changed,
    faults: changed ? [] : faultsOf(made.task, lay),
    sums,
    needed,
    atHand: length === undefined ? undefined : againstAtHand(cloth.shape ? sums.length : needed, length),
  };
}

const found = new WeakMap<KeptLay, { readonly task: LayTask; readonly faults: readonly LayFault[] }>();

/** What is wrong with a lay; remembered with it. */
export function faultsOf(task: LayTask, lay: KeptLay): readonly LayFault[] {
  const had = found.get(lay);
  if (had?.task === task) return had.faults;
  const faults = layFaults(task, lay);
  found.set(lay, { task, faults });
  return faults;
}
