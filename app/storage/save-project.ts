import type { Garment } from '../../core/garment/garment';
import { download, fileName } from './download';
import { getPhoto } from './photos';
import { PROJECT_ENDING, writeProject } from './project-file';

/** Saves a garment with its pictures as one file. Pictures that are not on this device are left out. */
export async function saveProject(garment: Garment): Promise<void> {
  const ids = [...new Set(garment.diagrams.map((diagram) => diagram.photoId))];
  const photos = (await Promise.all(ids.map(getPhoto))).filter((photo) => photo !== undefined);
  const bytes = writeProject({ garment, photos });
  download(bytes.slice(), `${fileName(garment.name)}${PROJECT_ENDING}`, 'application/zip');
}
