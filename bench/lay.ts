// npm run bench -- lay [--only shirts,fu] [--seconds 10] [--seed 1] [file.json …]: how densely published sets of shapes are laid.
import { readFileSync } from 'node:fs';
import { layFaults } from '../core/cloth/lay-check';
import { bestLay, layStep, startLay } from '../core/cloth/lay-search';
import type { LayTask } from '../core/cloth/lay-task';
import { seededRandom } from '../core/cloth/seeded-random';
import { ringArea } from '../core/geometry/polygon';
import type { Figure } from './figure';
import { type LayInstance, layInstances } from './lay.instances';

/** Seconds of one core after which the density is read. */
const MARKS = [1, 2, 10, 30, 60];

/** What the check overlooks, as shares of the strip's height: 0.01 mm² on cloth 1 m wide. */
const OVERLOOKED = { area: 1e-8, distance: 1e-6 };

/**
 * Densities in per cent after so many seconds of processor time (the machine may be shared), laid in steps as a worker
 * does. Beside each the best published density, and the greedy placings of the same set.
 */
export async function layFigures(args: readonly string[]): Promise<Figure[]> {
  const after = (name: string) => (args.includes(name) ? args[args.indexOf(name) + 1] : undefined);
  const only = after('--only')?.split(',');
  const seconds = Number(after('--seconds') ?? 60);
  const seed = Number(after('--seed') ?? 1);
  const files = args.filter((arg) => arg.endsWith('.json')).map(instanceIn);
  const chosen = files.length > 0 ? files : layInstances.filter(({ name }) => !only || only.includes(name));
  return chosen.flatMap((instance) => figuresOf(instance, { seconds, seed }));
}

function figuresOf(
  instance: LayInstance,
  { seconds, seed }: { readonly seconds: number; readonly seed: number },
): Figure[] {
  const { name, height, best, greedy, swaps } = instance;
  const task = taskOf(instance);
  const area = task.toLay.reduce((sum, { outline, count }) => sum + count * Math.abs(ringArea(outline)), 0);
  const began = coreSeconds();
  const search = startLay(task, seededRandom(seed));
  if (search.kind !== 'search') throw new Error(`${name}: ${search.kind} ${search.ids.join(', ')}`);
  const figures: Figure[] = [];
  const note = (when: string) => {
    const value = (100 * area) / height / search.best.length;
    const beside = best === undefined ? {} : { baseline: best, ratio: value / best };
    figures.push({ name: `lay_${name}_pct_${when}`, value, unit: '%', ...beside });
  };
  note('first');
  figures.push({ name: `lay_${name}_first_s`, value: coreSeconds() - began, unit: 's' });
  const marks = MARKS.filter((mark) => mark <= seconds);
  if (!marks.includes(seconds)) marks.push(seconds);
  let steps = 0;
  let longest = 0;
  for (const mark of marks) {
    for (let said = ''; said !== 'shortest' && coreSeconds() - began < mark; steps++) {
      const from = coreSeconds();
      said = layStep(search);
      longest = Math.max(longest, coreSeconds() - from);
    }
    note(`${mark}s`);
  }
  const overlooked = { area: OVERLOOKED.area * height ** 2, distance: OVERLOOKED.distance * height };
  const faults = layFaults(task, bestLay(search), overlooked);
  figures.push({ name: `lay_${name}_faults`, value: faults.length, unit: '' });
  figures.push({ name: `lay_${name}_steps`, value: steps, unit: '' });
  figures.push({ name: `lay_${name}_step_ms_max`, value: 1000 * longest, unit: 'ms' });
  if (greedy !== undefined) figures.push({ name: `lay_${name}_pct_greedy`, value: greedy, unit: '%' });
  if (swaps !== undefined) figures.push({ name: `lay_${name}_pct_greedy_swaps_30s`, value: swaps, unit: '%' });
  return figures;
}

function coreSeconds(): number {
  return process.cpuUsage().user / 1e6;
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

/** The set in a file of the schema `nesting-instance/1`. */
function instanceIn(path: string): LayInstance {
  const { name, strip, pieces } = JSON.parse(readFileSync(path, 'utf8')) as {
    readonly name: string;
    readonly strip: { readonly height: number };
    readonly pieces: readonly {
      readonly quantity: number;
      readonly rotationsDeg: readonly number[];
      readonly vertices: readonly (readonly [number, number])[];
    }[];
  };
  const shapes = pieces.map(({ quantity, rotationsDeg, vertices }) => {
    return [quantity, rotationsDeg, vertices.map((corner) => corner.join(',')).join(' ')] as const;
  });
  return { name, height: strip.height, shapes };
}
