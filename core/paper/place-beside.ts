import type { Mark } from '../drawing/drawing';
import type { Motion } from '../garment/printed';
import type { Point } from '../geometry/point';
import { CELL, type Covered, coveredBy, Ground, lineCells, longestFirst, type Run, runsOf } from './covered';
import { movedMarks } from './moved-marks';
import { inkPlaces, type PagePlan } from './page-plan';

/** Pieces lie at least so many cells apart: room for the scissors. */
export const APART = 1;

/** Places tried lie so many cells apart. */
const STEP = 2;

/** So many cells of its lines tell soon that a place takes too many pages. */
const FIRST_LOOK = 16;

/** What lies on pages, a drawing a piece, and ways in which their pages may lie under them. */
interface There {
  readonly plans: readonly PagePlan[];
  readonly drawings: readonly (readonly Mark[])[];
}

/** Where a piece goes, and on which of the plans: pages more, and of equals how far it lies down and to the right. */
export interface Place {
  readonly motion: Motion;
  readonly plan: PagePlan;
  readonly pages: number;
  readonly far: number;
}

/**
 * Where a piece lies on the pages of others so that it takes fewest pages more, and fewer than `fewerThan`, turned by one
 * of the angles; `undefined` where there is no such place. On a roll a place is the better the less far down it reaches.
 */
export function placeBeside(
  { plans, drawings }: There,
  marks: readonly Mark[],
  angles: readonly number[],
  fewerThan: number,
): Place | undefined {
  const ground = new Ground(
    drawings.flatMap((one) => runsOf(coveredBy(inkPlaces(one)))),
    APART,
  );
  const shapes = angles.map((angle) => shapeAt(marks, angle));
  return plans.reduce<Place | undefined>(
    (best, plan) => shapes.reduce((so, shape) => bestPlace(shape, plan, ground, so, fewerThan), best),
    undefined,
  );
}

/** A piece turned by an angle, as cells. */
interface Shape {
  readonly angle: number;
  readonly covered: Covered;
  readonly runs: readonly Run[];
  readonly lines: readonly Point[];
  /** Some of them, that tell soon. */
  readonly look: readonly Point[];
}

function shapeAt(marks: readonly Mark[], angle: number): Shape {
  const covered = coveredBy(inkPlaces(movedMarks(marks, { angle, dx: 0, dy: 0 })));
  const lines = lineCells(covered);
  const every = Math.max(1, Math.floor(lines.length / FIRST_LOOK));
  const look = lines.filter((_, index) => index % every === 0);
  return { angle, covered, runs: longestFirst(runsOf(covered)), lines, look };
}

/** The best place of one shape on one plan, or the one known before. */
function bestPlace(
  { angle, covered, runs, lines, look }: Shape,
  plan: PagePlan,
  ground: Ground,
  known: Place | undefined,
  fewerThan: number,
): Place | undefined {
  const pages = new PagesTaken(plan);
  const { first, last } = pages;
  const isRoll = plan.paper.size === 'roll';
  const [from, to] = isRoll ? [first.x, last.x - covered.wide] : [first.x - covered.wide, last.x];
  let best = known;
  for (let y = Math.ceil(isRoll ? first.y : first.y - covered.high); y <= last.y; y += STEP) {
    for (let x = Math.ceil(from); x <= to; x += STEP) {
      const [dx, dy] = [x - covered.left, y - covered.top];
      const far = isRoll ? y + covered.high : farness(covered, x - first.x, y - first.y);
      const most = best ? (far < best.far ? best.pages : best.pages - 1) : fewerThan - 1;
      if (most < 0 || pages.more(look, dx, dy, most) > most) continue;
      if (!runs.every((run) => ground.isFree(run, dx, dy))) continue;
      const more = pages.more(lines, dx, dy, most);
      if (more <= most) best = { motion: { angle, dx: dx * CELL, dy: dy * CELL }, plan, pages: more, far };
    }
  }
  return best;
}

/** Near the first page is near, and down counts a little more. */
function farness({ high }: Covered, x: number, y: number): number {
  return Math.abs(y) + Math.abs(x) + (y + high) * 1e-3;
}

/** More rows and columns than this beside the pages there are, nobody looks at. */
const BEYOND = 64;

/** Which pages are there, asked how many more the cells of a drawing would take. A roll has one row of them. */
class PagesTaken {
  readonly first: { readonly x: number; readonly y: number };
  readonly last: { readonly x: number; readonly y: number };
  private readonly across: number;
  private readonly down: number;
  private readonly columns: number;
  /** For each page the number of the last question that found it, or -1 where the page is there. */
  private readonly found: Int32Array;
  private asked = 0;

  constructor({ origin, step, window, rows, columns, pages, paper }: PagePlan) {
    this.first = { x: origin.x / CELL, y: origin.y / CELL };
    this.last = {
      x: (origin.x + (columns - 1) * step.across + window.width) / CELL,
      y: (origin.y + (rows - 1) * step.down + window.height) / CELL,
    };
    this.across = step.across / CELL;
    this.down = paper.size === 'roll' ? Number.POSITIVE_INFINITY : step.down / CELL;
    this.columns = columns + 2 * BEYOND;
    this.found = new Int32Array(this.columns * (rows + 2 * BEYOND));
    for (const { row, column } of pages) this.found[(row + BEYOND) * this.columns + column + BEYOND] = -1;
  }

  /** How many pages more; soon given up beyond `most`. */
  more(cells: readonly Point[], dx: number, dy: number, most: number): number {
    this.asked += 1;
    let count = 0;
    const [right, below] = [dx + 0.5 - this.first.x, dy + 0.5 - this.first.y];
    for (const { x, y } of cells) {
      const column = Math.floor((x + right) / this.across) + BEYOND;
      const page = (Math.floor((y + below) / this.down) + BEYOND) * this.columns + column;
      const state = this.found[page];
      if (state === -1 || state === this.asked) continue;
      this.found[page] = this.asked;
      count += 1;
      if (count > most) return count;
    }
    return count;
  }
}
