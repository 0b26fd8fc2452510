/**
 * A shaped band, or a waist facing, taken from the pattern itself: the waist of the joined panels trued as one smooth curve,
 * and its parallel below or above (common practice: close the darts, lay the side seams together, trace).
 * Limit: a lap runs on straight, square to the end; a facing folds back only as far as the panels are laid flat.
 */
import { type DraftedEdge, draftedPiece } from '../blocks/drafted-piece';
import type { Cut, EdgeRole, EdgeShape, Piece } from '../garment/piece';
import { scaling, transformPath } from '../geometry/affine';
import { endTangent, pathAtLength, pathEnd, pathLength, pathStart, startTangent } from '../geometry/path';
import { move, type Point, quarterTurn, scaleVector, turnBetween } from '../geometry/point';
import type { Path } from '../geometry/segment';
import { splineThrough } from '../geometry/spline';
import type { JoinedPanels } from './joined-panels';

export interface BandOptions {
  readonly depth: number;
  /** `below` the waist, whose edge is its upper one, or standing `above` it. */
  readonly lies: 'below' | 'above';
  /** Into how many equal parts the joined waist is cut. */
  readonly parts: number;
  /** What the end runs on beyond the waist (mm); 0 unless said. On a piece cut twice both ends have it. */
  readonly lap?: number;
}

/** A band in numbers, all the way round without laps (mm). */
export interface BandFromPattern {
  readonly kind: 'band';
  readonly waist: Path;
  readonly top: number;
  readonly bottom: number;
  /** How much longer the lower edge is than the upper: what a straight strip is wrong by. */
  readonly straightError: number;
}

export interface NoBand {
  readonly kind: 'no-band';
  /** `too-deep`: the parallel would turn back on itself. `too-many`: more parts than {@link MOST_PARTS}. */
  readonly why: 'not-positive' | 'too-deep' | 'too-many';
}

/** Nobody joins a band from more parts. */
export const MOST_PARTS = 99;

/** The trued waist passes these shares of every run between darts and seams, so that peaks at a join are left out. */
const SHARES = [0.25, 0.5, 0.75] as const;

/** A run shorter than this (mm) gives only its middle. */
const SHORT_RUN = 25;

/** A part's edge gets a point for every turn of this much, and for every so many mm. */
const TURN_PER_POINT = Math.PI / 24;
const WAY_PER_POINT = 60;

/** The band's numbers and its trued waist, as long as the waist is sewn; ends square to where the waist begins and ends. */
export function bandFromPattern(
  joined: JoinedPanels,
  { depth, lies }: Pick<BandOptions, 'depth' | 'lies'>,
): BandFromPattern | NoBand {
  if (!(depth > 0 && joined.length > 0)) return { kind: 'no-band', why: 'not-positive' };
  const waist = truedWaist(joined);
  const out = lies === 'below' ? depth : -depth;
  if (waistPlaces(waist, pathLength(waist)).some(({ curvature }) => 1 - curvature * out <= 0.05)) {
    return { kind: 'no-band', why: 'too-deep' };
  }
  // The tube formula: a parallel is longer or shorter than its curve by its distance times the whole turn.
  const other = joined.length - out * wholeTurn(waist);
  const [own, far] = [joined.length * joined.repeats, other * joined.repeats];
  const [top, bottom] = lies === 'below' ? [own, far] : [far, own];
  return { kind: 'band', waist, top, bottom, straightError: bottom - top };
}

/** The band as pieces from left to right; the first half on the fold where the waist begins on one. */
export function bandPieces(
  joined: JoinedPanels,
  options: BandOptions & { readonly newId: () => string; readonly name: string },
): Piece[] | NoBand {
  const { depth, lies, parts, lap = 0, newId, name } = options;
  if (!(Number.isInteger(parts) && parts > 0 && lap >= 0)) return { kind: 'no-band', why: 'not-positive' };
  if (parts > MOST_PARTS) return { kind: 'no-band', why: 'too-many' };
  const band = bandFromPattern(joined, options);
  if (band.kind === 'no-band') return band;
  const length = pathLength(band.waist);
  return Array.from({ length: parts }, (_, i): Piece => {
    const [from, to] = [(length * i) / parts, (length * (i + 1)) / parts];
    const startsOnFold = i === 0 && joined.startsOn === 'fold';
    // A whole joined waist that happens to end on a fold is not half of anything.
    const isOnFold = startsOnFold && joined.repeats === 2;
    const endsOnFold = i === parts - 1 && joined.endsOn === 'fold' && joined.repeats === 2 && !isOnFold && lap === 0;
    const cut: Cut =
      isOnFold || endsOnFold
        ? { how: 'fold', count: 1 }
        : joined.repeats === 2
          ? { how: 'pair', count: 2 }
          : { how: 'single', count: 1 };
    const roles: readonly [EdgeRole, EdgeRole] = [isOnFold ? 'fold' : 'seam', endsOnFold ? 'fold' : 'seam'];
    const extra = i === parts - 1 ? lap : 0;
    return partPiece(partPlaces(band.waist, from, to, extra), { depth, lies, cut, roles, newId, name });
  });
}

