import { strToU8, type UnzipFileInfo, unzipSync, zipSync } from 'fflate';
import { wholeShelfWords as words } from '../words/whole-shelf';
import { fileName } from './download';
import { PROJECT_ENDING } from './project-file';
import { crc32, zipSums } from './zip-check';

/** The end of the name of a file that holds a whole shelf. */
export const SHELF_ENDING = '.inchsquare-shelf.zip';

/** Together the garments of a shelf file may not be larger than this; each is held to what one garment may be as well. */
const MOST_BYTES = 1024 * 1024 * 1024;
const MOST_GARMENTS = 1000;

/** Zip knows no time before 1980; one date for every entry makes the same shelf the same file. */
const NO_DATE = new Date(1980, 0, 1, 12);

/** A garment in a shelf file: a project file as it is saved alone, not looked into yet. */
export interface Shelved {
  readonly name: string;
  readonly file: Uint8Array;
  readonly isPutAway: boolean;
}

export type ShelfReading =
  | { readonly kind: 'shelf'; readonly garments: readonly Shelved[] }
  /** A zip, or no zip at all, without garments in it. */
  | { readonly kind: 'not-a-shelf' }
  | { readonly kind: 'broken' }
  | { readonly kind: 'too-large' };

const OURS = /^(put-away\/)?[\p{L}\p{M}\p{N}-]{1,120}\.inchsquare\.zip$/u;

/**
 * One file with every garment of the shelf: project files, each of which can be taken out and opened alone, those put
 * away in a folder of their own, and a page of plain words on what is inside.
 */
export function writeShelf(garments: readonly Shelved[]): Uint8Array {
  const width = String(garments.length).length;
  const entries = garments.map(({ name, file, isPutAway }, index) => {
    const number = String(index + 1).padStart(width, '0');
    const path = `${isPutAway ? 'put-away/' : ''}${number}-${short(fileName(name))}${PROJECT_ENDING}`;
    return [path, [file, { level: 0, mtime: NO_DATE }]] as const;
  });
  return zipSync({ 'read-me.txt': [strToU8(words.readMe), { mtime: NO_DATE }], ...Object.fromEntries(entries) });
}

/** Whether garments are too many, or too much, to be read back from one file. */
export function areTooMuch(garments: readonly Shelved[]): boolean {
  const bytes = garments.reduce((sum, { file }) => sum + file.byteLength, 0);
  return isTooLarge({ bytes, garments: garments.length });
}

/** By letters, not by halves of them. */
function short(name: string): string {
  return [...name].slice(0, 80).join('');
}

/** Takes the garments out of a shelf file, each by itself whole or not: one that is damaged holds no other back. */
export function readShelf(file: Uint8Array): ShelfReading {
  if (!(file[0] === 0x50 && file[1] === 0x4b)) return { kind: 'not-a-shelf' };
  const size = { bytes: 0, garments: 0 };
  try {
    const sums = zipSums(file);
    const entries = unzipSync(file, { filter: (entry) => isOurs(entry, size) });
    if (size.garments === 0) return { kind: 'not-a-shelf' };
    if (isTooLarge(size)) return { kind: 'too-large' };
    const garments = Object.entries(entries).map(([path, bytes]) => ({
      name: nameIn(path),
      // Of a damaged garment nothing is handed on: it is refused by its name when it is read.
      file: crc32(bytes) === sums.get(path) ? bytes : DAMAGED,
      isPutAway: path.startsWith('put-away/'),
    }));
    return { kind: 'shelf', garments };
  } catch {
    return { kind: 'broken' };
  }
}

/** The beginning of a zip file that goes no further. */
const DAMAGED = strToU8('PK');

function isOurs(entry: UnzipFileInfo, size: { bytes: number; garments: number }): boolean {
  if (!OURS.test(entry.name)) return false;
  size.garments += 1;
  size.bytes += entry.originalSize;
  return !isTooLarge(size);
}

function isTooLarge({ bytes, garments }: { readonly bytes: number; readonly garments: number }): boolean {
  return bytes > MOST_BYTES || garments > MOST_GARMENTS;
}

/** What a garment is called by its file, before it is looked into. */
function nameIn(path: string): string {
  return path.replace(/^put-away\//, '').slice(0, -PROJECT_ENDING.length);
}
