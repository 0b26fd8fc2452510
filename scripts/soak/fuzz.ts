import { paperFonts, soundProjects } from './bases';
import { type FuzzFigures, fuzzFiles } from './fuzz-files';

/** Tries so many spoilt files and spoilt runs of edits and writes what came of it; whether all went well. */
export async function fuzzTrial({
  files,
  runs,
  seed,
}: {
  readonly files: number;
  readonly runs: number;
  readonly seed: number;
}): Promise<boolean> {
  const [projects, fonts] = [soundProjects(), paperFonts()];
  const tell = (sentence: string) => console.log(sentence);
  const ofFiles = await fuzzFiles(projects, fonts, { from: seed, count: files, tell });
  said('files', ofFiles);
  return ofFiles.faults.length === 0;
}

function said(what: string, { faults, ...figures }: FuzzFigures): void {
  for (const fault of faults.slice(0, 50)) console.log(fault);
  console.log(JSON.stringify({ what, faults: faults.length, ...figures }));
}
