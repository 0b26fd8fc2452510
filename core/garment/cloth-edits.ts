import type { Garment } from './garment';
import type { GarmentCloth, KeptLay } from './garment-cloth';
import { withOne, withoutOne } from './with-piece';

/** The garment with one more cloth. */
export function addCloth(garment: Garment, cloth: GarmentCloth): Garment {
  return { ...garment, cloths: [...(garment.cloths ?? []), cloth] };
}

/** The garment with one cloth changed. Its lay stays, and is found out of date where that matters to it. */
export function changeCloth(garment: Garment, clothId: string, change: (cloth: GarmentCloth) => GarmentCloth): Garment {
  const cloths = withOne(garment.cloths ?? [], clothId, change);
  return cloths === garment.cloths ? garment : { ...garment, cloths };
}

/** The garment without a cloth and without its lay. */
export function removeCloth(garment: Garment, clothId: string): Garment {
  const cloths = withoutOne(garment.cloths ?? [], clothId);
  return withoutLay({ ...garment, cloths }, clothId);
}

/** The garment with the lay of a cloth, in place of the one it had. */
export function keepLay(garment: Garment, lay: KeptLay): Garment {
  return { ...garment, lays: [...(garment.lays ?? []).filter(({ clothId }) => clothId !== lay.clothId), lay] };
}

/** The garment without the lay of a cloth. */
export function withoutLay(garment: Garment, clothId: string): Garment {
  const lays = (garment.lays ?? []).filter((lay) => lay.clothId !== clothId);
  return lays.length === (garment.lays ?? []).length ? garment : { ...garment, lays };
}

/** The lay of a cloth, if one was made. */
export function layOf(garment: Pick<Garment, 'lays'>, clothId: string): KeptLay | undefined {
  return garment.lays?.find((lay) => lay.clothId === clothId);
}
