import type { Garment } from '../../core/garment/garment';
import type { GarmentCloth } from '../../core/garment/garment-cloth';
import { clothNames } from '../words/cloth-names';

/** What a laid piece or strip is called. */
export function laidName(id: string, garment: Garment, cloth: GarmentCloth | undefined): string {
  return clothNames.laid(id, garment.pieces, cloth?.strips ?? []);
}
