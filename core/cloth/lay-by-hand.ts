/** Changes she makes to a lay: a piece moved, turned, pinned. Nothing is refused; what overlaps is said by the check. */
import type { KeptLay, KeptPlace } from '../garment/garment-cloth';
import { type Box, boxOfPoints } from '../geometry/bounds';
import type { Point } from '../geometry/point';
import type { LayTask, ToLay } from './lay-task';
import { placedOutline } from './stance-outline';

/** Which piece of a lay is meant. */
export interface PlaceKey {
  readonly id: string;
  readonly copy: number;
}

/** Whether a place is the one that is meant. */
export function isPlace(place: PlaceKey, key: PlaceKey | undefined): boolean {
  return place.id === key?.id && place.copy === key.copy;
}

/** The lay with a piece somewhere else; one held to the fold stays on it. */
export function movedTo(task: LayTask, lay: KeptLay, key: PlaceKey, at: Point): KeptLay {
  const held = pieceOf(task, key.id)?.onFold;
  const to = { x: held === 'across' ? 0 : at.x, y: held === 'along' ? 0 : at.y };
  return changed(task, lay, key, (place) => ({ ...place, at: to }));
}

/** The lay with a piece in the next way it may lie, about its middle; the same lay where it may lie in one way only. */
export function turned(task: LayTask, lay: KeptLay, key: PlaceKey): KeptLay {
  const piece = pieceOf(task, key.id);
  if (!piece || piece.stances.length < 2) return lay;
  return changed(task, lay, key, (place) => {
    const next = { ...place, stance: (place.stance + 1) % piece.stances.length };
    const [before, after] = [placedBox(piece, place), placedBox(piece, next)];
    if (!before || !after) return next;
    const at = {
      x: place.at.x + (before.maxX - before.minX - (after.maxX - after.minX)) / 2,
      y: place.at.y + (before.maxY - before.minY - (after.maxY - after.minY)) / 2,
    };
    return { ...next, at: { x: piece.onFold === 'across' ? 0 : at.x, y: piece.onFold === 'along' ? 0 : at.y } };
  });
}

/** The lay with a piece pinned where it lies, or free again. */
export function pinnedPlace(lay: KeptLay, key: PlaceKey, state: 'pinned' | 'free'): KeptLay {
  const placed = lay.placed.map((place): KeptPlace => {
    if (!isPlace(place, key)) return place;
    const { pinned: _, ...free } = place;
    return state === 'pinned' ? { ...free, pinned: true } : free;
  });
  return { ...lay, placed };
}

/** The box round a piece in its place. */
export function placedBox(piece: ToLay, place: KeptPlace): Box | undefined {
  return boxOfPoints(placedOutline(piece, place));
}

function changed(task: LayTask, lay: KeptLay, key: PlaceKey, change: (place: KeptPlace) => KeptPlace): KeptLay {
  const placed = lay.placed.map((place) => (isPlace(place, key) ? change(place) : place));
  const ends = placed.map((place) => {
    const piece = pieceOf(task, place.id);
    return (piece && placedBox(piece, place)?.maxX) ?? 0;
  });
  return { ...lay, placed, length: Math.max(0, ...ends) };
}

function pieceOf(task: LayTask, id: string): ToLay | undefined {
  return task.toLay.find((piece) => piece.id === id);
}
