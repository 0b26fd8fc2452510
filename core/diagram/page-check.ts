/** How true a picture lies once it is squared up: rectangles seen in it that it was not squared up by are checked. */
import type { Diagram, SeenRectangle } from '../garment/diagram';
import { distance, type Point } from '../geometry/point';
import { sideAt } from '../picture/curl-side';
import { type PageTruth, pageTruth, type TrueCheck } from '../picture/page-true';
import { type DiagramMap, photoToTable } from './diagram-map';
import { sidesOf } from './followed-plane';
import { laidLines } from './ruled-lines';

/** Places looked at along a side. */
const STEPS = 16;

/** Corners nearer to one another than this share of the picture are of one rectangle. */
const SAME = 0.012;

/**
 * How straight the sides of rectangles seen in the picture lie, and how square their corners, in mm at full size, with the
 * worst brought to the length of the longer side of what it was squared up by. That rectangle itself counts only while its
 * sides are taken for straight: where they are followed it comes out true by the making. Printed squares that were followed
 * are checked by their own crossings. Lines that she says are straight or square count as well. `undefined` when nothing
 * else is seen.
 */
export function pageCheck(diagram: Diagram, map: DiagramMap): PageTruth | undefined {
  const { squareUp, seen = [] } = diagram;
  const followed = squareUp.kind === 'rectangle' && squareUp.followed !== undefined;
  const lines: (readonly Point[])[] = [];
  const square: (readonly [number, number])[] = [];
  for (const rectangle of seen) {
    const isOwn = isSquaredUpBy(diagram, rectangle);
    const sides = isOwn && followed ? undefined : sidesOf(rectangle.corners, rectangle.through);
    if (!sides) continue;
    const first = lines.length;
    const laid = sides.map((side) =>
      Array.from({ length: STEPS + 1 }, (_, k) => photoToTable(map, sideAt(side, k / STEPS))),
    );
    if (laid.some((places) => places.some((place) => place === undefined))) continue;
    lines.push(...(laid as Point[][]));
    // Its corners are square by the making.
    if (!isOwn) for (const k of [0, 1, 2, 3]) square.push([first + k, first + ((k + 1) % 4)]);
  }
  const ruled = laidLines(diagram, map);
  const numberOf = new Map(ruled.map(({ line }, k) => [line.id, lines.length + k]));
  for (const { line, places } of ruled) {
    const [own, other] = [lines.length, line.squareTo === undefined ? undefined : numberOf.get(line.squareTo)];
    if (other !== undefined) square.push([own, other]);
    lines.push(places);
  }
  const over = Math.max(map.plane.across * map.across, map.plane.down * map.down);
  return pageTruth(lines, square, over, crossingsCheck(diagram, map));
}

/** How far the crossings of printed squares that it was squared up by lie off the even map that runs through them all. */
function crossingsCheck({ squareUp }: Diagram, { plane, across, down }: DiagramMap): TrueCheck[] {
  if (squareUp.kind !== 'rectangle' || squareUp.followed?.kind !== 'squares') return [];
  const { worst } = squareUp.followed.map;
  // A unit of the plane is about a pixel of the picture; the map runs evenly through the whole of it.
  const over = Math.max(plane.across * across, plane.down * down);
  return [{ kind: 'crossings', off: worst * Math.max(across, down), over }];
}

function isSquaredUpBy({ squareUp, widthPx, heightPx }: Diagram, { corners }: SeenRectangle): boolean {
  if (squareUp.kind !== 'rectangle') return false;
  const near = SAME * Math.max(widthPx, heightPx);
  return squareUp.corners.every((corner) => corners.some((other) => distance(corner, other) < near));
}
