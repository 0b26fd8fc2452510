import { distance, type Point, turnBetween, vectorBetween } from '../geometry/point';
import { throughPointsFor } from '../geometry/simplify';
import { fittedLine, lineMeeting } from './ink-fit';
import { type InkLine, spaced } from './ink-line';

/** A point of a followed line: where it turns sharply, or one that the curve goes through. */
export interface FollowedPoint {
  readonly at: Point;
  readonly kind: 'corner' | 'curve';
}

/** The line turns a corner where it changes direction by more than this. */
const LEAST_TURN = (32 * Math.PI) / 180;

/** The share of the line's width within which the curve keeps to the middle of it. */
const WITHIN = 0.3;

/** The share that does as well, where it spares points that crowd: the curve is still on the ink. */
const STILL_ON_INK = 0.5;

/** Points crowd that lie nearer to one another, or to a corner, than this share of the run: there the edge would dip. */
const CROWDED = 1 / 12;

/** At most so many places of one run are weighed, evenly spread: more only take time. */
const MOST_PLACES = 140;

/**
 * The fewest points, between the two ends, that keep to the printed line: corners where it turns sharply, and along what
 * lies between them the points of a curve, which stays well within half the line's width of its middle. `lay` brings
 * places of the picture to where the curve is drawn; what it cannot place is left out.
 */
export function followedLine(
  line: InkLine,
  ends: { readonly from: Point; readonly to: Point },
  lay: (place: Point) => Point | undefined = (place) => place,
): FollowedPoint[] {
  const found: FollowedPoint[] = [];
  const runs = inkRuns(line, ends);
  runs.forEach((run, index) => {
    const length = run.reduce((sum, point, i) => sum + (i > 0 ? distance(point, run[i - 1] as Point) : 0), 0);
    const places = spaced(run, Math.max(2, length / MOST_PLACES)).flatMap((place) => lay(place) ?? []);
    const width = line.width * scaleOf(run, lay);
    const through = places.length > 2 && width > 0 ? throughUncrowded(places, width) : places;
    for (const at of through.slice(1, -1)) found.push({ at, kind: 'curve' });
    const corner = index < runs.length - 1 ? lay(run[run.length - 1] as Point) : undefined;
    if (corner) found.push({ at: corner, kind: 'corner' });
  });
  return found;
}

/** The fewest points that keep a curve on the ink, none of them crowding another or an end, so far as that can be. */
function throughUncrowded(places: readonly Point[], width: number): readonly Point[] {
  const apart = CROWDED * (lengthsAlong(places)[places.length - 1] as number);
  const exact = throughPointsFor(places, { within: WITHIN * width });
  if (!isCrowded(exact, apart)) return exact;
  const within = STILL_ON_INK * width;
  const looser = throughPointsFor(places, { within });
  if (!isCrowded(looser, apart)) return looser;
  // An end put down beside the ink stays where it was put; the curve is not to run back to the ink right behind it.
  const free = throughPointsFor(clearOfEnds(places, apart), { within });
  return isCrowded(free, apart) ? exact : free;
}

function isCrowded(points: readonly Point[], apart: number): boolean {
  return points.length > 2 && points.some((point, i) => i > 0 && distance(point, points[i - 1] as Point) < apart);
}

function clearOfEnds(places: readonly Point[], apart: number): Point[] {
  const [first, last] = [places[0] as Point, places[places.length - 1] as Point];
  const isClear = (place: Point) => distance(place, first) >= apart && distance(place, last) >= apart;
  return [first, ...places.slice(1, -1).filter(isClear), last];
}

/** How large a pixel of the picture is where the run is, as it is laid. */
function scaleOf(run: readonly Point[], lay: (place: Point) => Point | undefined): number {
  const middle = run[run.length >> 1] as Point;
  const [here, across, down] = [
    lay(middle),
    lay({ x: middle.x + 1, y: middle.y }),
    lay({ x: middle.x, y: middle.y + 1 }),
  ];
  return here && across && down ? Math.min(distance(here, across), distance(here, down)) : 0;
}

/** A printed line from end to end, cut at its corners. */
export function inkRuns(line: InkLine, { from, to }: { readonly from: Point; readonly to: Point }): Point[][] {
  const { width } = line;
  // The ends are where she put them; what was seen right beside them is the other line that ends there.
  const clear = 1.2 * width;
  const inner = line.points.filter((point) => distance(point, from) > clear && distance(point, to) > clear);
  const run = [from, ...inner, to];
  const corners = cornersOf(run, width);
  const runs: Point[][] = [];
  let begun: Point[] = [];
  let next = 0;
  for (const [index, point] of run.entries()) {
    const corner = corners[next];
    if (corner && index > corner.before) {
      runs.push([...begun, corner.at]);
      begun = [corner.at];
      next += 1;
    }
    if (index > 0 && index < run.length - 1 && corners.some(({ at }) => distance(at, point) < clear)) continue;
    begun.push(point);
  }
  runs.push(begun);
  return runs;
}

interface InkCorner {
  readonly at: Point;
  /** The last point of the run before it. */
  readonly before: number;
}

/** Where a run turns sharply, by the lines it follows a little before and a little after. */
function cornersOf(run: readonly Point[], width: number): InkCorner[] {
  const along = lengthsAlong(run);
  const skip = 1.2 * width;
  const arm = skip + Math.max(7, 3.5 * width);
  const total = along[along.length - 1] as number;
  const turns: { readonly index: number; readonly turn: number; readonly at: Point }[] = [];
  for (let index = 1; index < run.length - 1; index++) {
    const here = (along[index - 1] as number) / 2 + (along[index] as number) / 2;
    if (here < arm * 0.7 || total - here < arm * 0.7) continue;
    const before = within(run, along, here - arm, here - skip);
    const after = within(run, along, here + skip, here + arm);
    const [a, b] = [fittedLine(before), fittedLine(after)];
    const least = (arm - skip) / 2;
    if (!a || !b || reachOf(before) < least || reachOf(after) < least) continue;
    const turn = Math.abs(
      turnBetween(
        vectorBetween(before[0] as Point, before[before.length - 1] as Point),
        vectorBetween(after[0] as Point, after[after.length - 1] as Point),
      ),
    );
    if (turn < LEAST_TURN) continue;
    const at = lineMeeting([a, b]);
    const near = at && Math.min(distance(at, run[index] as Point), distance(at, run[index - 1] as Point));
    if (at && near !== undefined && near < 2.5 * width + 1) turns.push({ index, turn, at });
  }
  const kept: InkCorner[] = [];
  for (const { index, at } of turns.toSorted((a, b) => b.turn - a.turn)) {
    if (kept.every((other) => distance(other.at, at) > arm)) kept.push({ at, before: index - 1 });
  }
  return kept.sort((a, b) => a.before - b.before);
}

function reachOf(run: readonly Point[]): number {
  return distance(run[0] as Point, run[run.length - 1] as Point);
}

function lengthsAlong(run: readonly Point[]): number[] {
  let sum = 0;
  return run.map((point, i) => {
    if (i > 0) sum += distance(point, run[i - 1] as Point);
    return sum;
  });
}

function within(run: readonly Point[], along: readonly number[], from: number, to: number): Point[] {
  let first = lowerBound(along, from);
  const found: Point[] = [];
  for (; first < run.length && (along[first] as number) <= to; first++) found.push(run[first] as Point);
  return found;
}

function lowerBound(numbers: readonly number[], wanted: number): number {
  let [low, high] = [0, numbers.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((numbers[middle] as number) < wanted) low = middle + 1;
    else high = middle;
  }
  return low;
}
