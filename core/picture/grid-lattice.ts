/** Numbering crossings: from one square outwards, each next one looked for where the last step says it should lie. */
import type { Point } from '../geometry/point';
import type { LikelyCrossing } from './grid-lines';

/** A crossing by the number of its upright line (column) and its level line (row), and where it lies. */
export interface Crossing {
  readonly column: number;
  readonly row: number;
  readonly at: Point;
}

interface Node extends Crossing {
  /** The steps to the next column and to the next row as they are here. */
  readonly across: Point;
  readonly down: Point;
}

/** How far off its expected place the next crossing may lie, as a share of the step: one square told of it, or several. */
const SLACK = { one: 0.17, several: 0.09 };

/** Squares from this many pixels a side. */
const LEAST_STEP = 9;

/** How many first squares are tried. */
const SEEDS = 40;

/** The largest set of crossings that can be numbered from one square; columns and rows begin at 0. Empty when none can. */
export function numberedCrossings(likely: readonly LikelyCrossing[]): Crossing[] {
  const places = bucketed(likely);
  const across = usualStep(likely, 'x');
  const down = usualStep(likely, 'y');
  if (across === undefined || down === undefined) return [];
  let best: Node[] = [];
  const seeds = [...likely].sort((a, b) => b.strength - a.strength);
  const every = Math.max(1, Math.floor(seeds.length / SEEDS));
  for (let k = 0; k < seeds.length; k += every) {
    const seed = seeds[k] as LikelyCrossing;
    if (best.some(({ at }) => at === seed)) continue;
    const right = places.near({ x: seed.x + across, y: seed.y }, 0.3 * across);
    const below = places.near({ x: seed.x, y: seed.y + down }, 0.3 * down);
    if (!right || !below) continue;
    const grown = grow(
      { column: 0, row: 0, at: seed, across: minus(right, seed), down: minus(below, seed) },
      places.near,
    );
    if (grown.length > best.length) best = grown;
    if (best.length > 0.7 * likely.length) break;
  }
  const [column, row] = [Math.min(...best.map((each) => each.column)), Math.min(...best.map((each) => each.row))];
  return best.map((each) => ({ column: each.column - column, row: each.row - row, at: each.at }));
}

/** The most usual step from a crossing to the next one about level with it (x), or about below it (y). */
function usualStep(likely: readonly LikelyCrossing[], axis: 'x' | 'y'): number | undefined {
  const other = axis === 'x' ? 'y' : 'x';
  const steps = likely.flatMap((from) => {
    let least = Number.POSITIVE_INFINITY;
    for (const to of likely) {
      const step = to[axis] - from[axis];
      if (step >= LEAST_STEP && step < least && Math.abs(to[other] - from[other]) < 0.3 * step) least = step;
    }
    return Number.isFinite(least) ? [least] : [];
  });
  const within = (a: number) => steps.filter((b) => b > 0.88 * a && b < a / 0.88);
  let best: number[] = [];
  for (const step of steps) {
    const alike = within(step);
    if (alike.length > best.length) best = alike;
  }
  if (best.length < 6) return undefined;
  return best.sort((a, b) => a - b)[best.length >> 1];
}

type Near = (place: Point, within: number) => LikelyCrossing | undefined;

/** The four squares beside a square: columns and rows on. */
const BESIDE = [
  [1, 0],
  [0, 1],
  [-1, 0],
  [0, -1],
] as const;

function grow(seed: Node, near: Near): Node[] {
  const nodes = new Map<string, Node>([[keyOf(0, 0), seed]]);
  const taken = new Set<Point>([seed.at]);
  const queue: Node[] = [seed];
  for (let head = 0; head < queue.length; head++) {
    const node = queue[head] as Node;
    for (const [dc, dr] of BESIDE) {
      const key = keyOf(node.column + dc, node.row + dr);
      if (nodes.has(key)) continue;
      const step = dc !== 0 ? node.across : node.down;
      const way = dc + dr;
      const told = expectedFrom(nodes, node.column + dc, node.row + dr);
      const expected = told ?? { x: node.at.x + way * step.x, y: node.at.y + way * step.y };
      const found = near(expected, (told ? SLACK.several : SLACK.one) * Math.hypot(step.x, step.y));
      if (!found || taken.has(found)) continue;
      const made = { x: way * (found.x - node.at.x), y: way * (found.y - node.at.y) };
      const mixed = { x: (step.x + 2 * made.x) / 3, y: (step.y + 2 * made.y) / 3 };
      const next: Node = {
        column: node.column + dc,
        row: node.row + dr,
        at: found,
        across: dc !== 0 ? mixed : node.across,
        down: dc !== 0 ? node.down : mixed,
      };
      nodes.set(key, next);
      taken.add(found);
      queue.push(next);
    }
  }
  return queue;
}

/** Where a crossing should lie by the squares beside it, and by the two steps before it; `undefined` by none. */
function expectedFrom(nodes: ReadonlyMap<string, Node>, column: number, row: number): Point | undefined {
  const at = (dc: number, dr: number) => nodes.get(keyOf(column + dc, row + dr))?.at;
  const told: Point[] = [];
  for (const [dc, dr] of BESIDE) {
    const [next, beyond] = [at(dc, dr), at(2 * dc, 2 * dr)];
    if (next && beyond) told.push({ x: 2 * next.x - beyond.x, y: 2 * next.y - beyond.y });
    const [other, corner] = [at(-dr, dc), at(dc - dr, dr + dc)];
    if (next && other && corner) told.push({ x: next.x + other.x - corner.x, y: next.y + other.y - corner.y });
  }
  if (told.length === 0) return undefined;
  const sum = told.reduce((total, { x, y }) => ({ x: total.x + x, y: total.y + y }));
  return { x: sum.x / told.length, y: sum.y / told.length };
}

function keyOf(column: number, row: number): string {
  return `${column} ${row}`;
}

function minus(a: Point, b: Point): Point {
  return { x: a.x - b.x, y: a.y - b.y };
}

/** Crossings by squares of 16 pixels, so that the nearest is found without looking at all. */
function bucketed(likely: readonly LikelyCrossing[]): { readonly near: Near } {
  const size = 16;
  const buckets = new Map<string, LikelyCrossing[]>();
  for (const each of likely) {
    const key = keyOf(Math.floor(each.x / size), Math.floor(each.y / size));
    buckets.set(key, [...(buckets.get(key) ?? []), each]);
  }
  const near: Near = (place, within) => {
    let found: LikelyCrossing | undefined;
    let least = within;
    for (let by = Math.floor((place.y - within) / size); by <= Math.floor((place.y + within) / size); by++) {
      for (let bx = Math.floor((place.x - within) / size); bx <= Math.floor((place.x + within) / size); bx++) {
        for (const each of buckets.get(keyOf(bx, by)) ?? []) {
          const away = Math.hypot(each.x - place.x, each.y - place.y);
          if (away < least) [least, found] = [away, each];
        }
      }
    }
    return found;
  };
  return { near };
}
