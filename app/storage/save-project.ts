import type { Garment } from '../../core/garment/garment';
import { photoIdsOf } from '../../core/garment/photo-ids';
import { lastCopy, noteCopy } from './copies';
import { fileName } from './download';
import { getPhoto, photoIds } from './photos';
import { PROJECT_ENDING, writeProject } from './project-file';
import { type Saved, saveFile } from './save-file';
import { versionsOf } from './versions';

/** Saves a garment with its versions and pictures as one file. Pictures that are not on this device are left out. */
export async function saveProject(garment: Garment): Promise<SavedProject> {
  const last = await lastCopy(garment.id).catch(() => undefined);
  let holds: SavedProject['holds'] = 'whole';
  const make = async () => {
    const made = await savedBytes(garment);
    holds = made.holds;
    return made.bytes;
  };
  const saved = await saveFile({ name: fileName(garment.name), ending: PROJECT_ENDING }, make, last?.file);
  if (holds === 'whole') await noteCopy(garment.id, saved.to === 'folder' ? saved.file : undefined);
  return { ...saved, holds };
}

/** Where a garment was saved, and whether all of it. */
export type SavedProject = Saved & { readonly holds: 'whole' | 'draft-alone' };

/** A garment with its versions and pictures as a project file. Throws when the browser's store cannot be read. */
export async function projectBytes(garment: Garment): Promise<Uint8Array> {
  const versions = await versionsOf(garment.id);
  const earlier = JSON.stringify(versions);
  const spoken = (await photoIds()).filter((id) => earlier.includes(JSON.stringify(id)));
  const ids = [...new Set([...photoIdsOf(garment), ...spoken])];
  const photos = (await Promise.all(ids.map(getPhoto))).filter((photo) => photo !== undefined);
  return writeProject({ garment, versions, photos });
}

/** Where the browser's store cannot be read the draft itself, and the pictures still in memory, are saved all the same. */
async function savedBytes(garment: Garment): Promise<{ bytes: Uint8Array; holds: 'whole' | 'draft-alone' }> {
  try {
    return { bytes: await projectBytes(garment), holds: 'whole' };
  } catch {
    const photos = await Promise.all(photoIdsOf(garment).map((id) => getPhoto(id).catch(() => undefined)));
    const there = photos.filter((photo) => photo !== undefined);
    return { bytes: writeProject({ garment, versions: [], photos: there }), holds: 'draft-alone' };
  }
}
