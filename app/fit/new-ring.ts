import { bodiceLevels, proposedRing } from '../../core/fit/default-ring';
import type { Garment } from '../../core/garment/garment';
import { currentSet } from '../../core/garment/measure-value';
import { addRing } from '../../core/garment/ring-edits';
import { useGarment } from '../state/garment-store';
import { newId } from '../state/new-id';
import { say } from '../ui/say';
import { fitWords as words } from '../words/fit';
import { useFit } from './fit-store';

/** Where the pieces of a ring lie. */
export type RingSide = 'below' | 'above';

/**
 * Adds a ring of the pieces that have a waist and go round in no other ring, with the levels usual below the waist or
 * above it, and looks at it.
 */
export function addNewRing(side: RingSide): void {
  const { garment, edit } = useGarment.getState();
  if (!garment) return;
  const ring = newRing(garment, side);
  edit(words.ringAddedLabel, (before) => addRing(before, ring));
  if (useGarment.getState().garment === garment) return;
  useFit.setState({ ringId: ring.id });
  if (ring.members.length === 0) say(words.noWaistNamed);
  const hasBust = ring.levels.some(({ girth }) => girth === 'bust');
  if (side === 'above' && !hasBust) say(words.bustLeftOut);
}

function newRing(garment: Garment, side: RingSide) {
  const name = words.ringNames[side];
  const ring = proposedRing(garment, { newId, name: garment.rings.length === 0 ? words.ringName : name });
  const taken = new Set(garment.rings.flatMap(({ members }) => members.map(({ pieceId }) => pieceId)));
  const members = ring.members.filter(({ pieceId }) => !taken.has(pieceId));
  if (side === 'below') return { ...ring, members };
  return { ...ring, name, members, levels: bodiceLevels(newId, currentSet(garment)) };
}
