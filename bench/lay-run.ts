import { layFaults } from '../core/cloth/lay-check';
import { bestLay, layStep, startLay } from '../core/cloth/lay-search';
import type { Lay, LayTask } from '../core/cloth/lay-task';
import { seededRandom } from '../core/cloth/seeded-random';
import type { Point } from '../core/geometry/point';

/** The strip a lay is judged on, in mm: published sets come in units of their own, and the check works on millimetres. */
const JUDGED_ACROSS = 1000;

/** Asking for the processor's time takes time itself: it is done no oftener than this. A step is told too long by up to as much. */
const LOOK_MS = 5;

/** The length of a lay, and after how many seconds of processor time it stood. */
interface LayAt {
  readonly seconds: number;
  readonly length: number;
}

/** How a laying went. */
export interface LayRun {
  /** The plain lay that stands at once, and the first lay, before any search. */
  readonly plain: LayAt;
  readonly first: LayAt;
  readonly after: readonly LayAt[];
  readonly steps: number;
  readonly longestStep: number;
  readonly faults: number;
}

/** Lays for the longest of `marks` seconds in steps, as the worker does, and reads the length at each. */
export function layRun(task: LayTask, marks: readonly number[], seed: number): LayRun {
  const began = coreSeconds();
  const search = startLay(task, seededRandom(seed));
  if (search.kind !== 'search') throw new Error(`${search.kind}: ${search.ids.join(', ')}`);
  const now = (): LayAt => ({ seconds: coreSeconds() - began, length: search.best.length });
  const plain = now();
  let steps = 0;
  let longestStep = 0;
  let said = '';
  let taken = 0;
  let looked = performance.now();
  const stepWhile = (goesOn: () => boolean) => {
    for (; said !== 'shortest' && goesOn(); steps++) {
      said = layStep(search);
      if (performance.now() - looked < LOOK_MS) continue;
      const before = taken;
      taken = coreSeconds() - began;
      looked = performance.now();
      longestStep = Math.max(longestStep, taken - before);
    }
  };
  stepWhile(() => search.doing.kind === 'first');
  const first = now();
  const after = marks.map((seconds) => {
    stepWhile(() => taken < seconds);
    return { seconds, length: search.best.length };
  });
  return { plain, first, after, steps, longestStep, faults: faultsOf(task, bestLay(search)) };
}

function faultsOf({ ground, toLay }: LayTask, { placed, length }: Lay): number {
  const times = JUDGED_ACROSS / ground.across;
  const larger = ({ x, y }: Point): Point => ({ x: x * times, y: y * times });
  return layFaults(
    {
      ground: { across: JUDGED_ACROSS, kept: ground.kept.map((ring) => ring.map(larger)) },
      toLay: toLay.map((piece) => ({ ...piece, outline: piece.outline.map(larger) })),
    },
    { placed: placed.map((one) => ({ ...one, at: larger(one.at) })), length: length * times },
  ).length;
}

/** The process's own time, for others may be using the machine; the engine's housekeeping counts too. */
function coreSeconds(): number {
  return process.cpuUsage().user / 1e6;
}
