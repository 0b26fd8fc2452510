import type { Diagram } from '../../core/garment/diagram';
import { newId } from '../state/new-id';
import { getPhoto } from '../storage/photos';
import { photoWork } from '../workers/photo-workers';
import { type PictureTrouble, picturesOf, putPictures, type ReadyPicture } from './picture-store';

/** A file opened for looking at, whatever becomes of it. */
export async function openFile(file: Blob): Promise<ReadyPicture | PictureTrouble> {
  const key = newId();
  const answer = await photoWork.call('open', { key, file });
  if (answer.kind === 'opened') return { ...answer, file, key };
  return answer.kind === 'broken' || answer.kind === 'stopped' ? { kind: 'no-memory' } : answer;
}

const opening = new Set<string>();

/** Brings the picture of a diagram into memory, once, however often it is asked. */
export async function ensurePhoto(diagram: Diagram): Promise<void> {
  const { photo, trouble } = picturesOf(diagram.id);
  if (photo || trouble || opening.has(diagram.id)) return;
  opening.add(diagram.id);
  const opened = await storedPicture(diagram.photoId);
  opening.delete(diagram.id);
  putPictures(diagram.id, opened.kind === 'opened' ? { photo: opened } : { trouble: opened });
}

async function storedPicture(photoId: string): Promise<ReadyPicture | PictureTrouble> {
  try {
    const stored = await getPhoto(photoId);
    return stored ? await openFile(new Blob([stored.bytes], { type: stored.type })) : { kind: 'missing' };
  } catch {
    return { kind: 'missing' };
  }
}
