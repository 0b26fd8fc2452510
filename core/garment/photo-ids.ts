import type { Garment } from './garment';

/** Every picture a garment speaks of: its diagrams, what was photographed at fittings, its cover. Each once. */
export function photoIdsOf({ diagrams, mockups = [], coverPhotoId }: Garment): string[] {
  const ids = [
    ...diagrams.map(({ photoId }) => photoId),
    ...mockups.flatMap(({ pinned }) => pinned.map(({ photoId }) => photoId)),
    coverPhotoId,
  ];
  return [...new Set(ids)].filter((id) => id !== undefined);
}
