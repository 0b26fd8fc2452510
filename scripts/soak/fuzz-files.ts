import { strFromU8, strToU8, unzipSync, zipSync } from 'fflate';
import { type Project, readProject, writeProject } from '../../app/storage/project-file';
import { seededRandom } from '../../core/cloth/seeded-random';
import type { PaperFonts } from '../../core/paper/pdf-document';
import { heldMb } from './held-heap';
import { asText, mutated, mutatedBytes } from './mutated';
import { plainFault } from './plain-fault';
import { type Longest, timed, workThrough } from './worked-through';

export interface FuzzFigures {
  readonly tried: number;
  /** Let in as sound, and then worked through. */
  readonly accepted: number;
  /** What went wrong, each with the seed that does it again. */
  readonly faults: readonly string[];
  readonly longest: Slowest;
}

/** Of each step how long it took at its longest, and which seed does that again. */
export type Slowest = Record<string, { readonly ms: number; readonly seed: number }>;

/** Nothing may take longer than this. */
const HANG_MS = 2000;

/** Reads so many spoilt project files and works through every garment that is let in. */
export async function fuzzFiles(
  projects: readonly Project[],
  fonts: PaperFonts,
  { from, count, tell }: { readonly from: number; readonly count: number; readonly tell?: (sentence: string) => void },
): Promise<FuzzFigures> {
  const files = projects.map((project) => writeProject(project));
  const longest: Slowest = {};
  const faults: string[] = [];
  let told = 0;
  let accepted = 0;
  for (let seed = from; seed < from + count; seed++) {
    const random = seededRandom(seed);
    const file = spoilt(files[Math.floor(random() * files.length)] as Uint8Array, random);
    const here: Longest = {};
    try {
      const read = timed(here, 'reading', () => readProject(file));
      if (read.kind === 'project') {
        accepted += 1;
        const fault = plainFault(read.project.garment);
        if (fault) faults.push(`${seed}: let in although ${fault}`);
        await workThrough(read.project.garment, fonts, here);
      }
    } catch (fault) {
      faults.push(`${seed}: ${fault instanceof Error ? fault.message : String(fault)}`);
    }
    noteTimes(seed, here, longest, faults);
    for (; told < faults.length; told++) tell?.(faults[told] as string);
    if ((seed + 1 - from) % 500 === 0)
      tell?.(`${seed + 1 - from} files, ${accepted} let in, ${faults.length} faults, ${heldMb()} MB held`);
  }
  return { tried: count, accepted, faults, longest };
}

/** Keeps the longest times, and names every step that took too long. */
export function noteTimes(seed: number, here: Longest, longest: Slowest, faults: string[]): void {
  for (const [step, ms] of Object.entries(here)) {
    if (ms > (longest[step]?.ms ?? 0)) longest[step] = { ms: Math.round(ms), seed };
    if (ms > HANG_MS) faults.push(`${seed}: ${step} took ${Math.round(ms)} ms`);
  }
}

/** A file with something wrong in its document, in what lies beside it, or in its bytes. */
function spoilt(file: Uint8Array, random: () => number): Uint8Array {
  if (random() < 0.15) return mutatedBytes(file, random);
  const entries: Record<string, Uint8Array> = unzipSync(file);
  const names = Object.keys(entries).filter((name) => name.endsWith('.json'));
  const name = random() < 0.8 ? 'garment.json' : (names[Math.floor(random() * names.length)] as string);
  const text = strFromU8(entries[name] as Uint8Array);
  entries[name] =
    random() < 0.1
      ? mutatedBytes(strToU8(text), random)
      : strToU8(asText(mutated(JSON.parse(text), random, { gentle: random() < 0.7 })));
  return zipSync(entries, { level: 1 });
}
