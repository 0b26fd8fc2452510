import { neighbourIndex, outlineOf } from '../garment/outline';
import type { Piece } from '../garment/piece';
import { edgeIndex, withCorner, withEdge } from '../garment/with-piece';
import {
  endTangent,
  nearestOnPath,
  pathAtLength,
  pathLength,
  reversePath,
  signedArea,
  startTangent,
} from '../geometry/path';
import {
  cross,
  dot,
  move,
  type Point,
  quarterTurn,
  scaleVector,
  type TablePoint,
  type Vector,
} from '../geometry/point';
import type { Path } from '../geometry/segment';
import { selfCrossings } from '../geometry/self-crossing';
import { carryMarks } from './carry-marks';
import { heldFrom, NEAR, type PlaceAlong } from './hold-course';

/** How far an edge is taken in at a place along it (mm, square to the edge, into the piece); less than 0 lets out. */
export interface Pinned {
  readonly along: number;
  readonly by: number;
}

export interface NotTakenIn {
  readonly kind: 'not-taken-in';
  /** `along-the-neighbour`: the edge beside a pinned corner runs nearly in line, so the corner cannot move along it. */
  readonly why: 'no-edge' | 'no-pins' | 'along-the-neighbour' | 'crosses';
}

/** A neighbour this nearly in line with the edge (sine of the angle, 15 degrees) would carry the corner far off. */
const IN_LINE = Math.sin(Math.PI / 12);

/**
 * The piece with an edge taken in or let out at places along it: evenly graded from one to the next, and from the first
 * and the last to nothing at the ends of the edge. Pins of 0 end the change sooner, and beyond them the edge keeps its
 * course. A corner moves only when it is pinned itself, and then along the edge beside it.
 */
export function takeIn(piece: Piece, edgeId: string, pins: readonly Pinned[]): Piece | NotTakenIn {
  const index = edgeIndex(piece, edgeId);
  const edge = piece.edges[index];
  const path = outlineOf(piece).edges[index];
  if (!edge || !path) return { kind: 'not-taken-in', why: 'no-edge' };
  const total = pathLength(path);
  const sorted = pins.filter(({ along }) => along >= 0 && along <= total).toSorted((a, b) => a.along - b.along);
  const [first, last] = [sorted[0], sorted.at(-1)];
  if (!first || !last || sorted.every(({ by }) => by === 0)) return { kind: 'not-taken-in', why: 'no-pins' };
  const inward = signedArea(outlineOf(piece).whole) > 0 ? 1 : -1;
  const course = { path, pins: sorted, inward, total };
  const start = movedCorner(piece, index, 'start', course);
  const end = movedCorner(piece, index, 'end', course);
  if (!start || !end) return { kind: 'not-taken-in', why: 'along-the-neighbour' };
  const square = (along: number) => scaleVector(quarterTurn(pathAtLength(path, along).tangent), inward);
  const moved = ({ point, along }: PlaceAlong) => move(point, square(along), amountAt(course, along));
  const ends = edge.shape.kind === 'curve' ? edge.shape : ({ kind: 'curve', leaves: 'free', meets: 'free' } as const);
  const startId = piece.corners[index]?.id ?? '';
  const endId = piece.corners[(index + 1) % piece.corners.length]?.id ?? '';
  const cornersMoved = [[startId, start] as const, [endId, end] as const].reduce(
    (so, [id, at]) => withCorner(so, id, (corner) => (corner.at === at ? corner : { ...corner, at })),
    piece,
  );
  const through = (places: readonly PlaceAlong[]) =>
    withEdge(cornersMoved, edgeId, (one) => ({ ...one, shape: { ...ends, through: places.map(moved) } }));
  const cornered = keptOnCourse(pointsOf(edge.shape.kind === 'curve' ? edge.shape.through : [], course), course, {
    through,
    index,
  });
  if (selfCrossings(outlineOf(cornered).whole).length > 0) return { kind: 'not-taken-in', why: 'crosses' };
  return withMarks(piece, cornered, index);
}

interface Course {
  readonly path: Path;
  readonly pins: readonly Pinned[];
  /** 1 where a quarter turn clockwise leads into the piece, else -1. */
  readonly inward: number;
  readonly total: number;
}

/** The amount at a place: straight between neighbouring pins, to nothing at both ends. */
function amountAt({ pins, total }: Course, along: number): number {
  const graded = [{ along: 0, by: 0 }, ...pins, { along: total, by: 0 }];
  const exact = pins.find((pin) => pin.along === along);
  if (exact) return exact.by;
  for (let i = 1; i < graded.length; i++) {
    const [a, b] = [graded[i - 1], graded[i]];
    if (!a || !b || along > b.along || b.along === a.along) continue;
    return a.by + ((b.by - a.by) * (along - a.along)) / (b.along - a.along);
  }
  return 0;
}

