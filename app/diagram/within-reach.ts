/** What of a diagram lies within the pointer's reach on its picture. */
import type { Diagram, KnownLength } from '../../core/garment/diagram';
import { distance, type PhotoPoint } from '../../core/geometry/point';
import { useTable } from '../state/table-store';
import type { PointerAt } from '../table/tool';
import type { SidePlace } from './change-diagram';
import { cornerNumbers } from './desk-store';
import type { Face } from './face';

/** Whether a known length is the one chosen now. */
export function isChosen(known: KnownLength): boolean {
  const { chosen } = useTable.getState();
  return chosen.kind === 'known-length' && chosen.knownLengthId === known.id;
}

/** Corners are only to be moved on the photo as taken: on the squared picture the ground would move with them. */
export function cornerAt(diagram: Diagram, face: Face, at: PointerAt): (typeof cornerNumbers)[number] | undefined {
  if (diagram.squareUp.kind !== 'rectangle' || face.kind !== 'photo') return undefined;
  const { corners } = diagram.squareUp;
  // The handle is larger than the pointer's reach, and whatever is in sight can be taken.
  const reach = at.reach * 2;
  let best: (typeof cornerNumbers)[number] | undefined;
  for (const number of cornerNumbers) {
    const away = distance(corners[number], at.world);
    if (away <= reach && (best === undefined || away < distance(corners[best], at.world))) best = number;
  }
  return best;
}

/** The places that curved sides pass through, side by side; none where they are not followed. */
export function throughOf({ squareUp }: Diagram): readonly (readonly PhotoPoint[])[] {
  return squareUp.kind === 'rectangle' && squareUp.followed?.kind === 'sides' ? squareUp.followed.through : [];
}

/** The place of a curved side nearest to the pointer, within reach, on the photo as taken. */
export function sidePlaceAt(
  diagram: Diagram,
  face: Face,
  at: PointerAt,
): { readonly place: SidePlace; readonly at: PhotoPoint } | undefined {
  if (face.kind !== 'photo') return undefined;
  const near = throughOf(diagram)
    .flatMap((places, side) => places.map((place, index) => ({ place: { side: side as 0, index }, at: place })))
    .filter((each) => distance(each.at, at.world) <= at.reach * 1.5);
  return near.sort((a, b) => distance(a.at, at.world) - distance(b.at, at.world))[0];
}

/** The end of a known length nearest to the pointer, within reach. */
export function lengthEndAt(
  diagram: Diagram,
  face: Face,
  at: PointerAt,
): { readonly known: KnownLength; readonly which: 'from' | 'to' } | undefined {
  let best: { known: KnownLength; which: 'from' | 'to' } | undefined;
  let nearest = at.reach * 1.5;
  // The chosen one comes last, and so is found where ends of several meet.
  for (const known of diagram.knownLengths.toSorted((a, b) => Number(isChosen(a)) - Number(isChosen(b)))) {
    for (const which of ['from', 'to'] as const) {
      const end = face.toWorld(known[which]);
      const away = end ? distance(end, at.world) : Number.POSITIVE_INFINITY;
      if (away > nearest) continue;
      nearest = away;
      best = { known, which };
    }
  }
  return best;
}
