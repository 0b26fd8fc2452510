// npm run soak -- kill [--times 300], fuzz [--files 20000], edits [--sequences 5000] or memory [--edits 6000], [--seed 7]:
// long trials of what must never be lost, let in, or pile up.
import { readNumber } from './read-number';

const trials: Readonly<Record<string, (args: readonly string[]) => Promise<boolean>>> = {
  kill: async (args) => (await import('./kill')).killTrial(readNumber(args, 'times', 300), readNumber(args, 'seed', 7)),
  fuzz: async (args) =>
    (await import('./fuzz')).fuzzTrial(readNumber(args, 'files', 20_000), readNumber(args, 'seed', 1)),
  edits: async (args) =>
    (await import('./fuzz')).editsTrial(readNumber(args, 'sequences', 5000), readNumber(args, 'seed', 1)),
  memory: async (args) =>
    (await import('./memory')).memoryTrial(readNumber(args, 'edits', 6000), readNumber(args, 'seed', 3)),
};

/** 0 when the trial passes, 1 when it does not. */
export async function main(args: readonly string[]): Promise<number> {
  const trial = trials[args[0] ?? ''];
  if (!trial) {
    console.error(`Say which trial: ${Object.keys(trials).join(', ')}.`);
    return 1;
  }
  return (await trial(args)) ? 0 : 1;
}
