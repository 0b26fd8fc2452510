import type { Garment } from '../../core/garment/garment';
import type { GarmentCloth } from '../../core/garment/garment-cloth';
import { boxOfPoints } from '../../core/geometry/bounds';
import { DEGREE } from '../../core/units/degree';
import { clothWords as words } from '../words/cloth';
import { writeLength } from '../words/written';
import { laidName } from './names';
import type { Shown } from './shown-lay';

/** What a laid piece is called, with its number and how it is held. */
export function saidOf({ place, piece }: Shown, garment: Garment, cloth: GarmentCloth): string {
  const parts = [
    laidName(place.id, garment, cloth),
    words.copyOf(place.copy, piece.count),
    piece.onFold ? words.onFold : '',
    place.pinned ? words.pinned : '',
  ];
  return parts.filter((part) => part !== '').join(', ');
}

/** Where a piece lies, in numbers. */
export function placeSaid({ ring }: Shown, { shownIn }: Garment, { folded, shape }: GarmentCloth): string {
  const box = boxOfPoints(ring);
  const length = (mm: number) => writeLength(mm, { shownIn, step: 'eighth' });
  return words.place(
    length(box?.minX ?? 0),
    length(box?.minY ?? 0),
    folded === 'lengthwise' && !shape ? 'fold' : 'selvedge',
  );
}

/** How a piece is turned, where it may lie in more ways than one. */
export function laidWay({ piece, place }: Shown): string {
  const [first] = piece.stances;
  const stance = piece.stances[place.stance];
  if (!first || !stance || piece.stances.length < 2) return '';
  return words.way((stance.turn - first.turn) / DEGREE, stance.over === 'mirrored');
}