/** A facing of the waist, as deep as said: a band below that is sewn to the waist and turned in. */
export function waistFacing(
  joined: JoinedPanels,
  options: { readonly depth: number; readonly newId: () => string; readonly name: string },
): Piece[] | NoBand {
  return bandPieces(joined, { ...options, lies: 'below', parts: 1 });
}

/** The joined waist as one smooth curve, square to its first side, and as long as it is sewn. */
function truedWaist({ panels, line, length }: JoinedPanels): Path {
  const runs = panels.flatMap(({ waist }) => waist);
  const inner = runs.flatMap((run) => {
    const own = pathLength(run);
    return (own < SHORT_RUN ? [0.5] : SHARES).map((share) => pathAtLength(run, own * share).point);
  });
  const points = [pathStart(line), ...inner, pathEnd(line)];
  const directions = [startTangent(line), ...inner.map(() => undefined), endTangent(line)];
  const curve = splineThrough(points, { directions });
  const factor = length / pathLength(curve);
  return transformPath(scaling(factor, factor, pathStart(line)), curve);
}

function waistPlaces(waist: Path, length: number) {
  const count = Math.max(8, Math.ceil(length / 10));
  return Array.from({ length: count + 1 }, (_, i) => pathAtLength(waist, (length * i) / count));
}

/** The turn from the beginning of a smooth path to its end, clockwise to the eye for more than 0 (radians). */
function wholeTurn(path: Path): number {
  const places = waistPlaces(path, pathLength(path));
  return places.slice(1).reduce((sum, { tangent }, i) => sum + turnBetween(places[i]?.tangent ?? tangent, tangent), 0);
}

interface PartPlace {
  readonly point: Point;
  readonly down: { readonly dx: number; readonly dy: number };
}

/** Places along one part of the waist, its lap running on straight. */
function partPlaces(waist: Path, from: number, to: number, lap: number): readonly PartPlace[] {
  const [start, end] = [pathAtLength(waist, from), pathAtLength(waist, to)];
  const turn = Math.abs(turnBetween(start.tangent, end.tangent));
  const count = Math.max(2, Math.ceil(turn / TURN_PER_POINT), Math.ceil((to - from) / WAY_PER_POINT));
  const places = Array.from({ length: count + 1 }, (_, i): PartPlace => {
    const { point, tangent } = pathAtLength(waist, from + ((to - from) * i) / count);
    return { point, down: quarterTurn(tangent) };
  });
  const last = places.at(-1);
  if (!last || lap === 0) return places;
  const { tangent } = end;
  return [...places, { point: move(last.point, tangent, lap), down: last.down }];
}

function partPiece(
  places: readonly PartPlace[],
  make: {
    readonly depth: number;
    readonly lies: BandOptions['lies'];
    readonly cut: Cut;
    readonly roles: readonly [EdgeRole, EdgeRole];
    readonly newId: () => string;
    readonly name: string;
  },
): Piece {
  const { depth, lies, cut, roles, newId, name } = make;
  const own = places.map(({ point }) => point);
  const far = places.map(({ point, down }) => move(point, scaleVector(down, lies === 'below' ? depth : -depth)));
  const [upper, lower] = lies === 'below' ? [own, far] : [far, own];
  const [topRole, bottomRole]: readonly [EdgeRole, EdgeRole] =
    lies === 'below' ? ['waist', 'finished'] : ['finished', 'waist'];
  const middle = Math.floor(places.length / 2);
  const [high, low] = [upper[middle] as Point, lower[middle] as Point];
  const edges: readonly DraftedEdge[] = [
    { from: upper[0] as Point, role: topRole, shape: squareEnded(upper) },
    { from: upper.at(-1) as Point, role: roles[1] },
    { from: lower.at(-1) as Point, role: bottomRole, shape: squareEnded(lower.toReversed()) },
    { from: lower[0] as Point, role: roles[0] },
  ];
  const at = (share: number): Point => ({ x: high.x + (low.x - high.x) * share, y: high.y + (low.y - high.y) * share });
  const grain = roles[0] === 'fold' ? foldGrain(upper[0] as Point, lower[0] as Point) : { from: at(0.2), to: at(0.8) };
  return draftedPiece({ newId, name, cut, grain, edges });
}

/** The straight of the cloth along the fold. */
function foldGrain(top: Point, bottom: Point) {
  const down = { dx: bottom.x - top.x, dy: bottom.y - top.y };
  return { from: move(top, down, 0.2), to: move(top, down, 0.8) };
}

function squareEnded(points: readonly Point[]): EdgeShape {
  return { kind: 'curve', through: points.slice(1, -1), leaves: 'square', meets: 'square' };
}
