import { useMemo } from 'react';
import { type Laying, layingOf } from '../../core/cloth/garment-laying';
import type { LayFault } from '../../core/cloth/lay-check';
import { faultsOf, type LayStanding, layStanding } from '../../core/cloth/lay-standing';
import type { LayTask, ToLay } from '../../core/cloth/lay-task';
import { placedOutline } from '../../core/cloth/stance-outline';
import type { Garment } from '../../core/garment/garment';
import type { GarmentCloth, KeptLay, KeptPlace } from '../../core/garment/garment-cloth';
import type { Point } from '../../core/geometry/point';
import { useCloth } from './cloth-store';

/** A piece as it lies on the cloth. */
export interface Shown {
  readonly place: KeptPlace;
  readonly piece: ToLay;
  readonly ring: readonly Point[];
}

/** What lies on the cloth in hand now: the best lay so far while laying goes on, else the one that is kept. */
export interface ShownLay {
  readonly laying: Laying;
  readonly task: LayTask | undefined;
  readonly standing: LayStanding | undefined;
  readonly lay: Pick<KeptLay, 'placed' | 'length'> | undefined;
  readonly shown: readonly Shown[];
  readonly faults: readonly LayFault[];
}

/** The lay of a cloth as it is to be shown. */
export function useShownLay(garment: Garment, cloth: GarmentCloth): ShownLay {
  const running = useCloth((state) => state.running);
  const live = running?.clothId === cloth.id ? running.live : undefined;
  return useMemo(() => {
    const laying = layingOf(garment, cloth);
    const task = laying.made.kind === 'task' ? laying.made.task : undefined;
    const standing = layStanding(garment, cloth);
    const lay = live ?? standing?.lay;
    const faults = live ? [] : task && standing && !standing.changed ? faultsOf(task, standing.lay) : [];
    return { laying, task, standing, lay, shown: task && lay ? shownOf(task, lay) : [], faults };
  }, [garment, cloth, live]);
}

/** The lay kept of a cloth and what it is laid of, where it still is of these pieces. */
export function currentLay(
  garment: Garment,
  clothId: string,
): { readonly task: LayTask; readonly lay: KeptLay } | undefined {
  const cloth = garment.cloths?.find(({ id }) => id === clothId);
  const standing = cloth && layStanding(garment, cloth);
  const made = cloth && layingOf(garment, cloth).made;
  return standing && !standing.changed && made?.kind === 'task' ? { task: made.task, lay: standing.lay } : undefined;
}

/** Where each piece of a lay lies; of an old lay, those that can still lie so. */
export function shownOf(task: LayTask, lay: Pick<KeptLay, 'placed'>): Shown[] {
  return lay.placed.flatMap((place) => {
    const piece = task.toLay.find(({ id }) => id === place.id);
    const ring = piece ? placedOutline(piece, place) : [];
    return piece && ring.length > 2 ? [{ place, piece, ring }] : [];
  });
}
