import type { PhotoRow } from '../app/storage/database';
import { withFirstDrawn } from '../core/garment/first-drawn';
import type { Garment } from '../core/garment/garment';
import { moveCorner } from '../core/garment/move-point';
import { withNamedStep } from '../core/garment/named-step';
import { nextVersion, type StoredVersion } from '../core/garment/version';
import { withPiece } from '../core/garment/with-piece';
import { sampleGarment } from './sample-garment';

export interface LongHistory {
  readonly garment: Garment;
  readonly versions: readonly StoredVersion[];
  /** The garment of every version. */
  readonly garments: readonly Garment[];
  readonly photos: readonly PhotoRow[];
}

/** Photos at fittings come with every so many versions. */
const PHOTO_EVERY = 10;
const PHOTO_BYTES = 300_000;

/**
 * So many versions of a garment of six gores, three changes of a piece between one and the next, and a mock-up with a
 * photo of its fitting with every tenth.
 */
export function longHistory(count: number, photoBytes = PHOTO_BYTES): LongHistory {
  const versions: StoredVersion[] = [];
  const garments: Garment[] = [];
  const photos: PhotoRow[] = [];
  let garment = firstOf(sampleGarment(6));
  for (let number = 1; number <= count; number++) {
    for (let step = 0; step < 3; step++) garment = changed(garment, number * 3 + step);
    if (number % PHOTO_EVERY === 0) {
      const photo = photoRow(`photo-${number}`, photoBytes);
      photos.push(photo);
      garment = withFitting(garment, number, photo.id);
    }
    const last = garments.at(-1);
    const head = { name: `fitting ${number}`, made: '2026-11-07', note: `what was seen at fitting ${number}` };
    versions.push(nextVersion(garment, head, last && { number: number - 1, garment: last }));
    garments.push(garment);
  }
  return { garment, versions, garments, photos };
}

function firstOf(garment: Garment): Garment {
  return withFirstDrawn({ ...garment, pieces: [], rings: [] }, garment, { past: [], time: 0 });
}

function changed(garment: Garment, index: number): Garment {
  const piece = garment.pieces[index % garment.pieces.length];
  const corner = piece?.corners[index % piece.corners.length];
  if (!piece || !corner) return garment;
  const at = { x: corner.at.x + ((index % 5) - 2) * 0.37, y: corner.at.y + ((index % 3) - 1) * 0.53 };
  const after = withPiece(garment, piece.id, (one) => moveCorner(one, corner.id, at));
  return withNamedStep(garment, after, { label: 'moved a point', time: 1_790_000_000_000 + index * 60_000 });
}

function withFitting(garment: Garment, version: number, photoId: string): Garment {
  const pieceIds = garment.pieces.slice(0, 1).map(({ id }) => id);
  const mockup = {
    id: `mock-up-${version}`,
    name: `mock-up ${version}`,
    made: '2026-11-07',
    version,
    mark: 'AAAAA',
    note: '',
    pinned: [
      {
        id: `pinned-${version}`,
        what: { kind: 'length', pieceIds, at: { kind: 'hem' }, by: -11 },
        side: 'both',
        note: '',
        photoId,
        state: { kind: 'noted' },
      } as const,
    ],
  };
  return { ...garment, mockups: [...(garment.mockups ?? []), mockup] };
}

/** Bytes that do not pack, as those of a photo do not. */
function photoRow(id: string, size: number): PhotoRow {
  let state = 48271;
  const bytes = Uint8Array.from({ length: size }, () => {
    state = (state * 48271) % 2147483647;
    return state & 255;
  });
  return { id, bytes: bytes.buffer, type: 'image/jpeg', name: `${id}.jpg`, widthPx: 1200, heightPx: 1600 };
}
