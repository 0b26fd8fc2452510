import { clothCost } from '../../core/cloth/cloth-cost';
import { EIGHTH_OF_YARD, TWENTIETH_OF_METRE, toBuy } from '../../core/cloth/cloth-sums';
import type { GarmentCloth } from '../../core/garment/garment-cloth';
import type { ShownIn } from '../../core/units/inch';
import { clothWords as words } from '../words/cloth';

/** What a length costs, as it is bought: up to the next eighth of a yard, or twentieth of a metre. */
export function costSaid({ price }: Pick<GarmentCloth, 'price'>, needed: number, shownIn: ShownIn): string {
  if (!price) return '';
  const step = (price.per === 'yard' ? shownIn : 'cm') === 'in' ? EIGHTH_OF_YARD : TWENTIETH_OF_METRE;
  return words.cost(clothCost(toBuy(needed, step), price), price.in);
}
