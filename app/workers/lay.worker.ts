import { bestLay, type LayStart, layStep, startLay } from '../../core/cloth/lay-search';
import type { Lay, LayTask } from '../../core/cloth/lay-task';
import { piecingToFit } from '../../core/cloth/piecing';
import { seededRandom } from '../../core/cloth/seeded-random';
import type { LayCalls } from './lay-calls';
import { serve, type WorkerPort } from './serve';

/** Better lays are given at most so often, and the share done is told as often, in ms. */
const GIVEN_MS = 120;

/** Steps for each join that is tried. */
const JOIN_STEPS = 400;

/** Lays until the time is up or no lay can be shorter. */
function layFor(
  task: LayTask,
  { seconds, seed, start }: { readonly seconds: number; readonly seed: number; readonly start: LayStart },
  told: { readonly share?: (share: number) => void; readonly better?: (lay: Lay) => void },
) {
  const begun = performance.now();
  const search = startLay(task, seededRandom(seed), start);
  if (search.kind !== 'search') return search;
  told.better?.(bestLay(search));
  let given = performance.now();
  let isNew = false;
  let shortest = false;
  for (let now = given; now - begun < 1000 * seconds; now = performance.now()) {
    const step = layStep(search);
    if (step === 'shortest') {
      shortest = true;
      break;
    }
    isNew ||= step === 'better';
    if (now - given < GIVEN_MS) continue;
    given = now;
    told.share?.(Math.min(1, (now - begun) / (1000 * seconds)));
    if (isNew) told.better?.(bestLay(search));
    isNew = false;
  }
  return { kind: 'laid', lay: bestLay(search), shortest } as const;
}

// The compiler takes `self` for a window; in a worker it is the port itself.
serve<LayCalls>(self as unknown as WorkerPort, {
  async lay({ task, seconds, seed, from }, share, better) {
    return { answer: layFor(task, { seconds, seed, start: from ? { from } : {} }, { share, better }) };
  },

  async beside({ tasks, seconds }, tell, give) {
    for (const [done, { key, task }] of tasks.entries()) {
      tell(done / tasks.length);
      const laid = layFor(task, { seconds, seed: 1, start: {} }, {});
      give({ key, lay: laid.kind === 'laid' ? laid.lay : undefined });
    }
    return { answer: { kind: 'done' } };
  },

  async join({ task, lay, lengthAtHand, allowance, seed }) {
    const found = piecingToFit(task, lay, { lengthAtHand, allowance, steps: JOIN_STEPS, random: seededRandom(seed) });
    return { answer: found ? { kind: 'join', piecing: found.piecing, lay: found.lay } : { kind: 'none' } };
  },
});
