/** What a lay must hold to count, and the least length it could have. */
import type { LayField } from './lay-field';
import { goesAcross, placeAcross, placeAlong } from './lay-room';
import { type LayShape, noFitOf } from './lay-table';
import { depthInConvex } from './no-fit';

/** What the clipping's grid may hide, in touches. */
const CLEAR_TOUCHES = 4;

/** No lay can be shorter: by the area of the pieces, by the longest of them, by where pinned ones end. */
export function leastLength({ table, count }: LayField): number {
  let least = table.area / table.across;
  for (let i = 0; i < count; i++) {
    const item = table.items[i];
    if (!item || item.isKept) continue;
    const wide = (number: number) => (table.shapes[number] as LayShape).wide;
    if (item.fixed) least = Math.max(least, item.fixed.at.x + wide(item.fixed.shape));
    else {
      const going = item.shapes.filter((number) => goesAcross(table, table.shapes[number] as LayShape));
      least = Math.max(least, Math.min(...going.map(wide)));
    }
  }
  return least;
}

/** Whether every piece that can move lies on the cloth, on the fold and on the repeat where it must. */
export function isOnCloth(field: LayField): boolean {
  return field.table.items.every(({ fixed }, i) => {
    const shape = field.table.shapes[field.shape[i] as number] as LayShape;
    const [x, y] = [field.x[i] as number, field.y[i] as number];
    const off = Math.max(Math.abs(placeAlong(field, shape, x) - x), Math.abs(placeAcross(field, shape, y) - y));
    return fixed !== undefined || off <= field.touch;
  });
}

/** The last word on a lay: the convex sums the no-fit areas were made of, apart from their clipping, find no overlap. */
export function isClear(field: LayField): boolean {
  const { table, count } = field;
  for (let i = 0; i < count; i++) {
    for (let j = 0; j < i; j++) {
      if (field.fixed[i] && field.fixed[j]) continue;
      const area = noFitOf(table, field.shape[j] as number, field.shape[i] as number);
      const point = {
        x: (field.x[i] as number) - (field.x[j] as number),
        y: (field.y[i] as number) - (field.y[j] as number),
      };
      if (point.x <= area.minX || point.x >= area.maxX || point.y <= area.minY || point.y >= area.maxY) continue;
      if (area.parts.some((part) => depthInConvex(part, point) > CLEAR_TOUCHES * field.touch)) return false;
    }
  }
  return true;
}
