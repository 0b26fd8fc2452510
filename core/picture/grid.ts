/** A printed grid in a picture: its crossings found, numbered and brought to part of a pixel, and the map through them. */
import { applyHomography, type Homography, homographyFrom, invertHomography } from '../geometry/projective';
import type { QuadCorners } from '../geometry/rectangle-aspect';
import { type Grey, reducedTo } from './grey';
import { crossingSeen } from './grid-crossing';
import { renumbered, withLinesByFrame, withoutFrame } from './grid-frame';
import { type Crossing, numberedCrossings } from './grid-lattice';
import { likelyCrossings } from './grid-lines';
import { type NoSquaresMap, type SquaresMap, squaresMap, squaresToPhoto } from './grid-map';
import { lightAt } from './page-side';

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
  const inner = withoutFrame(renumbered(rough.flatMap((each) => crossingSeen(grey, each, made) ?? [])));
  const within = squaresMap(inner);
  if (within.kind === 'no-squares-map') return { kind: 'no-grid', why: within.why };
  const crossings = withLinesByFrame(grey, inner, within);
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
