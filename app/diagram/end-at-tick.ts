import { distance, type PhotoPoint } from '../../core/geometry/point';
import { inkNearby, usePictureInk } from '../photo/picture-ink';
import type { PointerAt } from '../table/tool';
import { useDesk } from './desk-store';
import type { Face } from './face';

/**
 * The tick, corner or end of a printed line that the pointer is within reach of; the place itself where there is none, while
 * the lines have not been read, and when she does not ask for it or holds Alt or Shift.
 */
export function endAtTick(place: PhotoPoint, face: Face, { world, reach, free }: PointerAt): PhotoPoint {
  const { ink } = usePictureInk.getState();
  const [here, beside] = [face.toPhoto(world), face.toPhoto({ x: world.x + reach, y: world.y })];
  if (!useDesk.getState().toTicks || free || ink.kind !== 'read' || !here || !beside) return place;
  const found = inkNearby(ink.key, place, distance(here, beside));
  return found && found.what !== 'line' ? found.at : place;
}
