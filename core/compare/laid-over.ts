import { outlineOf } from '../garment/outline';
import type { Piece } from '../garment/piece';
import { edgeIndex } from '../garment/with-piece';
import {
  type Affine,
  composeAffine,
  IDENTITY,
  reflectionIn,
  rotationAbout,
  transformPoint,
  translation,
} from '../geometry/affine';
import { boxCentre } from '../geometry/bounds';
import { flattenPath } from '../geometry/flatten';
import { nearestOnPath, pathAtLength, pathBounds, pathEnd, pathLength, pathStart } from '../geometry/path';
import { angleOf, type Point, turnBetween, vectorBetween } from '../geometry/point';
import type { Path } from '../geometry/segment';
import { nearestOnLines } from './near-lines';

/** How a piece is laid over another. */
export type LayingOver =
  /** As both lie on the table. */
  | { readonly kind: 'as-they-lie' }
  /** A corner of it on a corner of the other, not turned. */
  | { readonly kind: 'corner'; readonly onCornerId: string; readonly cornerId: string }
  /** The ends of an edge of it along an edge of the other, start on start or, walked the other way, on its end. */
  | { readonly kind: 'edge'; readonly onEdgeId: string; readonly edgeId: string; readonly way: 'same' | 'opposite' }
  /** Turned and moved until the outlines lie as near as they can; mirrored too where that is allowed. */
  | { readonly kind: 'best'; readonly mirrored: 'never' | 'allowed' };

/**
 * The motion that lays `over` on `under`: moved and turned, never stretched. `undefined` when a corner or an edge it
 * speaks of is not there.
 */
export function laidOver(under: Piece, over: Piece, how: LayingOver): Affine | undefined {
  switch (how.kind) {
    case 'as-they-lie':
      return IDENTITY;
    case 'corner': {
      const on = under.corners.find(({ id }) => id === how.onCornerId)?.at;
      const from = over.corners.find(({ id }) => id === how.cornerId)?.at;
      return on && from && translation(vectorBetween(from, on));
    }
    case 'edge': {
      const on = outlineOf(under).edges[edgeIndex(under, how.onEdgeId)];
      const edge = outlineOf(over).edges[edgeIndex(over, how.edgeId)];
      if (!on || !edge) return undefined;
      const ends =
        how.way === 'same' ? ([pathStart(on), pathEnd(on)] as const) : ([pathEnd(on), pathStart(on)] as const);
      return motionBetween(pathStart(edge), pathEnd(edge), ...ends);
    }
    case 'best':
      return bestMotion(outlineOf(under).whole, outlineOf(over).whole, how.mirrored);
  }
}

/** The map that turns a piece over where it lies, about the upright through its middle. */
export function turnedOver(piece: Piece): Affine {
  const centre = boxCentre(pathBounds(outlineOf(piece).whole));
  return reflectionIn(centre, { x: centre.x, y: centre.y + 1 }) ?? IDENTITY;
}

/** The motion that takes one place to another and a second one into the same direction. */
function motionBetween(from: Point, fromNext: Point, to: Point, toNext: Point): Affine {
  const angle = turnBetween(vectorBetween(from, fromNext), vectorBetween(to, toNext));
  return composeAffine(translation(vectorBetween(from, to)), rotationAbout(from, angle));
}

/** From how many turns the search begins, and how many of them are followed to the end. */
const TURNS = 8;
const FOLLOWED = 2;

/**
 * How closely outlines are looked at: places on one of them, rounds at most, and how finely the other is followed (mm);
 * at the very end it is the curve itself.
 */
const ROUGHLY = { places: 40, rounds: 12, flatness: 1 };
const CLOSELY = { places: 96, rounds: 60, flatness: 0.02 };
const AT_THE_END = { rounds: 6 };

/** Rounds end when the sum of squares improves by less than this share. */
const SETTLED = 1e-7;

/**
 * The motion with the least sum of squared distances from places of one outline to the other, found from eight turns by
 * taking the nearest places for partners and moving to them (Besl and McKay, IEEE Transactions on Pattern Analysis and
 * Machine Intelligence 14 (1992), 239 to 256; the motion between partners is the plane case of Horn's).
 */
function bestMotion(under: Path, over: Path, mirrored: 'never' | 'allowed'): Affine {
  const centre = boxCentre(pathBounds(over));
  const home = translation(vectorBetween(centre, boxCentre(pathBounds(under))));
  const flip = reflectionIn(centre, { x: centre.x, y: centre.y + 1 }) ?? IDENTITY;
  const faces = mirrored === 'allowed' ? [IDENTITY, flip] : [IDENTITY];
  const roughly = onLines(under, ROUGHLY.flatness);
  const closely = onLines(under, CLOSELY.flatness);
  const few = placesOn(over, ROUGHLY.places);
  const begun = faces.flatMap((face) =>
    Array.from({ length: TURNS }, (_, turn) => {
      const turned = composeAffine(rotationAbout(centre, (2 * Math.PI * turn) / TURNS), face);
      return settled(roughly, few, composeAffine(home, turned), ROUGHLY.rounds);
    }),
  );
  const many = placesOn(over, CLOSELY.places);
  // Of equally good ones the least turned, which comes first, is the one she means.
  return begun
    .toSorted((a, b) => a.off - b.off)
    .slice(0, FOLLOWED)
    .map(({ motion }) => settled(closely, many, motion, CLOSELY.rounds))
    .map(({ motion }) => settled((place) => nearestOnPath(under, place), many, motion, AT_THE_END.rounds))
    .reduce((best, found) => (found.off < best.off * (1 - 1e-6) ? found : best)).motion;
}

type Nearest = (place: Point) => { readonly point: Point; readonly distance: number };

function onLines(path: Path, flatness: number): Nearest {
  const lines = flattenPath(path, flatness);
  return (place) => nearestOnLines(lines, place);
}

function placesOn(path: Path, count: number): Point[] {
  const length = pathLength(path);
  return Array.from({ length: count }, (_, i) => pathAtLength(path, (length * i) / count).point);
}

function settled(nearest: Nearest, places: readonly Point[], begin: Affine, rounds: number) {
  let motion = begin;
  let off = Infinity;
  for (let round = 0; round < rounds; round++) {
    const now = places.map((place) => transformPoint(motion, place));
    const partners = now.map(nearest);
    const sum = partners.reduce((so, { distance }) => so + distance * distance, 0);
    if (sum >= off * (1 - SETTLED)) break;
    off = sum;
    motion = composeAffine(motionOnto(now, partners), motion);
  }
  return { motion, off };
}

/** The motion with the least sum of squares from places to their partners. */
function motionOnto(places: readonly Point[], partners: readonly { readonly point: Point }[]): Affine {
  const count = places.length;
  const mean = (points: readonly Point[]): Point => ({
    x: points.reduce((sum, { x }) => sum + x, 0) / count,
    y: points.reduce((sum, { y }) => sum + y, 0) / count,
  });
  const from = mean(places);
  const to = mean(partners.map(({ point }) => point));
  let [along, aside] = [0, 0];
  places.forEach((place, i) => {
    const partner = partners[i]?.point ?? place;
    const a = vectorBetween(from, place);
    const b = vectorBetween(to, partner);
    along += a.dx * b.dx + a.dy * b.dy;
    aside += a.dx * b.dy - a.dy * b.dx;
  });
  const angle = angleOf({ dx: along, dy: aside });
  return composeAffine(translation(vectorBetween(from, to)), rotationAbout(from, angle));
}
