import type { LineKind, Mark } from '../drawing/drawing';
import { type Affine, composeAffine, rotationAbout, transformPoint, translation } from '../geometry/affine';
import { flattenPath } from '../geometry/flatten';
import { between, type Point, type TablePoint } from '../geometry/point';
import { applyHomography, type Homography } from '../geometry/projective';
import type { ScreenMap } from './calibration';

/** How a piece lies on the plane: which place of its table stands at the plane's zero, and its quarter turns clockwise. */
export interface Lying {
  readonly from: TablePoint;
  readonly turns: 0 | 1 | 2 | 3;
}

/** The way of a table point onto the plane. */
export function onPlane({ from, turns }: Lying): Affine {
  const turned = rotationAbout({ x: 0, y: 0 }, (turns * Math.PI) / 2);
  return composeAffine(turned, translation({ dx: -from.x, dy: -from.y }));
}

/** A line on the screen, in CSS pixels. */
export interface ScreenLine {
  readonly line: LineKind;
  readonly points: readonly Point[];
}

/** Curves are followed to this (mm): less than a pixel of any screen that is used for it. */
const FLATNESS = 0.05;

/** The strokes of a drawing on the screen, at full size. What lies behind the beam's horizon is cut off. */
export function linesOnScreen(marks: readonly Mark[], lying: Lying, map: ScreenMap): ScreenLine[] {
  const way = onPlane(lying);
  return marks.flatMap((mark) => {
    if (mark.kind !== 'stroke') return [];
    const points = flattenPath(mark.path, FLATNESS).map((point) => transformPoint(way, point));
    return lineOnScreen(points, map).map((run) => ({ line: mark.line, points: run }));
  });
}

/** A line of the plane on the screen, in as many runs as the horizon cuts it into. */
export function lineOnScreen(line: readonly Point[], { toScreen }: ScreenMap): Point[][] {
  const runs: Point[][] = [];
  let run: Point[] = [];
  const end = () => {
    if (run.length > 1) runs.push(run);
    run = [];
  };
  const add = (point: Point) => {
    const at = applyHomography(toScreen, point);
    if (at) run.push(at);
  };
  line.forEach((point, index) => {
    const before = line[index - 1];
    const [was, now] = [before === undefined ? undefined : depth(toScreen, before), depth(toScreen, point)];
    if (before && was !== undefined && was >= NEAR !== now >= NEAR)
      add(between(before, point, (NEAR - was) / (now - was)));
    if (now >= NEAR) add(point);
    else end();
  });
  end();
  return runs;
}

/** What is so far behind the rectangle is left out, as a share of the depth at its top left corner, which is 1. */
const NEAR = 0.05;

function depth([, , , , , , g, h, i]: Homography, { x, y }: Point): number {
  return (g * x + h * y + i) / i;
}
