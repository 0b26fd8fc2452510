import { layFaults } from '../core/cloth/lay-check';
import { bestLay, layStep, startLay } from '../core/cloth/lay-search';
import type { LayTask } from '../core/cloth/lay-task';
import { seededRandom } from '../core/cloth/seeded-random';

/** What the check overlooks, as shares of the strip's height: 0.01 mm² on cloth 1 m wide. */
const OVERLOOKED = { area: 1e-8, distance: 1e-6 };

/** How a laying went: seconds are of processor time. */
export interface LayRun {
  /** The first lay that is shown, and when it stood. */
  readonly first: { readonly length: number; readonly seconds: number };
  /** The length after so many seconds. */
  readonly after: readonly { readonly seconds: number; readonly length: number }[];
  readonly steps: number;
  readonly longestStep: number;
  readonly faults: number;
}

/** Lays for the longest of `marks` seconds in steps, as the worker does, and reads the length at each. */
export function layRun(task: LayTask, marks: readonly number[], seed: number): LayRun {
  const began = coreSeconds();
  const search = startLay(task, seededRandom(seed));
  if (search.kind !== 'search') throw new Error(`${search.kind}: ${search.ids.join(', ')}`);
  const first = { length: search.best.length, seconds: coreSeconds() - began };
  let steps = 0;
  let longestStep = 0;
  let said = '';
  const after = marks.map((seconds) => {
    for (; said !== 'shortest' && coreSeconds() - began < seconds; steps++) {
      const from = coreSeconds();
      said = layStep(search);
      longestStep = Math.max(longestStep, coreSeconds() - from);
    }
    return { seconds, length: search.best.length };
  });
  const { across } = task.ground;
  const overlooked = { area: OVERLOOKED.area * across ** 2, distance: OVERLOOKED.distance * across };
  return { first, after, steps, longestStep, faults: layFaults(task, bestLay(search), overlooked).length };
}

/** The process's own time, for others may be using the machine; the engine's housekeeping counts too. */
function coreSeconds(): number {
  return process.cpuUsage().user / 1e6;
}
