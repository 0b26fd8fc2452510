import { paperFonts, soundProjects } from './bases';
import { fuzzFiles } from './fuzz-files';

/** Tries so many spoilt project files and writes what came of it; whether all went well. */
export async function fuzzTrial(count: number, from: number): Promise<boolean> {
  const tell = (sentence: string) => console.log(sentence);
  const { faults, ...figures } = await fuzzFiles(soundProjects(), paperFonts(), { from, count, tell });
  for (const fault of faults.slice(0, 50)) console.log(fault);
  console.log(JSON.stringify({ seed: from, faults: faults.length, ...figures }));
  return faults.length === 0;
}
