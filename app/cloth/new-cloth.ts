import { addCloth, changeCloth } from '../../core/garment/cloth-edits';
import type { GarmentCloth } from '../../core/garment/garment-cloth';
import { inches } from '../../core/units/inch';
import { useGarment } from '../state/garment-store';
import { newId } from '../state/new-id';
import { clothWords as words } from '../words/cloth';
import { takeCloth } from './cloth-store';
import { stopLaying } from './laying';

/** A selvedge of half an inch on each side: common practice. */
const SELVEDGE = inches(0.5);

/** A corner of a remnant to begin with: a yard by half a yard. */
const REMNANT = { x: inches(36), y: inches(18) };

/** Adds a cloth and takes it in hand. The first one is for all pieces; further ones begin with none. */
export function newCloth(change: Partial<GarmentCloth> = {}): void {
  const { garment, edit } = useGarment.getState();
  const isFirst = (garment?.cloths ?? []).length === 0;
  const cloth: GarmentCloth = {
    id: newId(),
    name: words.firstName,
    width: inches(36),
    selvedge: SELVEDGE,
    folded: 'lengthwise',
    nap: 'none',
    flaws: [],
    strips: [],
    grain: 'straight',
    ...(isFirst ? {} : { pieceIds: [] }),
    ...change,
  };
  edit(words.labels.add, (now) => addCloth(now, cloth));
  takeCloth(cloth.id);
}

/** A remnant, to begin with a straight one. */
export function newRemnant(): void {
  newCloth({
    name: words.remnantName,
    folded: 'open',
    selvedge: 0,
    shape: [
      { x: 0, y: 0 },
      { x: REMNANT.x, y: 0 },
      { x: REMNANT.x, y: REMNANT.y },
      { x: 0, y: REMNANT.y },
    ],
  });
}

/** Changes a cloth, as one step. */
export function editCloth(
  { id }: Pick<GarmentCloth, 'id'>,
  change: (cloth: GarmentCloth) => GarmentCloth,
  label: string = words.labels.change,
): void {
  stopLaying();
  useGarment.getState().edit(label, (now) => changeCloth(now, id, change));
}

/** A cloth without one of its optional fields. */
export function without<
  K extends 'atHand' | 'repeat' | 'shape' | 'pieceIds' | 'pieced' | 'tilt' | 'openedOut' | 'shrinks' | 'price',
>(cloth: GarmentCloth, field: K): GarmentCloth {
  const { [field]: _, ...rest } = cloth;
  return rest as GarmentCloth;
}
