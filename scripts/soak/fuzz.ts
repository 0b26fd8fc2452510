import { paperFonts, soundProjects } from './bases';
import { fuzzEdits } from './fuzz-edits';
import { fuzzFiles } from './fuzz-files';

const tell = (sentence: string) => console.log(sentence);

/** Tries so many spoilt project files and writes what came of it; whether all went well. */
export async function fuzzTrial(count: number, from: number): Promise<boolean> {
  return told(from, await fuzzFiles(soundProjects(), paperFonts(), { from, count, tell }));
}

/** Tries so many spoilt sequences of edits and writes what came of it; whether all went well. */
export async function editsTrial(count: number, from: number): Promise<boolean> {
  const garments = soundProjects().map(({ garment }) => garment);
  return told(from, await fuzzEdits(garments, paperFonts(), { from, count, tell }));
}

function told(seed: number, { faults, ...figures }: { readonly faults: readonly string[] }): boolean {
  console.log(JSON.stringify({ seed, faults: faults.length, ...figures }));
  return faults.length === 0;
}
