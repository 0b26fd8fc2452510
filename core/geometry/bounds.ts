import type { Point } from './point';

/** An upright box, corners included. `minX <= maxX` and `minY <= maxY`. */
export interface Box {
  readonly minX: number;
  readonly minY: number;
  readonly maxX: number;
  readonly maxY: number;
}

/** The smallest box that holds every point; `undefined` when there are none. */
export function boxOfPoints(points: Iterable<Point>): Box | undefined {
  let minX = Infinity;
  let minY = Infinity;
  let maxX = -Infinity;
  let maxY = -Infinity;
  for (const { x, y } of points) {
    if (x < minX) minX = x;
    if (x > maxX) maxX = x;
    if (y < minY) minY = y;
    if (y > maxY) maxY = y;
  }
  return minX <= maxX && minY <= maxY ? { minX, minY, maxX, maxY } : undefined;
}

/** The smallest box that holds both. */
export function unionBox(a: Box, b: Box): Box {
  return {
    minX: Math.min(a.minX, b.minX),
    minY: Math.min(a.minY, b.minY),
    maxX: Math.max(a.maxX, b.maxX),
    maxY: Math.max(a.maxY, b.maxY),
  };
}

/** What two boxes have in common; `undefined` where that has no area. */
export function commonBox(a: Box, b: Box): Box | undefined {
  const box = {
    minX: Math.max(a.minX, b.minX),
    minY: Math.max(a.minY, b.minY),
    maxX: Math.min(a.maxX, b.maxX),
    maxY: Math.min(a.maxY, b.maxY),
  };
  return box.minX < box.maxX && box.minY < box.maxY ? box : undefined;
}

/** The box widened by `by` on every side; a negative `by` narrows it, at most to its middle. */
export function growBox(box: Box, by: number): Box {
  const dx = Math.max(by, (box.minX - box.maxX) / 2);
  const dy = Math.max(by, (box.minY - box.maxY) / 2);
  return { minX: box.minX - dx, minY: box.minY - dy, maxX: box.maxX + dx, maxY: box.maxY + dy };
}

/** Whether the point lies in the box or on its edge. */
export function boxContains(box: Box, point: Point): boolean {
  return point.x >= box.minX && point.x <= box.maxX && point.y >= box.minY && point.y <= box.maxY;
}

/** Whether the two boxes share a point or come within `within` of it, measured along the axes. */
export function boxesMeet(a: Box, b: Box, within = 0): boolean {
  return (
    a.minX - b.maxX <= within && b.minX - a.maxX <= within && a.minY - b.maxY <= within && b.minY - a.maxY <= within
  );
}

/** How far a point is from the box; 0 inside it. */
export function distanceToBox(box: Box, point: Point): number {
  const dx = Math.max(box.minX - point.x, 0, point.x - box.maxX);
  const dy = Math.max(box.minY - point.y, 0, point.y - box.maxY);
  return Math.hypot(dx, dy);
}

/** The middle of the box. */
export function boxCentre(box: Box): Point {
  return { x: (box.minX + box.maxX) / 2, y: (box.minY + box.maxY) / 2 };
}
