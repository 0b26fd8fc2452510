import type { Garment } from '../../core/garment/garment';
import { photoIdsOf } from '../../core/garment/photo-ids';
import { download, fileName } from './download';
import { getPhoto, photoIds } from './photos';
import { PROJECT_ENDING, writeProject } from './project-file';
import { versionsOf } from './versions';

/** Saves a garment with its versions and pictures as one file. Pictures that are not on this device are left out. */
export async function saveProject(garment: Garment): Promise<void> {
  const bytes = await projectBytes(garment);
  download(bytes.slice(), `${fileName(garment.name)}${PROJECT_ENDING}`, 'application/zip');
}

/** A garment with its versions and pictures as a project file. */
export async function projectBytes(garment: Garment): Promise<Uint8Array> {
  const versions = await versionsOf(garment.id);
  const earlier = JSON.stringify(versions);
  const spoken = (await photoIds()).filter((id) => earlier.includes(JSON.stringify(id)));
  const ids = [...new Set([...photoIdsOf(garment), ...spoken])];
  const photos = (await Promise.all(ids.map(getPhoto))).filter((photo) => photo !== undefined);
  return writeProject({ garment, versions, photos });
}
