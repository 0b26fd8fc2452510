import type { Vector } from '../geometry/point';

/** A line on the flat plane (its own units) and how long it is at full size (mm). */
export interface ScaledLine {
  readonly id: string;
  readonly run: Vector;
  readonly length: number;
}

/** What one line measures at the solved scale. */
export interface LineMisfit {
  readonly id: string;
  readonly states: number;
  readonly measures: number;
  /** What the other lines alone make of it, where there are enough of them. */
  readonly byOthers?: number;
}

export interface Scale {
  readonly kind: 'scale';
  /** mm per unit of the flat plane. */
  readonly across: number;
  readonly down: number;
  /** Whether across and down were solved apart. */
  readonly split: boolean;
  readonly lines: readonly LineMisfit[];
}

/**
 * Across and down are solved apart only where the lines differ in slope enough: the smaller eigenvalue of the spread of
 * (cos², sin²) must be at least this share of the larger. A level line and one 35 degrees off it do not; 36 do, and there
 * a misfit comes back three times as large in the weaker direction. Two diagonals of one slope never do.
 */
const DIRECTIONS_APART = 0.05;

/** A line shorter than this, about a pixel of the picture, has no length that could be read off. */
const SHORTEST_RUN = 1;

/** Steps of the least squares; each brings several figures, and the start is already close. */
const STEPS = 12;

/**
 * The scale across and down from lines of known length, by least squares of the misfit in length, each line weighing by
 * its length (a long line is clicked with the same slip as a short one). With directions too alike there is one scale for
 * both ways. `undefined` without a usable line. A line drawn without length, or stated as nothing, is left out.
 */
export function solveScale(all: readonly ScaledLine[]): Scale | undefined {
  const lines = all.filter(isUsable);
  if (lines.length === 0) return undefined;
  const solved = solveFor(lines);
  return {
    kind: 'scale',
    ...solved,
    lines: lines.map((line) => {
      const others = lines.filter((other) => other !== line);
      const bySelf = measured(line, solved);
      const byOthers = others.length > 0 ? solveFor(others) : undefined;
      // Where this line alone runs its way, the others know nothing of that way.
      const alone = byOthers && byOthers.split === solved.split ? byOthers : undefined;
      return {
        id: line.id,
        states: line.length,
        measures: bySelf,
        ...(alone ? { byOthers: measured(line, alone) } : {}),
      };
    }),
  };
}

/** What lines measure at a scale that was not taken from them. */
export function misfitsAt(all: readonly ScaledLine[], scale: Pick<Scale, 'across' | 'down'>): LineMisfit[] {
  return all.filter(isUsable).map((line) => {
    const measures = measured(line, { ...scale, split: true });
    return { id: line.id, states: line.length, measures, byOthers: measures };
  });
}

/** A line drawn without length, or stated as nothing, is none. */
function isUsable({ run, length }: ScaledLine): boolean {
  return length > 0 && Math.hypot(run.dx, run.dy) >= SHORTEST_RUN;
}

interface Solved {
  readonly across: number;
  readonly down: number;
  readonly split: boolean;
}

function measured({ run }: ScaledLine, { across, down }: Solved): number {
  return Math.hypot(run.dx * across, run.dy * down);
}

function solveFor(lines: readonly ScaledLine[]): Solved {
  const one = oneScale(lines);
  if (!directionsApart(lines)) return { across: one, down: one, split: false };
  let across = one;
  let down = one;
  // Gauss-Newton on the lengths themselves.
  for (let step = 0; step < STEPS; step++) {
    let [aa, ab, bb, ra, rb] = [0, 0, 0, 0, 0];
    for (const { run, length } of lines) {
      const now = Math.hypot(run.dx * across, run.dy * down);
      const byAcross = (run.dx * run.dx * across) / now;
      const byDown = (run.dy * run.dy * down) / now;
      const weight = Math.hypot(run.dx, run.dy);
      const misfit = length - now;
      aa += weight * byAcross * byAcross;
      ab += weight * byAcross * byDown;
      bb += weight * byDown * byDown;
      ra += weight * byAcross * misfit;
      rb += weight * byDown * misfit;
    }
    const determinant = aa * bb - ab * ab;
    if (!(determinant > 0)) break;
    across = Math.max(across + (ra * bb - rb * ab) / determinant, one * 1e-3);
    down = Math.max(down + (rb * aa - ra * ab) / determinant, one * 1e-3);
  }
  return { across, down, split: true };
}

/** The one scale that fits best: the weighted least squares of length against run, in closed form. */
function oneScale(lines: readonly ScaledLine[]): number {
  let [over, under] = [0, 0];
  for (const { run, length } of lines) {
    const size = Math.hypot(run.dx, run.dy);
    over += size * size * length;
    under += size * size * size;
  }
  return over / under;
}

/** Whether squares of the runs, across against down, span both ways. */
function directionsApart(lines: readonly ScaledLine[]): boolean {
  let [aa, ab, bb] = [0, 0, 0];
  for (const { run } of lines) {
    const size = run.dx * run.dx + run.dy * run.dy;
    const [a, b] = [(run.dx * run.dx) / size, (run.dy * run.dy) / size];
    aa += a * a;
    ab += a * b;
    bb += b * b;
  }
  const middle = (aa + bb) / 2;
  const spread = Math.hypot((aa - bb) / 2, ab);
  return middle - spread >= DIRECTIONS_APART * (middle + spread);
}
