// npm run bench -- lay [--only shirts,fu] [--seconds 10] [--seed 1] [file.json …]: how densely published sets of shapes are laid.
import type { LayTask } from '../core/cloth/lay-task';
import { ringArea } from '../core/geometry/polygon';
import { bundled } from './bundled';
import type { Figure } from './figure';
import { instanceIn, sharedInstances } from './lay.files';
import { type LayInstance, layInstances } from './lay.instances';
import type { LayRun } from './lay-run';

/** Seconds of one core after which the density is read; the first is what the greedy placings took. */
const MARKS = [0.5, 1, 10, 60];

/**
 * Densities in per cent at once and after so many seconds of processor time, laid in steps as a worker does. Beside each
 * the best published density; the greedy placings of the same set, and what no lay can pass, stand below.
 */
export async function layFigures(args: readonly string[]): Promise<Figure[]> {
  const after = (name: string) => (args.includes(name) ? args[args.indexOf(name) + 1] : undefined);
  const only = after('--only')?.split(',');
  const seconds = Number(after('--seconds') ?? 60);
  const seed = Number(after('--seed') ?? 1);
  const files = args.filter((arg) => arg.endsWith('.json')).map(instanceIn);
  const known = files.length > 0 ? files : [...layInstances, ...sharedInstances()];
  const chosen = known.filter(({ name }) => !only || only.includes(name));
  const marks = [...MARKS.filter((mark) => mark < seconds), seconds];
  const { layRun } = await bundled<typeof import('./lay-run')>('lay-run');
  return chosen.flatMap((instance) => {
    const task = taskOf(instance);
    return figuresOf(instance, task, layRun(task, marks, seed));
  });
}

function figuresOf(
  { name, height, best, greedy, swaps }: LayInstance,
  { toLay }: LayTask,
  { plain, first, after, steps, longestStep, faults }: LayRun,
): Figure[] {
  const areaBound = toLay.reduce((sum, { outline, count }) => sum + count * Math.abs(ringArea(outline)), 0) / height;
  const figures: Figure[] = [];
  const note = (what: string, value: number, unit: string, baseline?: number) => {
    const beside = baseline === undefined ? {} : { baseline, ratio: value / baseline };
    figures.push({ name: `lay_${name}_${what}`, value, unit, ...beside });
  };
  note('pct_plain', (100 * areaBound) / plain.length, '%');
  note('plain_ms', 1000 * plain.seconds, 'ms');
  note('pct_first', (100 * areaBound) / first.length, '%', greedy);
  note('first_ms', 1000 * first.seconds, 'ms');
  for (const { seconds, length } of after)
    note(`pct_${seconds}s`, (100 * areaBound) / length, '%', seconds < 1 ? greedy : best);
  const last = after[after.length - 1]?.length ?? first.length;
  note('length', last, '', areaBound);
  if (greedy !== undefined) note('pct_greedy', greedy, '%');
  if (swaps !== undefined) note('pct_greedy_swaps_30s', swaps, '%');
  note('faults', faults, '');
  note('steps', steps, '');
  note('step_ms_max', 1000 * longestStep, 'ms');
  return figures;
}

function taskOf({ height, shapes }: LayInstance): LayTask {
  const toLay = shapes.map(([count, turnsDeg, corners], index) => ({
    id: `p${index}`,
    count,
    stances: turnsDeg.map((degrees) => ({ turn: (-degrees * Math.PI) / 180 })),
    outline: corners.split(' ').map((corner) => {
      const [x = 0, y = 0] = corner.split(',').map(Number);
      return { x, y: -y };
    }),
  }));
  return { ground: { across: height, kept: [] }, toLay };
}
