// npm run pages -- <garment file> --out pages.pdf [--paper a4] [--turn] [--squares]: pages without a browser.
import { readFile, writeFile } from 'node:fs/promises';
import { resolve } from 'node:path';
import { type Project, readProject } from '../app/storage/project-file';
import { paperWords } from '../app/words/paper';
import { paperSheetWords } from '../app/words/paper-sheet';
import type { Garment } from '../core/garment/garment';
import { readStoredGarment } from '../core/garment/migrate';
import { PAPER_SIZES, type PaperSize } from '../core/garment/sheet-choice';
import { versionSaid } from '../core/garment/version-said';
import { patternPdf } from '../core/paper/pattern-pdf';

const HOW = `npm run pages -- <garment file> --out pages.pdf [--paper ${PAPER_SIZES.join('|')}] [--turn] [--squares]`;

/** What a person typed wrongly, or a file that cannot be used: told in one sentence, without a trace. */
class Refused extends Error {}

interface Wanted {
  readonly file: string;
  readonly out: string;
  readonly paper: PaperSize | undefined;
  readonly isTurned: boolean;
  readonly hasSquares: boolean;
}

/** Makes the pages; 0 when they are written, 1 when something typed or read is at fault. */
export async function main(args: readonly string[]): Promise<number> {
  try {
    const wanted = readArguments(args);
    const read = await readGarmentFile(wanted.file);
    const garment = asWanted(read.garment, wanted);
    const made = await patternPdf({
      garment,
      what: wanted.hasSquares ? 'both' : 'pages',
      version: versionSaid(read.versions, garment),
      words: paperSheetWords(garment.shownIn, garment.paper.step),
      fonts: { plain: await font('dejavu-sans.ttf'), bold: await font('dejavu-sans-bold.ttf') },
      today: new Date().toISOString().slice(0, 10),
    });
    if (made.kind === 'nothing-to-print') {
      throw new Refused(
        made.why === 'no-piece'
          ? 'There is no piece in this garment yet.'
          : 'The margins and the overlap leave no room on this paper.',
      );
    }
    if (made.kind === 'stopped') return 1;
    await writeFile(wanted.out, made.bytes).catch(() => {
      throw new Refused(`${wanted.out} cannot be written.`);
    });
    for (const { name } of made.leftOut)
      console.log(`Not in it: ${name || 'a piece without a name'}. ${paperWords.tooLarge}`);
    console.log(`${made.pages} pages for ${garment.paper.size} are in ${wanted.out}. Print at 100 %, then measure.`);
    return 0;
  } catch (error) {
    if (!(error instanceof Refused)) throw error;
    console.error(error.message);
    return 1;
  }
}

function readArguments(args: readonly string[]): Wanted {
  const rest = [...args];
  const take = (name: string): string | undefined => {
    const index = rest.indexOf(name);
    if (index < 0) return undefined;
    const [, value] = rest.splice(index, 2);
    if (value === undefined || value.startsWith('--')) throw new Refused(`${name} needs a value: ${HOW}`);
    return value;
  };
  const has = (name: string): boolean => {
    const index = rest.indexOf(name);
    if (index >= 0) rest.splice(index, 1);
    return index >= 0;
  };
  const out = take('--out');
  const paper = take('--paper')?.toLowerCase();
  const [isTurned, hasSquares] = [has('--turn'), has('--squares')];
  const size = PAPER_SIZES.find((one) => one === paper);
  if (paper !== undefined && !size)
    throw new Refused(`No paper is called ${paper}; there is ${PAPER_SIZES.join(', ')}.`);
  const [file, ...unknown] = rest;
  if (unknown[0] !== undefined) throw new Refused(`${unknown[0]} is not understood: ${HOW}`);
  if (file === undefined || file.startsWith('--')) throw new Refused(`Say which garment: ${HOW}`);
  if (out === undefined) throw new Refused(`Say where the pages go, with --out: ${HOW}`);
  // npm runs this in the project's folder; paths are meant from where the command was typed.
  const from = process.env.INIT_CWD ?? '.';
  return { file: resolve(from, file), out: resolve(from, out), paper: size, isTurned, hasSquares };
}

async function readGarmentFile(path: string): Promise<Pick<Project, 'garment' | 'versions'>> {
  const bytes = await readFile(path).catch(() => {
    throw new Refused(`${path} cannot be read.`);
  });
  const isZip = bytes[0] === 0x50 && bytes[1] === 0x4b;
  const read = isZip ? readProject(new Uint8Array(bytes)) : readStoredGarment(parsed(bytes.toString('utf8')));
  switch (read.kind) {
    case 'project':
      return read.project;
    case 'garment':
      return { garment: read.garment, versions: [] };
    case 'newer':
      throw new Refused(`${path} was written by a newer Inchsquare.`);
    case 'unknown-field':
      throw new Refused(`${path} holds something this Inchsquare does not know; a newer one may have written it.`);
    case 'not-a-garment':
      throw new Refused(`${path} is no garment: something is wrong at ${read.where || 'its start'}.`);
    case 'too-large':
      throw new Refused(`${path} is too large to be a garment.`);
    case 'broken':
      throw new Refused(`${path} is damaged and cannot be unpacked.`);
    case 'not-a-project':
      throw new Refused(`${path} holds no garment.`);
  }
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}

function asWanted(garment: Garment, { paper, isTurned }: Wanted): Garment {
  const size = paper ?? garment.paper.size;
  return { ...garment, paper: { ...garment.paper, size, turned: isTurned ? 'sideways' : garment.paper.turned } };
}

async function font(name: string): Promise<Uint8Array> {
  return new Uint8Array(await readFile(new URL(`../public/fonts/${name}`, import.meta.url)));
}
