/** A bent page laid flat: by the curves of its four sides, or by the crossings of a printed grid. */
import type { Diagram, Followed, Quad, RectangleSides } from '../garment/diagram';
import type { Point } from '../geometry/point';
import { type Side, sideThrough } from '../picture/curl-side';
import { type SquaresMap, squaresToPhoto } from '../picture/grid-map';
import { flattenedPage } from '../picture/page-map';
import type { Sides } from '../picture/page-outline';
import type { LaidOut } from './laid-out';

/** A picture laid out, and how large its rectangle is then, in about pixels of the picture. */
export interface LaidRectangle {
  readonly kind: 'laid';
  readonly laid: LaidOut;
  readonly across: number;
  readonly down: number;
  readonly aspectFrom: 'said' | 'photo' | 'sides';
}

/** A side that runs back on itself, sides that cross, or a page that would fold over itself. */
export interface NotFollowed {
  readonly kind: 'not-squared';
  readonly why: 'side-runs-back' | 'sides-cross' | 'folds-over' | 'too-small';
}

type Picture = Pick<Diagram, 'widthPx' | 'heightPx' | 'focalPx'>;

/** The curves of the four sides, or which of them cannot be. */
export function sidesOf(corners: Quad, through: Extract<Followed, { kind: 'sides' }>['through']): Sides | undefined {
  const sides: Side[] = [];
  for (const [k, from] of corners.entries()) {
    const side = sideThrough(from, corners[((k + 1) % 4) as 0], through[k as 0]);
    if (!side) return undefined;
    sides.push(side);
  }
  return sides as unknown as Sides;
}

/** The page within four sides that bow; `straight` where none bows enough to be followed. */
export function bentRectangle(
  corners: Quad,
  through: Extract<Followed, { kind: 'sides' }>['through'],
  { said, picture }: { readonly said: RectangleSides; readonly picture: Picture },
): LaidRectangle | NotFollowed | 'straight' {
  const sides = sidesOf(corners, through);
  if (!sides) return { kind: 'not-squared', why: 'side-runs-back' };
  const { widthPx, heightPx, focalPx } = picture;
  const page = flattenedPage(sides, {
    centre: { x: widthPx / 2, y: heightPx / 2 },
    longSide: Math.max(widthPx, heightPx),
    ...(focalPx === undefined ? {} : { focalPx }),
  });
  if (page.kind === 'not-flattened') {
    return { kind: 'not-squared', why: page.why === 'no-room' ? 'too-small' : page.why };
  }
  if (page.model === 'flat') return 'straight';
  const laid = { kind: 'bent', page } as const;
  if (said.kind === 'ratio') {
    const down = Math.sqrt((page.across * page.down * said.down) / said.across);
    return { kind: 'laid', laid, across: (down * said.across) / said.down, down, aspectFrom: 'said' };
  }
  // With the focal length only guessed, the proportion is near the truth and no more.
  const aspectFrom = page.focalFrom === 'said' ? 'photo' : 'sides';
  return { kind: 'laid', laid, across: page.across, down: page.down, aspectFrom };
}

/** The grid laid out, its squares square. */
export function squaresRectangle(map: SquaresMap): LaidRectangle {
  const [a, b, c, d] = cornersOfSquares(map);
  const area = Math.abs((c.x - a.x) * (d.y - b.y) - (c.y - a.y) * (d.x - b.x)) / 2;
  const side = Math.sqrt(area / (map.columns * map.rows));
  const laid = { kind: 'squares', map } as const;
  return { kind: 'laid', laid, across: map.columns * side, down: map.rows * side, aspectFrom: 'said' };
}

/** Where the outermost crossings of a grid are seen: top left, top right, bottom right, bottom left. */
export function cornersOfSquares(map: SquaresMap): Quad {
  const { columns, rows } = map;
  const at = (x: number, y: number): Point => squaresToPhoto(map, { x, y });
  return [at(0, 0), at(columns, 0), at(columns, rows), at(0, rows)];
}
