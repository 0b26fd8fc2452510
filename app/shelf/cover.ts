import type { Garment } from '../../core/garment/garment';
import { keepCover, keptCover } from '../storage/covers';
import type { CoverRow, ShelfRow } from '../storage/database';
import { getPhoto } from '../storage/photos';
import { takeForSaving } from '../storage/shelf';
import { drawnCover, drawnFrom, photoCover } from './make-cover';

/** Covers are made one after another: a large photo takes memory while it is opened. */
let last: Promise<unknown> = Promise.resolve();

/** The cover of a garment on the shelf, made where there is none that still holds; `undefined` when there is nothing to show. */
export async function coverOf(row: ShelfRow): Promise<CoverRow | undefined> {
  const kept = await keptCover(row.id).catch(() => undefined);
  if (kept?.changed === row.changed) return kept;
  const made = last.then(() => lookOver(row, kept));
  last = made.catch(() => undefined);
  return made;
}

async function lookOver(row: ShelfRow, kept: CoverRow | undefined): Promise<CoverRow | undefined> {
  const garment = await takeForSaving(row.id);
  if (!garment) return kept;
  const made = await makeCover(garment, kept);
  if (!made) return undefined;
  const { bytes, type, madeFrom } = made;
  const cover = { id: row.id, changed: row.changed, madeFrom, bytes, type };
  await keepCover(cover);
  return cover;
}

type Made = Pick<CoverRow, 'bytes' | 'type' | 'madeFrom'>;

/** From the chosen photo; from the pieces where none is chosen, or it is not here. What was made from the same is kept. */
async function makeCover(garment: Garment, kept: CoverRow | undefined): Promise<Made | undefined> {
  const { coverPhotoId } = garment;
  if (coverPhotoId !== undefined) {
    const madeFrom = `photo ${coverPhotoId}`;
    if (kept?.madeFrom === madeFrom) return kept;
    const photo = await getPhoto(coverPhotoId).catch(() => undefined);
    const made = photo && (await photoCover(new Blob([photo.bytes], { type: photo.type })));
    if (made) return { ...made, madeFrom };
  }
  const madeFrom = drawnFrom(garment);
  if (kept?.madeFrom === madeFrom) return kept;
  const drawn = await drawnCover(garment);
  return drawn && { ...drawn, madeFrom };
}
