import { strFromU8, strToU8, type UnzipFileInfo, unzipSync, zipSync } from 'fflate';
import type { Garment } from '../../core/garment/garment';
import { knownParts } from '../../core/garment/known-parts';
import { readStoredGarment } from '../../core/garment/migrate';
import { photoIdsOf } from '../../core/garment/photo-ids';
import { readableVersions, readVersions, type StoredVersion } from '../../core/garment/version';
import { projectFileWords as words } from '../words/project-file';
import type { PhotoRow } from './database';
import { crc32, zipSums } from './zip-check';

/** The end of a project file's name. */
export const PROJECT_ENDING = '.inchsquare.zip';

/** Unpacked, a project file may not be larger than this: a dozen large photos and the drawing. */
const MOST_BYTES = 300 * 1024 * 1024;
const MOST_ENTRIES = 400;

/** And no drawing with its versions larger than this: a few kilobytes can be packed that take seconds to unpack and read. */
const MOST_TEXT_BYTES = 64 * 1024 * 1024;

/** A date for every entry, so that the same garment always makes the same file. Zip knows no time before 1980. */
const NO_DATE = new Date(1980, 0, 1, 12);

/** One garment, its versions and its pictures. */
export interface Project {
  readonly garment: Garment;
  readonly versions: readonly StoredVersion[];
  readonly photos: readonly PhotoRow[];
}

export type ProjectReading =
  | { readonly kind: 'project'; readonly project: Project; readonly missingPhotos: number }
  | { readonly kind: 'not-a-project' }
  | { readonly kind: 'broken' }
  | { readonly kind: 'too-large' }
  /** Made with a newer program; `shown` is what this one can show of it. */
  | { readonly kind: 'newer'; readonly shown?: Project }
  /** A field that this program does not know, as a newer one may have added. */
  | { readonly kind: 'unknown-field'; readonly shown?: Project }
  | { readonly kind: 'not-a-garment'; readonly where: string };

/**
 * One file with all of a garment: `garment.json` (the document as core/garment describes it), `versions.json` (what was
 * kept of it on the way), `photos.json` (name, type and size of each picture), `photos/<id>.<ending>` (its bytes,
 * untouched) and a page of plain words on what is inside.
 */
export function writeProject({ garment, versions, photos }: Project): Uint8Array {
  const stored = { level: 0, mtime: NO_DATE } as const;
  const packed = { level: 6, mtime: NO_DATE } as const;
  const about = photos.map(({ bytes: _, ...rest }) => rest);
  return zipSync({
    'read-me.txt': [strToU8(words.readMe), packed],
    'garment.json': [strToU8(JSON.stringify(garment, undefined, 1)), packed],
    ...(versions.length > 0 && { 'versions.json': [strToU8(JSON.stringify(versions)), packed] }),
    'photos.json': [strToU8(JSON.stringify(about, undefined, 1)), packed],
    ...Object.fromEntries(photos.map((photo) => [photoPath(photo), [new Uint8Array(photo.bytes), stored]])),
  });
}

/** Reads a project file back, trusting nothing in it. A picture that is missing does not hold the garment back. */
export function readProject(file: Uint8Array): ProjectReading {
  const isZip = file[0] === 0x50 && file[1] === 0x4b;
  if (!isZip) return { kind: 'not-a-project' };
  const size = { bytes: 0, entries: 0 };
  let entries: Record<string, Uint8Array>;
  try {
    entries = unzipSync(file, { filter: (entry) => isOurs(entry, size) });
    if (!isWhole(file, entries)) return { kind: 'broken' };
  } catch {
    return { kind: 'broken' };
  }
  if (size.bytes > MOST_BYTES || size.entries > MOST_ENTRIES) return { kind: 'too-large' };
  const document = entries['garment.json'];
  if (!document) return { kind: 'not-a-project' };
  const read = readStoredGarment(parsed(document));
  if (read.kind === 'newer') return { kind: 'newer', ...shownOf(entries) };
  if (read.kind === 'not-a-garment' && read.why === 'unknown-field') {
    return { kind: 'unknown-field', ...shownOf(entries) };
  }
  if (read.kind === 'not-a-garment') return read;
  const { garment } = read;
  const versions = versionsIn(entries, garment.id);
  const earlier = JSON.stringify(versions);
  const wanted = new Set(photoIdsOf(garment));
  const photos = photosIn(entries).filter(({ id }) => wanted.has(id) || earlier.includes(JSON.stringify(id)));
  const missingPhotos = [...wanted].filter((id) => !photos.some((photo) => photo.id === id)).length;
  return { kind: 'project', project: { garment, versions, photos }, missingPhotos };
}

/** What can be shown of a garment from a newer program, with its pictures; its versions are left in the file. */
function shownOf(entries: Record<string, Uint8Array>): { readonly shown?: Project } {
  const document = entries['garment.json'];
  const known = document && knownParts(parsed(document));
  if (!known) return {};
  const { garment } = known;
  const wanted = new Set(photoIdsOf(garment));
  const photos = photosIn(entries).filter(({ id }) => wanted.has(id));
  return { shown: { garment, versions: [], photos } };
}

/** Lets only our own entries through, and none once they would come to too much. */
function isOurs(entry: UnzipFileInfo, size: { bytes: number; entries: number }): boolean {
  if (!/^(garment\.json|versions\.json|photos\.json|photos\/[\w-]{1,64}\.[a-z]{1,8})$/.test(entry.name)) return false;
  size.entries += 1;
  const isTooLong = entry.name.endsWith('.json') && entry.originalSize > MOST_TEXT_BYTES;
  size.bytes += isTooLong ? Number.POSITIVE_INFINITY : entry.originalSize;
  return size.bytes <= MOST_BYTES && size.entries <= MOST_ENTRIES;
}

/** Whether what came out is what went in, by the sums in the file. */
function isWhole(file: Uint8Array, entries: Record<string, Uint8Array>): boolean {
  const sums = zipSums(file);
  return Object.entries(entries).every(([name, bytes]) => crc32(bytes) === sums.get(name));
}

/** Where a picture lies in the file; its ending lets other programs show it. */
function photoPath({ id, type }: Pick<PhotoRow, 'id' | 'type'>): string {
  const ending = /^image\/([a-z]{1,8})/.exec(type)?.[1] ?? 'bin';
  return `photos/${id}.${ending === 'jpeg' ? 'jpg' : ending}`;
}

/** The versions that can be opened. */
function versionsIn(entries: Record<string, Uint8Array>, garmentId: string): readonly StoredVersion[] {
  return readableVersions(readVersions(entries['versions.json'] ? parsed(entries['versions.json']) : [], garmentId));
}

function photosIn(entries: Record<string, Uint8Array>): PhotoRow[] {
  const about = entries['photos.json'] ? parsed(entries['photos.json']) : undefined;
  if (!Array.isArray(about)) return [];
  return about.flatMap((row: Partial<PhotoRow> | null) => {
    if (typeof row !== 'object' || row === null) return [];
    const { id, type, name, widthPx, heightPx } = row;
    if (typeof id !== 'string' || typeof type !== 'string' || typeof name !== 'string') return [];
    const bytes = entries[photoPath({ id, type })];
    if (!bytes) return [];
    if (!(typeof widthPx === 'number' && widthPx > 0 && typeof heightPx === 'number' && heightPx > 0)) return [];
    return [{ id, type, name, widthPx, heightPx, bytes: bytes.slice().buffer }];
  });
}

function parsed(bytes: Uint8Array): unknown {
  try {
    return JSON.parse(strFromU8(bytes));
  } catch {
    return undefined;
  }
}
