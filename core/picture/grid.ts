/** A printed grid in a picture: its crossings found, numbered and brought to part of a pixel, and the map through them. */
import type { Point } from '../geometry/point';
import { applyHomography, type Homography, homographyFrom, invertHomography } from '../geometry/projective';
import type { QuadCorners } from '../geometry/rectangle-aspect';
import { fittedBow } from './curl-side';
import { type Grey, reducedTo } from './grey';
import { type Crossing, numberedCrossings } from './grid-lattice';
import { likelyCrossings } from './grid-lines';
import { type NoSquaresMap, type SquaresMap, squaresMap, squaresToPhoto } from './grid-map';
import { foundAlong, lightAt } from './page-side';

/** Crossings in pixels of the whole picture, and the map through them. */
export interface FoundGrid {
  readonly kind: 'grid';
  readonly crossings: readonly Crossing[];
  readonly map: SquaresMap;
}

/** Nothing that looks like squares; or squares that no map fits. */
export type NoGrid = { readonly kind: 'no-grid'; readonly why: 'no-squares' | NoSquaresMap['why'] };

/** The longer side of the picture that is worked on, in pixels. */
const WORK_SIDE = 1000;

/** How far beyond the corners the grid may reach, as a share of the sides. */
const BEYOND = 0.04;

/** Columns or rows at the border that lie off the others by more than this share of a square are a frame beside the grid. */
const FRAME_OFF = 0.05;

/**
 * The grid inside four corners of something rectangular (roughly placed), or of the whole picture where that is nearly
 * squared up already. Bent pages are followed square by square.
 */
export function foundGrid(grey: Grey, corners?: QuadCorners): FoundGrid | NoGrid {
  const { grey: small, factor } = reducedTo(grey, 1.7 * WORK_SIDE);
  const work = squaredUp(small, corners, factor);
  if (!work) return { kind: 'no-grid', why: 'no-squares' };
  const rough = numberedCrossings(likelyCrossings(work.grey)).flatMap((each) => {
    const at = applyHomography(work.toPhoto, each.at);
    return at ? [{ ...each, at: { x: at.x * factor, y: at.y * factor } }] : [];
  });
  const made = squaresMap(rough);
  if (made.kind === 'no-squares-map') return { kind: 'no-grid', why: made.why === 'too-few' ? 'no-squares' : made.why };
  const crossings = withoutFrame(renumbered(rough.flatMap((each) => refined(grey, each, made) ?? [])));
  const first = squaresMap(crossings);
  if (first.kind === 'no-squares-map') return { kind: 'no-grid', why: first.why };
  // Lettering on a crossing draws its lines aside.
  const agreeing = crossings.filter((each) => missOf(first, each) < Math.max(0.6, AGREES * first.rms));
  const map = squaresMap(renumbered(agreeing));
  return map.kind === 'squares-map'
    ? { kind: 'grid', crossings: renumbered(agreeing), map }
    : { kind: 'no-grid', why: map.why };
}

/** Crossings farther off the map than this many times what is usual are not the grid's. */
const AGREES = 5;

function missOf(map: SquaresMap, { column, row, at }: Crossing): number {
  const seen = squaresToPhoto(map, { x: column, y: row });
  return Math.hypot(seen.x - at.x, seen.y - at.y);
}

/** The part of the picture inside the corners, squared up, and the way back to the picture it was made from. */
function squaredUp(small: Grey, corners: QuadCorners | undefined, factor: number) {
  if (!corners) return { grey: small, toPhoto: [1, 0, 0, 0, 1, 0, 0, 0, 1] as Homography };
  const quad = corners.map(({ x, y }) => ({ x: x / factor, y: y / factor })) as unknown as QuadCorners;
  const long = (a: number, b: number) => {
    const [p, q] = [quad[a as 0], quad[b as 0]];
    return Math.hypot(q.x - p.x, q.y - p.y);
  };
  const [wide, high] = [(long(0, 1) + long(3, 2)) / 2, (long(0, 3) + long(1, 2)) / 2];
  const scale = Math.min(1.6, WORK_SIDE / Math.max(wide, high));
  const [width, height] = [Math.round(wide * scale), Math.round(high * scale)];
  const edge = BEYOND;
  const square = [
    [edge, edge],
    [1 - edge, edge],
    [1 - edge, 1 - edge],
    [edge, 1 - edge],
  ] as const;
  const toWork = homographyFrom(
    quad.map((from, k) => ({ from, to: { x: width * square[k as 0][0], y: height * square[k as 0][1] } })),
  );
  const toPhoto = 'kind' in toWork ? undefined : invertHomography(toWork);
  if (!toPhoto || width < 60 || height < 60) return undefined;
  const data = new Float32Array(width * height);
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      const at = applyHomography(toPhoto, { x: x + 0.5, y: y + 0.5 });
      data[y * width + x] = at ? lightAt(small, at.x, at.y) : 1;
    }
  }
  return { grey: { width, height, data }, toPhoto };
}

