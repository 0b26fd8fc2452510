import { cornersProposed } from '../../app/workers/find-corners';
import { nearestOnLines } from '../../core/compare/near-lines';
import { diagramMap, photoToTable, tableToPhoto } from '../../core/diagram/diagram-map';
import type { Diagram } from '../../core/garment/diagram';
import { flattenPath } from '../../core/geometry/flatten';
import { distance, type Point } from '../../core/geometry/point';
import { inkCosts } from '../../core/picture/ink-costs';
import { known, sampleDiagram, set } from '../diagram/sample-diagram';
import { furthestOff } from './drawn-page';
import type { GeneratedPhoto } from './generated-photo';
import { tracedByInk } from './ink-traced';
import { PIECE_26_IN } from './printed-page';

/** What came of a photo brought in and traced by its ink, as she would. */
export interface TracedTruth {
  /** The farthest that the traced outline and the drawn one lie apart at full size, laid on one another as well as they go (mm). */
  readonly off: number;
  readonly presses: number;
  /** Points that a trace by hand would have asked for and following put down by itself. */
  readonly points: number;
}

/** How far beside the corners she aims, in pixels, in turn. */
const ASIDE = [
  [3, -2],
  [-4, 3],
  [2, 4],
  [-3, -3],
  [4, 2],
] as const;

/**
 * A generated photo with its best proposal taken as it is (curved sides where it bows), two known lengths clicked where
 * their ends are seen, and the piece traced by a press beside each of its corners with the ink followed between. The lens
 * is not told. `undefined` where no outline came of it.
 */
export function tracedTruth(photo: GeneratedPhoto): TracedTruth | undefined {
  const { page, seen, grey } = photo;
  const map = diagramMap(broughtIn(photo), set);
  if (map.kind !== 'map') return undefined;
  const presses = [...page.piece, page.piece[0] as Point].map((corner, k) => {
    const { x, y } = seen.toPhoto(corner);
    const [dx, dy] = ASIDE[k % ASIDE.length] as readonly [number, number];
    return { x: x + dx, y: y + dy };
  });
  const picture = {
    grey,
    costs: inkCosts(grey),
    toTable: (place: Point) => photoToTable(map, place),
    toPhoto: (place: Point) => tableToPhoto(map, place),
  };
  const traced = tracedByInk(picture, presses);
  if (!traced) return undefined;
  const full = ({ x, y }: Point): Point => ({ x: PIECE_26_IN * x, y: PIECE_26_IN * y });
  const truth = page.outline.map(full);
  const laid = laidBy(traced.pressed.slice(0, -1), page.piece.map(full));
  let outline = filled(traced.paths.flatMap((path) => flattenPath(path, 0.05)).map(laid));
  // Along an edge nothing tells how it slid: then by all places, each to the nearest of the other.
  for (let round = 0; round < 15; round++) {
    outline = outline.map(
      laidBy(
        outline,
        outline.map((place) => nearestOnLines(truth, place).point),
      ),
    );
  }
  const off = Math.max(furthestOff(outline, truth), furthestOff(filled(truth), outline));
  return { off, presses: presses.length, points: traced.trace.length - presses.length };
}

/** The photo as a diagram, squared up by what is proposed first, with two known lengths, one each way. */
function broughtIn({ page, seen, grey: { width, height, data } }: GeneratedPhoto): Diagram {
  const pixels = new Uint8ClampedArray(width * height * 4).fill(255);
  for (const [k, light] of data.entries()) pixels.fill(Math.round(light * 255), 4 * k, 4 * k + 3);
  const raster = { pixels, width, height };
  const [best] = cornersProposed({ raster, pxToPx: { across: 1, down: 1 } }).proposals;
  if (!best) throw new Error('nothing is proposed to square up by');
  const followed = best.bowed ? { followed: { kind: 'sides', through: best.through } as const } : {};
  const [right, bottom] = [page.across - 17, page.down - 19];
  const line = (id: string, from: Point, to: Point) =>
    known(id, seen.toPhoto(from), seen.toPhoto(to), PIECE_26_IN * distance(from, to));
  return sampleDiagram({
    widthPx: width,
    heightPx: height,
    squareUp: { kind: 'rectangle', corners: best.corners, sides: { kind: 'not-known' }, ...followed },
    knownLengths: [
      line('across', { x: 16, y: bottom }, { x: right, y: bottom }),
      line('down', { x: right, y: 18 }, { x: right, y: bottom }),
    ],
  });
}

/** The motion without stretch that brings some places nearest to others, in order: least squares. */
function laidBy(from: readonly Point[], to: readonly Point[]): (place: Point) => Point {
  const [a, b] = [middleOf(from), middleOf(to)];
  let [along, aside] = [0, 0];
  for (const [k, p] of from.entries()) {
    const q = to[k] as Point;
    along += (p.x - a.x) * (q.x - b.x) + (p.y - a.y) * (q.y - b.y);
    aside += (p.x - a.x) * (q.y - b.y) - (p.y - a.y) * (q.x - b.x);
  }
  const turn = Math.atan2(aside, along);
  const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
  return ({ x, y }) => ({
    x: b.x + cos * (x - a.x) - sin * (y - a.y),
    y: b.y + sin * (x - a.x) + cos * (y - a.y),
  });
}

function middleOf(places: readonly Point[]): Point {
  const sum = places.reduce((total, { x, y }) => ({ x: total.x + x, y: total.y + y }));
  return { x: sum.x / places.length, y: sum.y / places.length };
}

/** Places at most 2 mm apart along a run. */
function filled(run: readonly Point[]): Point[] {
  return run.flatMap((to, k) => {
    const from = run[k - 1];
    if (!from) return [to];
    const steps = Math.max(1, Math.ceil(distance(from, to) / 2));
    return Array.from({ length: steps }, (_, i) => {
      const t = (i + 1) / steps;
      return { x: from.x + (to.x - from.x) * t, y: from.y + (to.y - from.y) * t };
    });
  });
}
