/**
 * The best place for one piece among all others as they lie: many places tried at random, over the whole cloth, near
 * where it lies, and touching a neighbour; the few best of them then bettered step by step, each step along the cloth,
 * across it or aslant. After the search of Gardeyn and Wauters, "An open-source heuristic to reboot 2D nesting
 * research" (2025), with exact depths of no-fit areas in place of their estimate.
 */
import { type LayField, noteDepths, noteOthers, weightedDepth } from './lay-field';
import { goesAcross, placeAcross, placeAlong } from './lay-room';
import { type LayShape, noFitOf } from './lay-table';
import { SIDE } from './no-fit-cells';

/** A number from 0 up to but not 1. Passed in, so that a lay comes out the same again. */
export type Random = () => number;

/** How many places of each kind are tried, and how many are bettered. */
export interface SearchEffort {
  readonly anywhere: number;
  readonly near: number;
  readonly touching: number;
  readonly bettered: number;
}

/** The first step of bettering, the step at which it ends, and the same once more for the best place; shares of the piece. */
const FIRST_STEP = 0.25;
const LAST_STEP = 0.02;
const FINE_STEP = 0.01;
const FINEST_STEP = 0.0005;
const LONGER = 1.1;
const SHORTER = 0.5;

/** In so many shapes at most a piece is tried at a time. */
const SHAPES_TRIED = 4;

/** How many first steps from where a place was looked at its neighbours are known. */
const REACH = 3;

interface Spot {
  shape: number;
  x: number;
  y: number;
  depth: number;
}

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
  const here = spotAt(field, i, start, field.x[i] as number, field.y[i] as number, Number.POSITIVE_INFINITY);
  const spots: Spot[] = [here];
  const worst = () =>
    spots.length < effort.bettered ? Number.POSITIVE_INFINITY : (spots[spots.length - 1] as Spot).depth;
  const consider = (number: number, x: number, y: number) => {
    const spot = spotAt(field, i, number, x, y, worst());
    if (spot.depth < worst()) insertSpot(spots, spot, effort.bettered);
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
    const x = here.x + (random() - 0.5) * shape.wide;
    consider(number, x, here.y + (random() - 0.5) * shape.high);
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
  for (const spot of spots) better(field, i, spot, FIRST_STEP, LAST_STEP, random);
  const best = spots.reduce((least, spot) => (spot.depth < least.depth ? spot : least), here);
  if (best.depth > 0) better(field, i, best, FINE_STEP, FINEST_STEP, random);
  const moved = best.x !== field.x[i] || best.y !== field.y[i] || best.shape !== start;
  if (!moved) return false;
  field.shape[i] = best.shape;
  field.x[i] = best.x;
  field.y[i] = best.y;
  noteDepths(field, i);
  return true;
}

function spotAt(field: LayField, i: number, number: number, wantedX: number, wantedY: number, enough: number): Spot {
  const shape = field.table.shapes[number] as LayShape;
  const x = placeAlong(field, shape, wantedX);
  const y = placeAcross(field, shape, wantedY);
  return { shape: number, x, y, depth: weightedDepth(field, i, number, x, y, enough) };
}

function insertSpot(spots: Spot[], spot: Spot, most: number): void {
  let k = spots.length;
  while (k > 0 && (spots[k - 1] as Spot).depth > spot.depth) k--;
  spots.splice(k, 0, spot);
  if (spots.length > most) spots.pop();
}

/** Betters a place, changing it. It looks only at pieces within reach, and looks round anew when it has gone far. */
function better(field: LayField, i: number, spot: Spot, first: number, last: number, random: Random): void {
  const shape = field.table.shapes[spot.shape] as LayShape;
  const size = Math.min(shape.wide, shape.high);
  const end = last * size;
  const reach = REACH * first * size;
  let seenX = spot.x;
  let seenY = spot.y;
  noteOthers(field, i, spot.shape, seenX, seenY, reach, field.near);
  let stepX = first * size;
  let stepY = stepX;
  while (spot.depth > 0 && (stepX > end || stepY > end)) {
    const way = random();
    const alongX = way < 0.75;
    const alongY = way >= 0.5;
    const both = alongX && alongY;
    const step = both ? Math.max(stepX, stepY) : alongX ? stepX : stepY;
    const dx = alongX ? step : 0;
    const dy = alongY ? (both && random() < 0.5 ? -step : step) : 0;
    if (Math.max(Math.abs(spot.x - seenX), Math.abs(spot.y - seenY)) + step > reach) {
      seenX = spot.x;
      seenY = spot.y;
      noteOthers(field, i, spot.shape, seenX, seenY, Math.max(reach, step), field.near);
    }
    const bettered = tryStep(field, i, spot, shape, dx, dy) || tryStep(field, i, spot, shape, -dx, -dy);
    const factor = bettered ? LONGER : SHORTER;
    if (alongX) stepX *= factor;
    if (alongY) stepY *= factor;
  }
}

function tryStep(field: LayField, i: number, spot: Spot, shape: LayShape, dx: number, dy: number): boolean {
  const x = placeAlong(field, shape, spot.x + dx);
  const y = placeAcross(field, shape, spot.y + dy);
  if (x === spot.x && y === spot.y) return false;
  const depth = weightedDepth(field, i, spot.shape, x, y, spot.depth, field.near);
  if (depth >= spot.depth) return false;
  spot.x = x;
  spot.y = y;
  spot.depth = depth;
  return true;
}