/** A crossing where its two lines, each fitted along both arms, meet; `undefined` where a line is not seen. */
function refined(grey: Grey, crossing: Crossing, map: SquaresMap): Crossing | undefined {
  const { column, row } = crossing;
  const onMap = squaresToPhoto(map, { x: column, y: row });
  const shift = { x: crossing.at.x - onMap.x, y: crossing.at.y - onMap.y };
  const near = (dx: number, dy: number): Point => {
    const at = squaresToPhoto(map, { x: column + dx, y: row + dy });
    return { x: at.x + shift.x, y: at.y + shift.y };
  };
  const arm = 0.42;
  const level = lineThrough(grey, near(-arm, 0), near(arm, 0));
  const upright = lineThrough(grey, near(0, -arm), near(0, arm));
  if (!(level && upright)) return undefined;
  const [p, q] = [level, upright];
  const det = p.dx * q.dy - p.dy * q.dx;
  const t = ((q.x - p.x) * q.dy - (q.y - p.y) * q.dx) / det;
  const at = { x: p.x + t * p.dx, y: p.y + t * p.dy };
  const size = Math.min(Math.hypot(p.dx, p.dy), Math.hypot(q.dx, q.dy));
  return Math.hypot(at.x - crossing.at.x, at.y - crossing.at.y) < 0.08 * size ? { column, row, at } : undefined;
}

/** The printed line near the run from one place to another; the other line's own darkness is passed over. */
function lineThrough(grey: Grey, from: Point, to: Point) {
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  const soft = Math.min(Math.max(1.5, length / 40), 4);
  const search = { mark: 'line', reach: Math.max(3, length / 12), soft, stations: 24 } as const;
  const found = foundAlong(grey, { from, to, bow: [0] }, search);
  const seen = found.filter(({ along, contrast }) => contrast > 0.02 && Math.abs(along - 0.5) * length > 2 * soft);
  const fit = fittedBow(seen, 1, 0.3);
  if (!fit || seen.length < 6) return undefined;
  const [middle, lean] = [fit.bow[0] as number, fit.bow[1] as number];
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  const [nx, ny] = [dy / length, -dx / length];
  return {
    x: from.x + nx * (middle - lean),
    y: from.y + ny * (middle - lean),
    dx: dx + nx * 2 * lean,
    dy: dy + ny * 2 * lean,
  };
}

/**
 * Without a border column or row whose steps are not of a size with those beside it: the frame round a grid is not always
 * a whole square away.
 */
function withoutFrame(crossings: readonly Crossing[]): Crossing[] {
  let kept = [...crossings];
  for (let round = 0; round < 4; round++) {
    const before = kept.length;
    for (const side of ['column', 'row'] as const) {
      const last = Math.max(...kept.map((each) => each[side]));
      for (const [edge, inward] of [
        [0, 1],
        [last, -1],
      ] as const) {
        if (last >= 4 && isOff(kept, side, edge, inward)) kept = kept.filter((each) => each[side] !== edge);
      }
    }
    if (kept.length === before) break;
    kept = renumbered(kept);
  }
  return kept;
}

/** Whether the step to the border differs from what the three steps before it foretell. */
function isOff(crossings: readonly Crossing[], side: 'column' | 'row', edge: number, inward: 1 | -1): boolean {
  const other = side === 'column' ? 'row' : 'column';
  const places = new Map(crossings.map((each) => [`${each[side]} ${each[other]}`, each.at]));
  const offs: number[] = [];
  for (const { at, [other]: line } of crossings.filter((each) => each[side] === edge)) {
    const [a, b, c] = [1, 2, 3].map((k) => places.get(`${edge + k * inward} ${line}`));
    if (!(a && b && c)) continue;
    const steps = [at, a, b, c].slice(0, 3).map((p, k) => {
      const q = [a, b, c][k] as Point;
      return Math.hypot(q.x - p.x, q.y - p.y);
    }) as [number, number, number];
    offs.push(steps[0] / (2 * steps[1] - steps[2]) - 1);
  }
  offs.sort((p, q) => p - q);
  return offs.length >= 3 && Math.abs(offs[offs.length >> 1] as number) > FRAME_OFF;
}

function renumbered(crossings: readonly Crossing[]): Crossing[] {
  const column = Math.min(...crossings.map((each) => each.column));
  const row = Math.min(...crossings.map((each) => each.row));
  return crossings.map((each) => ({ ...each, column: each.column - column, row: each.row - row }));
}
