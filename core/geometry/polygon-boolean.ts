/**
 * Putting areas together, taking one from another, growing and shrinking them.
 *
 * The work is done by Clipper2 (A. Johnson; TypeScript by J. Tribby) on a grid of a ten-thousandth of a millimetre.
 * Such clipping has been seen to go wrong once in thousands of self-crossing inputs on coarse grids, so every answer
 * is held against an identity of areas; one that fails is worked out anew with everything turned by an odd angle,
 * and if that fails too the caller is told instead of given a wrong area.
 */
import { differenceD, EndType, FillRule, inflatePathsD, intersectD, JoinType, type PathsD, unionD } from 'clipper2-ts';
import { rotationAbout, transformPoint } from './affine';
import { type Point, turnBetween, vectorBetween } from './point';
import { type Ring, ringArea, ringCrossing, ringLength } from './polygon';

/** Areas bounded by rings: outer ones run clockwise to the eye, holes the other way. */
export interface Areas {
  readonly kind: 'areas';
  readonly rings: readonly Ring[];
}

/** No trustworthy answer: the areas did not add up, twice. */
export interface UnsureAreas {
  readonly kind: 'unsure';
  /** How far the areas were from adding up, in mm². */
  readonly areaOff: number;
}

/** How corners are treated when areas grow. */
export interface GrowOptions {
  /** Mitred to at most four times the distance (blunt beyond), or rounded; mitred unless said. */
  readonly corners?: 'mitred' | 'rounded';
  /** How far a rounded corner may be off its arc, in mm; 0.01 unless said. */
  readonly accuracy?: number;
}

/** Decimals of a millimetre that clipping works with: 0.1 µm, far below any tool, and exact to 100 m. */
const DECIMALS = 4;

/** What rounding to that grid may change an area by, for each millimetre of boundary. */
const GRID = 1e-4;

/** The angle of the second try, in radians: no multiple of anything a drafter would draw. */
const ODD_ANGLE = 0.7331;

const MITRE_LIMIT = 4;

/** Everything in either. Rings that cross themselves count as the whole of what they go round. */
export function unionOfAreas(a: readonly Ring[], b: readonly Ring[]): Areas | UnsureAreas {
  return guarded(a, b, (p, q) => {
    const union = unionD(p, q, FillRule.NonZero, DECIMALS);
    const common = intersectD(p, q, FillRule.NonZero, DECIMALS);
    return { rings: union, off: areaOf(p) + areaOf(q) - areaOf(union) - areaOf(common) };
  });
}

/** What both have in common. */
export function commonAreas(a: readonly Ring[], b: readonly Ring[]): Areas | UnsureAreas {
  return guarded(a, b, (p, q) => {
    const common = intersectD(p, q, FillRule.NonZero, DECIMALS);
    const rest = differenceD(p, q, FillRule.NonZero, DECIMALS);
    return { rings: common, off: areaOf(p) - areaOf(common) - areaOf(rest) };
  });
}

/** What is in `a` and not in `b`. */
export function areasWithout(a: readonly Ring[], b: readonly Ring[]): Areas | UnsureAreas {
  return guarded(a, b, (p, q) => {
    const rest = differenceD(p, q, FillRule.NonZero, DECIMALS);
    const common = intersectD(p, q, FillRule.NonZero, DECIMALS);
    return { rings: rest, off: areaOf(p) - areaOf(common) - areaOf(rest) };
  });
}

/**
 * The areas grown by `distance` on every side, or shrunk for a negative one (sharp corners stay sharp); no rings when
 * nothing is left. Checked against the tube formula: no more is gained or lost than length times distance and corners.
 */
export function grownAreas(a: readonly Ring[], distance: number, options: GrowOptions = {}): Areas | UnsureAreas {
  const round = options.corners === 'rounded';
  const join = round ? JoinType.Round : JoinType.Miter;
  return guarded(a, [], (p) => {
    const rings = inflatePathsD(p, distance, join, EndType.Polygon, MITRE_LIMIT, DECIMALS, options.accuracy ?? 0.01);
    const gained = (areaOf(rings) - areaOf(p)) * Math.sign(distance);
    const most = p.reduce((sum, ring) => sum + tubeArea(ring, Math.abs(distance)), 0);
    return { rings, off: gained < 0 ? gained : Math.max(0, gained - most) };
  });
}

interface Attempt {
  readonly rings: PathsD;
  /** How far the areas are from adding up. */
  readonly off: number;
}

function guarded(a: readonly Ring[], b: readonly Ring[], work: (p: PathsD, q: PathsD) => Attempt): Areas | UnsureAreas {
  let off = 0;
  for (const angle of [0, ODD_ANGLE]) {
    const p = withoutCrossings(a.map((ring) => turnedRing(ring, angle)));
    const q = withoutCrossings(b.map((ring) => turnedRing(ring, angle)));
    const attempt = work(p, q);
    const boundary = [...p, ...q, ...attempt.rings].reduce((sum, ring) => sum + ringLength(ring), 0);
    off = Math.abs(attempt.off);
    if (off <= GRID * (boundary + 1)) {
      return { kind: 'areas', rings: attempt.rings.map((ring) => turnedRing(ring, -angle)) };
    }
  }
  return { kind: 'unsure', areaOff: off };
}

function turnedRing(ring: Ring, angle: number): Point[] {
  if (angle === 0) return ring.map(({ x, y }) => ({ x, y }));
  const turn = rotationAbout({ x: 0, y: 0 }, angle);
  return ring.map((point) => transformPoint(turn, point));
}

/** The same areas from simple rings: clipping is surest with those. */
function withoutCrossings(rings: readonly Point[][]): PathsD {
  const used = rings.map(onGrid).filter((ring) => ring.length > 2);
  const [only] = used;
  // One ring alone may run either way; among several the way tells holes from areas.
  if (only && used.length === 1 && ringArea(only) < 0) only.reverse();
  return used.some((ring) => ringCrossing(ring)) ? unionD(used, [], FillRule.NonZero, DECIMALS) : used;
}

/** A ring without corners that fall on one place of the grid: Clipper2 stumbles over a ring that is all one place. */
function onGrid(ring: readonly Point[]): Point[] {
  const same = (a: Point, b: Point) =>
    Math.round(a.x / GRID) === Math.round(b.x / GRID) && Math.round(a.y / GRID) === Math.round(b.y / GRID);
  return ring.filter((corner, i) => !same(corner, ring[(i + 1) % ring.length] as Point));
}

function areaOf(rings: PathsD): number {
  return rings.reduce((sum, ring) => sum + ringArea(ring), 0);
}

/** The most a band of this width along a ring can hold: its length times the width, and all corners at their largest. */
function tubeArea(ring: Ring, width: number): number {
  let corners = 0;
  ring.forEach((b, i) => {
    const a = ring[(i + ring.length - 1) % ring.length] as Point;
    const c = ring[(i + 1) % ring.length] as Point;
    const turn = Math.abs(turnBetween(vectorBetween(a, b), vectorBetween(b, c)));
    corners += turn < 3 ? Math.min(Math.tan(turn / 2), MITRE_LIMIT) : MITRE_LIMIT;
  });
  return ringLength(ring) * width + corners * width * width;
}
