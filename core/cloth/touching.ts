/**
 * Where a piece comes to rest against what lies near it while she drags it: at the true cut lines of the others, at places
 * kept free, at the edges of the cloth, its fold and its end.
 *
 * Two outlines touch where a corner of one lies on a side of the other, both of its own sides outside. All such places of
 * a piece are sides along which it slides; those that are the boundary of the no-fit area of the two, or of several, are
 * told from the rest by laying the piece there and looking whether it overlaps.
 */
import { type Box, boxesMeet, boxOfPoints } from '../geometry/bounds';
import { between, cross, distance, dot, move, type Point, scaleVector, vectorBetween } from '../geometry/point';
import { type Ring, ringArea } from '../geometry/polygon';
import type { ToLay } from './lay-task';
import { ringsOverlap } from './rings-overlap';
import { type SlidingSide, slidingSides } from './sliding-sides';

/** What a piece is dragged among. */
export interface DraggedAmong {
  /** The piece as it lies when the drag begins, and everything it must keep clear of, in places of the cloth. */
  readonly ring: Ring;
  readonly others: readonly Ring[];
  readonly across: number;
  /** Where the cloth at hand ends, if it does. */
  readonly end?: number | undefined;
  readonly onFold?: ToLay['onFold'] | undefined;
}

/** A drag under way: what it is among, and along what the piece slides, found when it first comes near. */
export interface Touching {
  readonly among: DraggedAmong;
  /** The piece with the top left of its box at the origin, and how large it is. */
  readonly ring: Ring;
  readonly wide: number;
  readonly high: number;
  readonly others: readonly { readonly ring: Ring; readonly box: Box }[];
  readonly sides: (readonly SlidingSide[] | undefined)[];
}

/** A place where two things are touched at once counts as so much nearer. */
const CORNER = 0.5;

/** The sine from which two sides that cross make a corner: a curve's chords turn by less. */
const SHARP = 0.25;

/** So many places are tried at most: over the middle of another piece all fail. */
const MOST_TRIED = 600;

/** What a place may lie beyond the edge by rounding (mm). */
const ROUNDING = 1e-6;

/** Begins a drag among others. */
export function beginTouching(among: DraggedAmong): Touching {
  const { minX, minY, maxX, maxY } = boxOfPoints(among.ring) ?? { minX: 0, minY: 0, maxX: 0, maxY: 0 };
  return {
    among,
    ring: clockwise(among.ring).map(({ x, y }) => ({ x: x - minX, y: y - minY })),
    wide: maxX - minX,
    high: maxY - minY,
    others: among.others.flatMap((other) => {
      const box = boxOfPoints(other);
      return box ? [{ ring: clockwise(other), box }] : [];
    }),
    sides: [],
  };
}

function clockwise(ring: Ring): Ring {
  return ringArea(ring) < 0 ? [...ring].reverse() : ring;
}

/**
 * The place nearest to the wanted one (both of the top left of the box) at which the piece touches something and overlaps
 * nothing, if there is one within `reach`; else the wanted place, held to the fold where the piece lies on it.
 */
export function touchingPlace(touching: Touching, wanted: Point, reach: number): Point {
  const { among, wide, high } = touching;
  const { onFold } = among;
  const at = { x: onFold === 'across' ? 0 : wanted.x, y: onFold === 'along' ? 0 : wanted.y };
  const here: Box = { minX: at.x, minY: at.y, maxX: at.x + wide, maxY: at.y + high };
  const near = touching.others.flatMap(({ box }, i) => (boxesMeet(here, box, 2 * reach) ? [i] : []));
  const sides = [
    ...clothEdges(touching, at, reach),
    ...near.flatMap((i) => sidesOf(touching, i).filter((side) => distance(nearestOn(side, at), at) <= reach)),
  ];
  const places = onFold ? onFoldPlaces(sides, at, onFold) : freePlaces(sides, at);
  const tried = places
    .map(({ place, isCorner }) => {
      const off = distance(place, at);
      return { place, off, counts: isCorner ? off * CORNER : off };
    })
    .filter(({ place, off }) => off <= reach && isOnCloth(touching, place))
    .sort((a, b) => a.counts - b.counts)
    .slice(0, MOST_TRIED);
  return tried.find(({ place }) => isClear(touching, near, place))?.place ?? at;
}

