import { type Box, boxOfPoints } from '../geometry/bounds';
import type { Point } from '../geometry/point';
import { type Ring, ringArea } from '../geometry/polygon';
import type { Placed, Stance, ToLay } from './lay-task';

/** Quarter turns nearer than this to a whole number of them are made exact, in radians. */
const QUARTER = 1e-9;

/** A point in a stance, before its box is moved to the origin. Quarter turns are exact. */
export function inStance({ x, y }: Point, { turn, over }: Stance): Point {
  const across = over === 'mirrored' ? -x : x;
  const quarters = turn / (Math.PI / 2);
  const whole = Math.round(quarters);
  const isWhole = Math.abs(quarters - whole) < QUARTER;
  const cos = isWhole ? ([1, 0, -1, 0][((whole % 4) + 4) % 4] as number) : Math.cos(turn);
  const sin = isWhole ? ([0, 1, 0, -1][((whole % 4) + 4) % 4] as number) : Math.sin(turn);
  return { x: across * cos - y * sin, y: across * sin + y * cos };
}

/** The box round an outline in a stance, before it is moved to the origin; `undefined` round nothing. */
export function boxInStance(outline: Ring, stance: Stance): Box | undefined {
  return boxOfPoints(outline.map((point) => inStance(point, stance)));
}

/** An outline in a stance, the top left of its box at the origin, clockwise to the eye. */
export function outlineInStance(outline: Ring, stance: Stance): Point[] {
  const turned = outline.map((point) => inStance(point, stance));
  const box = boxOfPoints(turned);
  if (!box) return [];
  const ring = turned.map(({ x, y }) => ({ x: x - box.minX, y: y - box.minY }));
  return ringArea(ring) < 0 ? ring.reverse() : ring;
}

/** The outline of a placed piece on the cloth; empty for a stance it does not have. */
export function placedOutline(piece: ToLay, { stance, at }: Placed): Point[] {
  const how = piece.stances[stance];
  if (!how) return [];
  return outlineInStance(piece.outline, how).map(({ x, y }) => ({ x: x + at.x, y: y + at.y }));
}
