/**
 * The best place for one piece among all others as they lie: many places tried at random, over the whole cloth, near
 * where it lies, and touching a neighbour; the few best of them then slide to where overlaps count least. After the search of Gardeyn and Wauters, "An open-source heuristic to reboot 2D nesting
 * research" (2025), with exact depths of no-fit areas in place of their estimate.
 */
import { type LayField, noteDepths, weightedDepth } from './lay-field';
import { goesAcross, placeAcross, placeAlong } from './lay-room';
import { type LayShape, noFitOf } from './lay-table';
import { SIDE } from './no-fit-cells';
import { type Spot, slide } from './slide';

/** A number from 0 up to but not 1. Passed in, so that a lay comes out the same again. */
export type Random = () => number;

/** How many places of each kind are tried, and how many are bettered. */
export interface SearchEffort {
  readonly anywhere: number;
  readonly near: number;
  readonly touching: number;
  readonly bettered: number;
}

/** In so many shapes at most a piece is tried at a time. */
const SHAPES_TRIED = 4;

/**
 * The shapes in which a piece is tried next: all that go on the cloth, or of more than a few the one it has and some by
 * chance, so that tilting by fine steps costs little.
 */
export function shapesToTry({ table, length, shape }: LayField, i: number, random: Random): readonly number[] {
  const going = (table.items[i]?.shapes ?? []).filter((number) => {
    const { wide } = table.shapes[number] as LayShape;
    return wide <= length && goesAcross(table, table.shapes[number] as LayShape);
  });
  if (going.length <= SHAPES_TRIED) return going;
  const tried = going.filter((number) => number === shape[i]);
  while (tried.length < SHAPES_TRIED) tried.push(going[Math.floor(random() * going.length)] as number);
  return tried;
}

/** Moves piece `i` to the best place found in one of the shapes, which may be where it is. Gives whether it moved. */
export function placeBetter(
  field: LayField,
  i: number,
  shapes: readonly number[],
  effort: SearchEffort,
  random: Random,
): boolean {
  const { table } = field;
  if (shapes.length === 0) return false;
  const start = field.shape[i] as number;
  const [fromX, fromY] = [field.x[i] as number, field.y[i] as number];
  const depth = weightedDepth(field, i, start, fromX, fromY, Number.POSITIVE_INFINITY);
  const here: Spot = { shape: start, x: fromX, y: fromY, depth };
  const spots: Spot[] = [here];
  const worst = () =>
    spots.length < effort.bettered ? Number.POSITIVE_INFINITY : (spots[spots.length - 1] as Spot).depth;
  const consider = (number: number, wantedX: number, wantedY: number) => {
    const shape = table.shapes[number] as LayShape;
    const x = placeAlong(field, shape, wantedX);
    const y = placeAcross(field, shape, wantedY);
    const depth = weightedDepth(field, i, number, x, y, worst());
    if (depth < worst()) insertSpot(spots, { shape: number, x, y, depth }, effort.bettered);
  };
  const any = () => shapes[Math.floor(random() * shapes.length)] as number;
  for (let k = 0; k < effort.anywhere; k++) {
    const number = any();
    const shape = table.shapes[number] as LayShape;
    consider(number, random() * (field.length - shape.wide), random() * (table.across - shape.high));
  }
  for (let k = 0; k < effort.near; k++) {
    const number = any();
    const shape = table.shapes[number] as LayShape;
    const x = fromX + (random() - 0.5) * shape.wide;
    consider(number, x, fromY + (random() - 0.5) * shape.high);
  }
  for (let k = 0; k < effort.touching; k++) {
    const j = Math.floor(random() * field.count);
    if (j === i) continue;
    const number = any();
    const area = noFitOf(table, field.shape[j] as number, number);
    const at = Math.floor(random() * area.count) * SIDE;
    const x = (field.x[j] as number) + (area.sides[at] as number);
    const y = (field.y[j] as number) + (area.sides[at + 1] as number);
    if (x < 0 || y < 0) continue;
    consider(number, x, y);
  }
  let best = here;
  for (const spot of spots) {
    slide(field, i, spot);
    if (spot.depth < best.depth) best = spot;
    if (best.depth === 0) break;
  }
  if (best.x === fromX && best.y === fromY && best.shape === start) return false;
  field.shape[i] = best.shape;
  field.x[i] = best.x;
  field.y[i] = best.y;
  noteDepths(field, i);
  return true;
}

function insertSpot(spots: Spot[], spot: Spot, most: number): void {
  let k = spots.length;
  while (k > 0 && (spots[k - 1] as Spot).depth > spot.depth) k--;
  spots.splice(k, 0, spot);
  if (spots.length > most) spots.pop();
}
