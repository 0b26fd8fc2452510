import { invertAffine, transformPoint } from '../geometry/affine';
import { type Box, boxOfPoints } from '../geometry/bounds';
import type { Point, TablePoint } from '../geometry/point';
import { applyHomography } from '../geometry/projective';
import type { ScreenMap } from './calibration';
import { type Lying, onPlane } from './full-size';

export type Way = 'left' | 'right' | 'up' | 'down';

/** A screen in CSS pixels. */
export interface ScreenSize {
  readonly width: number;
  readonly height: number;
}

/** The part of the plane that is on the screen: the largest upright rectangle between the screen's corners (mm). */
export function planeInSight({ toPlane }: ScreenMap, { width, height }: ScreenSize): Box | undefined {
  const corners = [
    { x: 0, y: 0 },
    { x: width, y: 0 },
    { x: width, y: height },
    { x: 0, y: height },
  ].map((corner) => applyHomography(toPlane, corner));
  const [a, b, c, d] = corners;
  if (!(a && b && c && d)) return undefined;
  const box = {
    minX: Math.max(a.x, d.x),
    maxX: Math.min(b.x, c.x),
    minY: Math.max(a.y, b.y),
    maxY: Math.min(c.y, d.y),
  };
  return box.minX < box.maxX && box.minY < box.maxY ? box : undefined;
}

/** The same part on the table of the piece (mm). */
export function tableInSight(sight: Box, lying: Lying): Box {
  const back = invertAffine(onPlane(lying));
  const corners = [
    { x: sight.minX, y: sight.minY },
    { x: sight.maxX, y: sight.maxY },
  ].map((corner) => (back ? transformPoint(back, corner) : corner));
  return boxOfPoints(corners) as Box;
}

/** How many squares of the grid one step goes: as many as keep a quarter of what was in sight, and one at the least. */
export function stepSquares(extent: number, square: number): number {
  return Math.max(1, Math.floor((extent * 0.75) / square + 1e-9));
}

/**
 * The piece shown one step further on, in whole squares: the lines of its grid stay where they are on the screen, and the
 * paper is moved by as many squares.
 */
export function stepped(lying: Lying, way: Way, sight: Box, square: number): Lying {
  const [across, down] = [sight.maxX - sight.minX, sight.maxY - sight.minY].map(
    (extent) => stepSquares(extent, square) * square,
  ) as [number, number];
  const by: Point = {
    left: { x: -across, y: 0 },
    right: { x: across, y: 0 },
    up: { x: 0, y: -down },
    down: { x: 0, y: down },
  }[way];
  const back = invertAffine(onPlane(lying));
  return back ? { ...lying, from: transformPoint(back, by) } : lying;
}

/**
 * The piece with the beginning of its grid squares in the corner of what is in sight: one square of room before the piece,
 * so that its outline is not at the very edge.
 */
export function fromItsCorner(
  piece: Box,
  turns: Lying['turns'],
  sight: Box,
  origin: TablePoint,
  square: number,
): Lying {
  const turned = { from: { x: 0, y: 0 }, turns };
  const corners = [
    { x: piece.minX, y: piece.minY },
    { x: piece.maxX, y: piece.maxY },
  ].map((corner) => transformPoint(onPlane(turned), corner));
  const box = boxOfPoints(corners) as Box;
  // On the plane, the corner of the piece goes to the corner of what is in sight; then to the nearest crossing before it.
  const grid = transformPoint(onPlane(turned), origin);
  const snapped = (at: number, zero: number) => zero + Math.floor((at - zero) / square + 1e-9) * square;
  const first = { x: snapped(box.minX, grid.x), y: snapped(box.minY, grid.y) };
  const inset = Math.min(square / 2, (sight.maxX - sight.minX) / 10, (sight.maxY - sight.minY) / 10);
  const zero = { x: first.x - sight.minX - inset, y: first.y - sight.minY - inset };
  const back = invertAffine(onPlane(turned));
  return { turns, from: back ? transformPoint(back, zero) : zero };
}

/** Lines of the grid across a box of the table: where, and which number they bear (mm from the zero of the grid). */
export function gridLines(
  box: Box,
  origin: TablePoint,
  square: number,
): { readonly across: readonly number[]; readonly down: readonly number[] } {
  const between = (from: number, to: number, zero: number) => {
    const first = Math.ceil((from - zero) / square - 1e-9);
    const last = Math.floor((to - zero) / square + 1e-9);
    return Array.from({ length: Math.max(0, last - first + 1) }, (_, i) => (first + i) * square);
  };
  return { across: between(box.minX, box.maxX, origin.x), down: between(box.minY, box.maxY, origin.y) };
}
