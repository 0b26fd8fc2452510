/** What a lay must hold to count, and the least length it could have. */
import { boxOfPoints, boxesMeet as meet } from '../geometry/bounds';
import { move, type Point, type Vector } from '../geometry/point';
import type { Ring } from '../geometry/polygon';
import { commonOfParts } from './common-area';
import { convexSum, depthInConvex } from './convex-sum';
import { boxesMeet, type LayField } from './lay-field';
import { goesAcross, placeAcross, placeAlong } from './lay-room';
import type { LayShape } from './lay-table';

/** What the clipping's grid may hide, in touches. */
const CLEAR_TOUCHES = 4;

/** What long sides may hide between them all the same, in mm². */
const HIDDEN = 0.005;

const ORIGIN: Point = { x: 0, y: 0 };

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

/** The last word on a lay: the convex parts of any two pieces, apart from the clipping of no-fit areas, do not overlap, by depth and by area. */
export function isClear(field: LayField): boolean {
  const { count, shape, x, y } = field;
  const partsOf = (i: number) => (field.table.shapes[shape[i] as number] as LayShape).parts;
  for (let i = 0; i < count; i++) {
    for (let j = 0; j < i; j++) {
      if ((field.fixed[i] && field.fixed[j]) || !boxesMeet(field, i, j)) continue;
      const by: Vector = { dx: (x[i] as number) - (x[j] as number), dy: (y[i] as number) - (y[j] as number) };
      const moved = partsOf(i).map((part) => part.map((point) => move(point, by)));
      if (overlapDeeper(partsOf(j), moved, CLEAR_TOUCHES * field.touch)) return false;
      if (commonOfParts(partsOf(j), moved) > HIDDEN) return false;
    }
  }
  return true;
}

/** Whether a convex part of the second lies deeper than `most` in one of the first. */
function overlapDeeper(stays: readonly Ring[], moved: readonly Ring[], most: number): boolean {
  const boxes = moved.map(boxOfPoints);
  return stays.some((a) => {
    const box = boxOfPoints(a);
    return moved.some((b, k) => {
      const other = boxes[k];
      if (!box || !other || !meet(box, other)) return false;
      const opposite = b.map((point) => ({ x: -point.x, y: -point.y }));
      return depthInConvex(convexSum(a, opposite), ORIGIN) > most;
    });
  });
}