/** The points the edge passes: its own, the pins, and where the change ends what keeps it on its course. */
function pointsOf(own: readonly TablePoint[], { path, pins, total }: Course): PlaceAlong[] {
  const at = (along: number): PlaceAlong => ({ point: pathAtLength(path, along).point, along });
  const pinned = [...pins.map(({ along }) => along), ...middles(pins, total)]
    .filter((along) => along > NEAR / 2 && along < total - NEAR / 2)
    .map(at);
  const places = own
    .map((point) => ({ point, along: nearestOnPath(path, point).along }))
    .filter(({ along }) => pinned.every((pin) => Math.abs(pin.along - along) > NEAR));
  const all = [...pinned, ...places].sort((a, b) => a.along - b.along);
  const [first, last] = [pins[0], pins.at(-1)];
  let held = all;
  if (last?.by === 0) {
    held = [
      ...held.filter(({ along }) => along < last.along),
      ...heldFrom(
        path,
        last.along,
        held.filter(({ along }) => along >= last.along),
      ),
    ];
  }
  if (first?.by === 0) {
    const back = (list: readonly PlaceAlong[]) =>
      list.map(({ point, along }) => ({ point, along: total - along })).reverse();
    const before = heldFrom(
      reversePath(path),
      total - first.along,
      back(held.filter(({ along }) => along <= first.along)),
    );
    held = [...back(before), ...held.filter(({ along }) => along > first.along)];
  }
  return held;
}

/** Beyond where the change ends the edge is held to its course as near as this (mm), looked at this often (mm). */
const ON_COURSE = 0.04;
const LOOK_EVERY = 8;

/** Points added to hold the course at most; a curve rarely asks for more than four. */
const MOST_HELD = 24;

/** The piece with its edge through these places, and through more of its old course until it keeps to that where it should. */
function keptOnCourse(
  places: readonly PlaceAlong[],
  { path, pins, total }: Course,
  { through, index }: { readonly through: (places: readonly PlaceAlong[]) => Piece; readonly index: number },
): Piece {
  const [first, last] = [pins[0], pins.at(-1)];
  const still = Array.from({ length: Math.floor(total / LOOK_EVERY) }, (_, i) => (i + 0.5) * LOOK_EVERY)
    .filter((along) => (first?.by === 0 && along < first.along) || (last?.by === 0 && along > last.along))
    .map((along) => ({ point: pathAtLength(path, along).point, along }));
  let held = [...places];
  let made = through(held);
  for (let added = 0; added < MOST_HELD; added++) {
    const now = outlineOf(made).edges[index] ?? path;
    const free = still.filter(({ along }) => held.every((other) => Math.abs(other.along - along) > LOOK_EVERY));
    const off = free.map((place) => ({ place, by: nearestOnPath(now, place.point).distance }));
    const worst = off.reduce((so, one) => (one.by > so.by ? one : so), {
      place: undefined as PlaceAlong | undefined,
      by: 0,
    });
    if (!worst.place || worst.by <= ON_COURSE) break;
    held = [...held, worst.place].sort((a, b) => a.along - b.along);
    made = through(held);
  }
  return made;
}

/** Halfway between pins that lie well apart the edge is held to the even grading, where a smooth curve would bulge. */
function middles(pins: readonly Pinned[], total: number): number[] {
  const places = [0, ...pins.map(({ along }) => along), total];
  const by = [0, ...pins.map((pin) => pin.by), 0];
  return places.slice(1).flatMap((along, i) => {
    const before = places[i] ?? 0;
    const isStill = by[i] === 0 && by[i + 1] === 0;
    return isStill || along - before < 6 * NEAR ? [] : [(before + along) / 2];
  });
}

/** Where a pinned corner goes: along its other edge, as far as brings it `by` mm off this one. */
function movedCorner(piece: Piece, index: number, which: 'start' | 'end', course: Course): Point | undefined {
  const { path, pins, inward, total } = course;
  const corner = piece.corners[which === 'start' ? index : (index + 1) % piece.corners.length];
  const pin = pins.find(({ along }) => along === (which === 'start' ? 0 : total));
  if (!corner || !pin || pin.by === 0) return corner?.at;
  const beside = outlineOf(piece).edges[neighbourIndex(piece, index, which === 'start' ? -1 : 1)];
  if (!beside) return undefined;
  const along: Vector = which === 'start' ? scaleVector(endTangent(beside), -1) : startTangent(beside);
  const own = which === 'start' ? startTangent(path) : endTangent(path);
  if (Math.abs(cross(own, along)) < IN_LINE) return undefined;
  const square = scaleVector(quarterTurn(own), inward);
  return move(corner.at, along, pin.by / dot(square, along));
}

/** Marks stay beside where they were. */
function withMarks(before: Piece, after: Piece, index: number): Piece {
  const [old, now] = [outlineOf(before), outlineOf(after)];
  return [-1, 0, 1].reduce((marked, step) => {
    const at = step === 0 ? index : neighbourIndex(before, index, step as -1 | 1);
    const [path, led] = [old.edges[at], now.edges[at]];
    const id = before.edges[at]?.id;
    if (!path || !led || !id) return marked;
    return carryMarks(marked, id, (along) => nearestOnPath(led, pathAtLength(path, along).point).along);
  }, after);
}
