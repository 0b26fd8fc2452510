import type { Garment } from '../../core/garment/garment';
import { garmentOfVersion, nextVersion, type StoredVersion, type VersionHead } from '../../core/garment/version';
import { useGarment } from '../state/garment-store';
import { connected } from './connection';
import { database } from './database';

/** Every version of a garment, the oldest first. */
export async function versionsOf(garmentId: string): Promise<StoredVersion[]> {
  return connected(() => database.versions.where('garmentId').equals(garmentId).sortBy('number'));
}

/**
 * Keeps the garment as its next version. Two windows that keep one at the same moment get two numbers; a version is
 * never written over.
 */
export async function keepVersion(
  garment: Garment,
  head: Pick<VersionHead, 'name' | 'made' | 'note'>,
): Promise<StoredVersion> {
  refuseToReaders();
  return connected(() =>
    database.transaction('rw', database.versions, async () => {
      const there = await database.versions.where('garmentId').equals(garment.id).sortBy('number');
      const number = there.at(-1)?.number;
      const before = number === undefined ? undefined : garmentOfVersion(there, number);
      // Where the last one cannot be read the next is kept whole, and counts on.
      const version = nextVersion(
        garment,
        head,
        before && number !== undefined ? { number, garment: before } : undefined,
      );
      const counted = { ...version, number: (number ?? 0) + 1 };
      await database.versions.add(plain(counted));
      return counted;
    }),
  );
}

/** Gives a version another name or note. What it holds is never touched. */
export async function describeVersion(
  garmentId: string,
  number: number,
  said: Partial<Pick<VersionHead, 'name' | 'note'>>,
): Promise<void> {
  refuseToReaders();
  await connected(() => database.versions.update([garmentId, number], said));
}

/** Puts versions that came with a file beside a garment that is new here. */
export async function keepVersions(versions: readonly StoredVersion[]): Promise<void> {
  await connected(() => database.versions.bulkPut(versions.map(plain)));
}

/** Only the window a garment is worked on in may write. The rooms do not ask elsewhere, so to be asked is a fault. */
function refuseToReaders(): void {
  if (useGarment.getState().editing !== 'here') throw new Error('this garment is only looked at in this window');
}

/** As JSON: a key that stands for nothing would be kept by the browser and refused when read. */
function plain(version: StoredVersion): StoredVersion {
  return JSON.parse(JSON.stringify(version));
}