function sidesOf(touching: Touching, i: number): readonly SlidingSide[] {
  touching.sides[i] ??= slidingSides(touching.others[i]?.ring ?? [], touching.ring);
  return touching.sides[i];
}

/** The edges of the cloth as sides, as far as they come near. */
function clothEdges({ among, wide, high }: Touching, at: Point, reach: number): SlidingSide[] {
  const far = 2 * reach;
  const levels = [0, among.across - high].filter((y) => y >= 0 && Math.abs(y - at.y) <= reach);
  const ends = [0, ...(among.end === undefined ? [] : [among.end - wide])];
  return [
    ...levels.map((y) => ({ from: { x: at.x - far, y }, to: { x: at.x + far, y }, endsIn: 'curve' as const })),
    ...ends
      .filter((x) => x >= 0 && Math.abs(x - at.x) <= reach)
      .map((x) => ({ from: { x, y: at.y - far }, to: { x, y: at.y + far }, endsIn: 'curve' as const })),
  ];
}

interface Candidate {
  readonly place: Point;
  readonly isCorner: boolean;
}

/** The nearest place of each side, its ends, and where it crosses the others. */
function freePlaces(sides: readonly SlidingSide[], at: Point): Candidate[] {
  return sides.flatMap((side, i) => {
    const crossings = sides.slice(i + 1).flatMap((other) => crossing(side, other) ?? []);
    const isCorner = side.endsIn === 'corner';
    return [
      { place: nearestOn(side, at), isCorner: false },
      { place: side.from, isCorner },
      { place: side.to, isCorner },
      ...crossings,
    ];
  });
}

/** Where sides cross the line the piece is held to. */
function onFoldPlaces(sides: readonly SlidingSide[], at: Point, onFold: NonNullable<ToLay['onFold']>): Candidate[] {
  const [along, over] = onFold === 'along' ? (['x', 'y'] as const) : (['y', 'x'] as const);
  return sides.flatMap(({ from, to }) => {
    if (from[over] * to[over] > 0 || from[over] === to[over]) return [];
    const place = { ...at, [along]: between(from, to, from[over] / (from[over] - to[over]))[along], [over]: 0 };
    return [{ place, isCorner: false }];
  });
}

function crossing(a: SlidingSide, b: SlidingSide): Candidate | undefined {
  const [p, q] = [vectorBetween(a.from, a.to), vectorBetween(b.from, b.to)];
  const by = cross(p, q);
  if (by === 0) return undefined;
  const apart = vectorBetween(a.from, b.from);
  const [s, t] = [cross(apart, q) / by, cross(apart, p) / by];
  if (s < 0 || s > 1 || t < 0 || t > 1) return undefined;
  const sine = Math.abs(by) / (Math.hypot(p.dx, p.dy) * Math.hypot(q.dx, q.dy));
  return { place: move(a.from, scaleVector(p, s)), isCorner: sine > SHARP };
}

function nearestOn({ from, to }: SlidingSide, at: Point): Point {
  const run = vectorBetween(from, to);
  const size = dot(run, run);
  const share = size > 0 ? dot(vectorBetween(from, at), run) / size : 0;
  return between(from, to, Math.min(1, Math.max(0, share)));
}

function isOnCloth({ among, high }: Touching, { x, y }: Point): boolean {
  return x >= -ROUNDING && y >= -ROUNDING && y <= Math.max(0, among.across - high) + ROUNDING;
}

function isClear({ ring, others }: Touching, near: readonly number[], at: Point): boolean {
  const there = ring.map(({ x, y }) => ({ x: x + at.x, y: y + at.y }));
  return near.every((i) => !ringsOverlap(there, others[i]?.ring ?? []));
}
