/**
 * The first lay: pieces one by one, large ones first, each as near the beginning of the cloth as it goes.
 *
 * Tried are the corners of all no-fit areas, where these cross the edges of the cloth, and the corners of the cloth.
 */
import { depthIn, type LayField, usedLength } from './lay-field';
import { firstOnRepeat, goesAcross } from './lay-room';
import { type LayShape, noFitOf, SIDE } from './lay-table';

/** What a piece is large by: the four orders of which the shortest lay is kept. */
const LARGE_BY: readonly ((shape: LayShape) => number)[] = [
  ({ area }) => area,
  ({ wide, high }) => Math.max(wide, high),
  ({ wide }) => wide,
  ({ high }) => high,
];

/**
 * Lays every piece that is not fixed, in the order that gives the shortest lay of four. Gives the pieces for which no
 * order found room: only those held to the fold across the cloth can run out of it.
 */
export function layFirst(field: LayField): readonly number[] {
  const tried = LARGE_BY.map((by) => {
    const left = layInOrder(field, by).length;
    return { by, left, length: usedLength(field) };
  });
  const best = tried.reduce((a, b) => (b.left < a.left || (b.left === a.left && b.length < a.length) ? b : a));
  return layInOrder(field, best.by);
}

function layInOrder(field: LayField, by: (shape: LayShape) => number): number[] {
  const { table } = field;
  const shapeOf = (i: number) => table.shapes[table.items[i]?.shapes[0] as number] as LayShape;
  const laid = [...Array(field.count).keys()].filter((i) => field.fixed[i]);
  const order = [...Array(field.count).keys()].filter((i) => !field.fixed[i]);
  // Pieces held to the fold go first: they have least choice.
  order.sort((a, b) => {
    const held = shapeOf(b).heldX + shapeOf(b).heldY - shapeOf(a).heldX - shapeOf(a).heldY;
    return held || by(shapeOf(b)) - by(shapeOf(a)) || a - b;
  });
  return order.filter((i) => {
    const found = layOne(field, i, laid);
    laid.push(i);
    return found === 'no-room';
  });
}

function layOne(field: LayField, i: number, laid: readonly number[]): 'laid' | 'no-room' {
  const { table } = field;
  let best = { end: Number.POSITIVE_INFINITY, x: 0, y: 0, shape: field.shape[i] as number };
  for (const number of table.items[i]?.shapes ?? []) {
    const shape = table.shapes[number] as LayShape;
    if (!goesAcross(table, shape)) continue;
    const consider = (wantedX: number, wantedY: number) => {
      const x = shape.heldX ? 0 : firstOnRepeat(Math.max(0, wantedX), table.repeatX, shape.phaseX);
      const y = shape.heldY ? 0 : firstOnRepeat(Math.max(0, wantedY), table.repeatY, shape.phaseY);
      if (y > Math.max(0, table.across - shape.high) || wantedX < -field.touch || wantedY < -field.touch) return;
      const end = x + shape.wide;
      if (end > best.end || (end === best.end && (x > best.x || (x === best.x && y >= best.y)))) return;
      if (isFree(field, number, x, y, laid)) best = { end, x, y, shape: number };
    };
    forCandidates(field, number, laid, consider);
  }
  field.shape[i] = best.shape;
  field.x[i] = best.x;
  field.y[i] = best.y;
  return best.end < Number.POSITIVE_INFINITY ? 'laid' : 'no-room';
}

function forCandidates(
  field: LayField,
  number: number,
  laid: readonly number[],
  consider: (x: number, y: number) => void,
): void {
  const { table } = field;
  const shape = table.shapes[number] as LayShape;
  const edges = shape.heldY ? [0] : [0, Math.max(0, table.across - shape.high)];
  for (const y of edges) consider(0, y);
  let beyond = 0;
  for (const j of laid) {
    const area = noFitOf(table, field.shape[j] as number, number);
    const atX = field.x[j] as number;
    const atY = field.y[j] as number;
    beyond = Math.max(beyond, atX + area.maxX);
    for (let k = 0; k < area.count * SIDE; k += SIDE) {
      const x = atX + (area.sides[k] as number);
      const y = atY + (area.sides[k + 1] as number);
      if (!shape.heldY) consider(x, y);
      const runY = area.sides[k + 3] as number;
      for (const edge of edges) {
        const t = (edge - y) / runY;
        if (t >= 0 && t <= 1) consider(x + t * (area.sides[k + 2] as number), edge);
      }
      const runX = area.sides[k + 2] as number;
      const t = -x / runX;
      if (t >= 0 && t <= 1) consider(0, y + t * runY);
    }
  }
  consider(beyond, 0);
}

function isFree(field: LayField, number: number, x: number, y: number, laid: readonly number[]): boolean {
  for (let k = laid.length - 1; k >= 0; k--) {
    const j = laid[k] as number;
    const area = noFitOf(field.table, field.shape[j] as number, number);
    if (depthIn(area, x - (field.x[j] as number), y - (field.y[j] as number)) > field.touch) return false;
  }
  return true;
}
