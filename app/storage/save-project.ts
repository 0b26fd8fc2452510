import type { Garment } from '../../core/garment/garment';
import { photoIdsOf } from '../../core/garment/photo-ids';
import { download, fileName } from './download';
import { getPhoto, photoIds } from './photos';
import { PROJECT_ENDING, writeProject } from './project-file';
import { versionsOf } from './versions';

/** Saves a garment with its versions and pictures as one file. Pictures that are not on this device are left out. */
export async function saveProject(garment: Garment): Promise<'whole' | 'draft-alone'> {
  const { bytes, holds } = await savedBytes(garment);
  download(bytes.slice(), `${fileName(garment.name)}${PROJECT_ENDING}`, 'application/zip');
  return holds;
}

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
