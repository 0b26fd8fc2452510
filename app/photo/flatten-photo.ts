import type { SquaredPicturePlan } from '../../core/diagram/squared-picture';
import { photoWork, quickWork } from '../workers/photo-workers';
import { picturesOf, putPictures } from './picture-store';

/** How the flat picture of a diagram is to be made: in full, and as a quick look. */
export interface FlatPlans {
  /** What the pixels depend on. */
  readonly key: string;
  readonly full: SquaredPicturePlan;
  readonly quick: SquaredPicturePlan;
}

/** How long a corner must rest before the full picture is made. */
const REST_MS = 350;

interface Work {
  readonly plans: FlatPlans;
  timer: ReturnType<typeof setTimeout> | undefined;
  readonly full: AbortController;
}

const working = new Map<string, Work>();
const quickRunning = new Set<string>();

/**
 * Makes the flat picture of a diagram anew: a quick look at once, and the full picture when nothing has changed for a
 * moment. What was begun for an earlier plan is given up.
 */
export function flattenPhoto(diagramId: string, plans: FlatPlans): void {
  giveUp(diagramId);
  const work: Work = { plans, timer: undefined, full: new AbortController() };
  working.set(diagramId, work);
  void quickLook(diagramId);
  work.timer = setTimeout(() => void fullPicture(diagramId, work), REST_MS);
}

/** Stops making the full picture. The quick look stays. */
export function stopFlattening(diagramId: string): void {
  giveUp(diagramId);
  const { flattening: _, ...pictures } = picturesOf(diagramId);
  putPictures(diagramId, { ...pictures, stopped: true });
}

/** Gives up what is being made, because there is nothing to be made now. What is shown stays. */
export function leaveFlattening(diagramId: string): void {
  giveUp(diagramId);
  const { flattening, ...pictures } = picturesOf(diagramId);
  if (flattening !== undefined) putPictures(diagramId, pictures);
}

function giveUp(diagramId: string): void {
  const work = working.get(diagramId);
  clearTimeout(work?.timer);
  work?.full.abort();
  working.delete(diagramId);
}

/** One quick look at a time; after it the newest plan, if that is another by then. */
async function quickLook(diagramId: string): Promise<void> {
  const work = working.get(diagramId);
  const { photo } = picturesOf(diagramId);
  if (!work || !photo || quickRunning.has(diagramId)) return;
  quickRunning.add(diagramId);
  const answer = await quickWork.call('layFlatQuickly', { small: photo.small, plan: work.plans.quick });
  quickRunning.delete(diagramId);
  if (answer.kind === 'flat') {
    const { flat, ...pictures } = picturesOf(diagramId);
    const isLate = pictures.photo !== photo || (working.get(diagramId) === undefined && flat?.quality === 'full');
    if (isLate) for (const level of answer.levels) level.close();
    else
      putPictures(diagramId, { ...pictures, flat: { levels: answer.levels, key: work.plans.key, quality: 'quick' } });
  }
  if (working.has(diagramId) && working.get(diagramId) !== work) void quickLook(diagramId);
}

async function fullPicture(diagramId: string, work: Work): Promise<void> {
  const { photo } = picturesOf(diagramId);
  if (!photo) return;
  const tell = (flattening: number) => {
    if (working.get(diagramId) !== work) return;
    const { stopped: _, ...pictures } = picturesOf(diagramId);
    putPictures(diagramId, { ...pictures, flattening });
  };
  tell(0);
  const answer = await photoWork.call(
    'layFlat',
    { key: photo.key, file: photo.file, plan: work.plans.full },
    { signal: work.full.signal, onProgress: tell },
  );
  const { flattening: _, ...pictures } = picturesOf(diagramId);
  if (answer.kind === 'flat' && working.get(diagramId) === work && pictures.photo === photo) {
    working.delete(diagramId);
    putPictures(diagramId, { ...pictures, flat: { levels: answer.levels, key: work.plans.key, quality: 'full' } });
    return;
  }
  if (answer.kind === 'flat') for (const level of answer.levels) level.close();
  else if (working.get(diagramId) === work) {
    // Most likely for want of memory: the quick look stays, and she can ask again.
    working.delete(diagramId);
    putPictures(diagramId, { ...pictures, stopped: true });
  }
}
