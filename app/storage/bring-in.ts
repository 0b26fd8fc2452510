import type { Garment } from '../../core/garment/garment';
import { lindenGarment } from '../demo/linden-garment';
import { lindenPhotoSize } from '../demo/linden-panel';
import { useGarment } from '../state/garment-store';
import { useKept } from '../state/kept-store';
import { newId } from '../state/new-id';
import { noteCopy } from './copies';
import { database } from './database';
import { holdForEditing, letGoOfOthers, onlyLook } from './editing-lock';
import { flushJournal, keepNew, layBeside, pendingRows } from './journal';
import { isReplayed, lookAtGarment, type Opened, takeFromShelf } from './open-garment';
import { getPhoto, hasSameBytes, holdPhoto, keepOrHoldPhoto } from './photos';
import { type Project, type ProjectReading, readProject } from './project-file';
import { keepVersions } from './versions';

/** Puts a new garment on the shelf and on the table. Where the device takes nothing it lies on the table all the same. */
export async function startGarment(garment: Garment): Promise<void> {
  await flushJournal();
  await holdForEditing(garment.id);
  keepNew(garment);
  useGarment.getState().open(garment);
  letGoOfOthers();
  await flushJournal();
}

/** Takes a garment from the shelf to the table; what comes back says how that went. */
export async function openFromShelf(id: string): Promise<Opened> {
  await flushJournal();
  return putOnTable(id, await holdForEditing(id));
}

/**
 * Takes the right to change the garment on the table from the window that has it. What was done here and is still not on
 * the device would be lost under what is there; it is laid beside, and is what she goes on with.
 */
export async function editHere(): Promise<Opened> {
  await flushJournal();
  const { garment } = useGarment.getState();
  if (!garment) return { kind: 'missing' };
  if (useGarment.getState().editing === 'here') return lookAtGarment(garment.id);
  if (pendingRows(garment.id).length > 0) return layBeside() ?? { kind: 'missing' };
  return putOnTable(garment.id, await holdForEditing(garment.id, { from: 'another-window' }));
}

/** A garment that cannot be opened leaves the one on the table there, and held for this window. */
async function putOnTable(id: string, editing: 'here' | 'elsewhere'): Promise<Opened> {
  try {
    return await taken(id, editing);
  } finally {
    letGoOfOthers();
  }
}

async function taken(id: string, editing: 'here' | 'elsewhere'): Promise<Opened> {
  const { storeIsNewer } = useKept.getState();
  const opened = await (editing === 'here' && !storeIsNewer ? takeFromShelf(id) : lookAtGarment(id));
  if (!isReplayed(opened)) return opened;
  useGarment.getState().open(opened.garment, opened);
  if (storeIsNewer) useGarment.getState().setEditing('newer');
  else if (editing === 'elsewhere') onlyLook();
  else void flushJournal();
  return opened;
}

/** Reads a project file onto the shelf and the table. A garment that is on the shelf already comes in beside it. */
export async function openProjectFile(file: File): Promise<ProjectReading> {
  const bytes = new Uint8Array(await file.arrayBuffer());
  const reading = readProject(bytes);
  if (reading.kind === 'project') {
    const garment = await garmentBesideOthers(reading.project);
    await startGarment(garment);
    await noteCopy(garment.id);
  } else if ('shown' in reading) {
    await showNewer(file, bytes, reading.shown);
  }
  return reading;
}

/**
 * Shows what can be shown of a garment that a newer program made. Nothing of it is kept or changed here: it lies on the
 * table under an id of its own until another is taken up, and the file can be saved on as it came.
 */
async function showNewer(file: File, bytes: Uint8Array, { garment, photos }: Project): Promise<void> {
  await flushJournal();
  const id = newId();
  await holdForEditing(id);
  for (const photo of photos) holdPhoto(photo);
  useGarment.getState().open({ ...garment, id });
  letGoOfOthers();
  useGarment.getState().setEditing('newer');
  useKept.setState({ asItCame: { garmentId: id, name: file.name, bytes } });
}

/** The garment of a file with its pictures kept, under ids that nothing else on this device has. */
export async function garmentBesideOthers({ garment, versions, photos }: Project): Promise<Garment> {
  const renamed = new Map<string, string>();
  for (const photo of photos) {
    const other = await getPhoto(photo.id).catch(() => undefined);
    if (other && hasSameBytes(other, photo)) continue;
    const id = other ? newId() : photo.id;
    renamed.set(photo.id, id);
    await keepOrHoldPhoto({ ...photo, id });
  }
  const id = (await isHere(garment.id)) ? newId() : garment.id;
  const fresh = <Part>(part: Part): Part => withFreshIds(part, renamed, garment.id, id);
  await keepVersions(versions.map(fresh)).catch(() => undefined);
  return { ...fresh(garment), id };
}

/** The same with pictures, and the garment itself, under the ids they have here. */
function withFreshIds<Part>(part: Part, photos: ReadonlyMap<string, string>, garmentId: string, id: string): Part {
  const names = new Map([...photos, [garmentId, id]]);
  if ([...names].every(([old, now]) => old === now)) return part;
  const keys = new Set(['photoId', 'coverPhotoId', 'garmentId']);
  return JSON.parse(JSON.stringify(part), (key, value) => (keys.has(key) ? (names.get(value) ?? value) : value));
}

async function isHere(id: string): Promise<boolean> {
  if (useGarment.getState().garment?.id === id) return true;
  const count = await database.snapshots
    .where('garmentId')
    .equals(id)
    .count()
    .catch(() => 0);
  return count > 0;
}

/** The demo garment, fresh, with its picture from the program itself. */
export async function startDemo(today: string): Promise<string> {
  const answer = await fetch('./demo/linden-plate.jpg');
  const photoId = newId();
  await keepOrHoldPhoto({
    id: photoId,
    bytes: await answer.arrayBuffer(),
    type: 'image/jpeg',
    name: 'linden-plate.jpg',
    ...lindenPhotoSize,
  });
  const garment = lindenGarment({ newId, today, photoId });
  await startGarment(garment);
  return garment.id;
}
