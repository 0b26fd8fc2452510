import type { Garment } from '../../core/garment/garment';
import { garmentChange } from '../../core/garment/garment-change';
import { photoIdsOf } from '../../core/garment/photo-ids';
import { garmentBesideOthers } from './bring-in';
import { noteCopy } from './copies';
import { flushJournal } from './journal';
import { photoIds, putPhoto } from './photos';
import { type Project, type ProjectReading, readProject } from './project-file';
import { projectBytes } from './save-project';
import { addToShelf, listShelf, putAway, takeForSaving } from './shelf';
import { versionsOf } from './versions';
import { areTooMuch, readShelf, type Shelved, writeShelf } from './whole-shelf';

/** What became of one garment that was to be brought in. */
export type BroughtIn =
  | { readonly kind: 'in'; readonly name: string; readonly missingPhotos: number }
  /** Another state of it was here; both are on the shelf now. */
  | { readonly kind: 'beside'; readonly name: string; readonly missingPhotos: number }
  /** It was here just as it is in the file. */
  | { readonly kind: 'here'; readonly name: string; readonly missingPhotos: number }
  | { readonly kind: 'refused'; readonly name: string; readonly why: Refusal };

export type Refusal = Exclude<ProjectReading['kind'], 'project'> | 'too-large-shelf' | 'not-kept' | 'not-readable';

type Progress = (done: number, count: number) => void;

/**
 * Lays every garment of the files on the shelf, of project files and of whole shelves alike. Nothing there is written
 * over, and one file that cannot be read holds no other back.
 */
export async function bringMany(files: readonly File[], onProgress: Progress = () => undefined): Promise<BroughtIn[]> {
  await flushJournal();
  const outcomes: BroughtIn[] = [];
  for (const [index, file] of files.entries()) {
    const opened = await garmentsIn(file);
    if (typeof opened === 'string') outcomes.push({ kind: 'refused', name: file.name, why: opened });
    else {
      for (const [at, shelved] of opened.entries()) {
        onProgress(files.length === 1 ? at : index, files.length === 1 ? opened.length : files.length);
        outcomes.push(await bringOne(shelved));
      }
    }
  }
  return outcomes;
}

/** The garments of one file, not looked into yet. */
async function garmentsIn(file: File): Promise<readonly Shelved[] | Refusal> {
  let bytes: Uint8Array;
  try {
    bytes = new Uint8Array(await file.arrayBuffer());
  } catch {
    return 'not-readable';
  }
  const shelf = readShelf(bytes);
  if (shelf.kind === 'shelf') return shelf.garments;
  if (shelf.kind === 'too-large') return 'too-large-shelf';
  return [{ name: file.name, file: bytes, isPutAway: false }];
}

async function bringOne({ name, file, isPutAway }: Shelved): Promise<BroughtIn> {
  const reading = readProject(file);
  if (reading.kind !== 'project') return { kind: 'refused', name, why: reading.kind };
  const { project } = reading;
  const called = project.garment.name;
  try {
    const here = await takeForSaving(project.garment.id);
    if (here && (await isSame(here, project))) {
      for (const photo of project.photos) await putPhoto(photo).catch(() => undefined);
      await noteCopy(here.id);
      return { kind: 'here', name: called, missingPhotos: await picturesLacking(here) };
    }
    const garment = await garmentBesideOthers(project);
    await addToShelf(garment);
    await noteCopy(garment.id);
    if (isPutAway) await putAway(garment.id, true);
    return { kind: here ? 'beside' : 'in', name: called, missingPhotos: await picturesLacking(garment) };
  } catch {
    return { kind: 'refused', name: called, why: 'not-kept' };
  }
}

/** How many of its pictures are not on this device: they were not in the file, or the device would not take them. */
async function picturesLacking(garment: Garment): Promise<number> {
  const kept = new Set(await photoIds());
  return photoIdsOf(garment).filter((id) => !kept.has(id)).length;
}

/** Whether a garment and its versions are here just as they are in a file. */
async function isSame(here: Garment, { garment, versions }: Project): Promise<boolean> {
  if (garmentChange(here, garment).length > 0) return false;
  return JSON.stringify(await versionsOf(here.id)) === JSON.stringify(versions);
}

export type WholeShelf =
  | {
      readonly kind: 'shelf';
      readonly file: Uint8Array;
      /** Of the garments in it. */
      readonly ids: readonly string[];
      /** The names of garments that cannot be read, and so are not in it. */
      readonly leftOut: readonly string[];
    }
  /** It could not be read back. */
  | { readonly kind: 'too-large' };

/** The whole shelf as one file. */
export async function wholeShelf(): Promise<WholeShelf> {
  await flushJournal();
  const garments: Shelved[] = [];
  const ids: string[] = [];
  const leftOut: string[] = [];
  for (const { id, name, isPutAway } of await listShelf()) {
    const garment = await takeForSaving(id);
    if (garment) {
      garments.push({ name: garment.name, file: await projectBytes(garment), isPutAway });
      ids.push(id);
    } else leftOut.push(name);
    if (areTooMuch(garments)) return { kind: 'too-large' };
  }
  return { kind: 'shelf', file: writeShelf(garments), ids, leftOut };
}
