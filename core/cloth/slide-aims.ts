/** Where overlaps could count least: where two of the lines a piece knows cross, or one of them and a line it must keep to. */
import type { LayField } from './lay-field';
import type { LayShape } from './lay-table';
import { offWay, type WaysKnown } from './ways-known';

/** Lines that run so nearly alike do not cross. */
const ALIKE = 1e-6;

const NONE: readonly number[] = [];

/** Notes places to aim at for a piece at (x, y); some are not on the cloth or beyond `reach`. */
export function noteAims(
  { table, length, ways }: LayField,
  shape: LayShape,
  x: number,
  y: number,
  reach: number,
): void {
  const { aims, count, wayX, wayY, end } = ways;
  const alongs = linesNear(x, reach, shape.heldX, length - shape.wide, table.repeatX);
  const acrosses = linesNear(y, reach, shape.heldY, table.across - shape.high, table.repeatY);
  aims.count = 0;
  noteStraight(ways, x, y, reach);
  for (let a = 0; a < count; a++) {
    const aX = wayX[a] as number;
    const aY = wayY[a] as number;
    const aEnd = end[a] as number;
    for (let b = 0; b < a; b++) {
      const bX = wayX[b] as number;
      const bY = wayY[b] as number;
      const bEnd = end[b] as number;
      const lean = aX * bY - aY * bX;
      if (lean < ALIKE && lean > -ALIKE) continue;
      aims.x[aims.count] = (aEnd * bY - bEnd * aY) / lean;
      aims.y[aims.count++] = (aX * bEnd - bX * aEnd) / lean;
    }
    for (let k = 0; k < alongs.length && Math.abs(aY) > ALIKE; k++) {
      const along = alongs[k] as number;
      aims.x[aims.count] = along;
      aims.y[aims.count++] = (aEnd - aX * along) / aY;
    }
    for (let k = 0; k < acrosses.length && Math.abs(aX) > ALIKE; k++) {
      const across = acrosses[k] as number;
      aims.x[aims.count] = (aEnd - aY * across) / aX;
      aims.y[aims.count++] = across;
    }
  }
}

/** Straight to each line, and the way in which overlaps become less the fastest. */
function noteStraight(ways: WaysKnown, x: number, y: number, reach: number): void {
  const { aims, count, wayX, wayY, weight } = ways;
  let pullX = 0;
  let pullY = 0;
  for (let a = 0; a < count; a++) {
    const aX = wayX[a] as number;
    const aY = wayY[a] as number;
    const off = offWay(ways, a, x, y);
    if (off > 0) {
      pullX += aX * (weight[a] as number);
      pullY += aY * (weight[a] as number);
    }
    const go = Math.min(Math.max(off, -reach), reach);
    aims.x[aims.count] = x + aX * go;
    aims.y[aims.count++] = y + aY * go;
  }
  const pull = Math.sqrt(pullX * pullX + pullY * pullY);
  if (pull === 0) return;
  aims.x[aims.count] = x + (pullX / pull) * reach;
  aims.y[aims.count++] = y + (pullY / pull) * reach;
}

/** Lines a piece may have to keep to, at `from` or within reach: a fold, the next places of a repeat, the edges of the cloth. */
function linesNear(from: number, reach: number, held: 0 | 1, most: number, repeat: number): readonly number[] {
  if (held) return [0];
  if (repeat > 0) return [from - repeat, from, from + repeat];
  if (from > reach && from < most - reach) return NONE;
  return [0, most];
}
