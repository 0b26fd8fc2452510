/**
 * Proposals for the four corners of something rectangular in a photo: the page itself, a printed frame, a grid.
 *
 * Light patches (at several levels of light) and patches of ink each offer four corners; every offer is tried by
 * following its four sides, and what has sides to be seen all round is proposed, the surest first. Sides may bow.
 * Not found: pages that run out of the picture, pages lighter than nothing round them, frames of broken lines.
 */
import { distance, type PhotoPoint, type Point } from '../geometry/point';
import { isConvexRing, ringArea } from '../geometry/polygon';
import type { QuadCorners } from '../geometry/rectangle-aspect';
import { boxBlurred } from './box-blur';
import { blackAndWhite, levelsOf } from './clean-up';
import { type GreyPicture, pyramidOf } from './grey-picture';
import { type Patch, patchesOf } from './patches';
import { largestQuadIn, leastQuadRound } from './quad-of-hull';
import { type RefinedCorners, refineCorners, refinedOn } from './refine-corners';
import type { SideKind } from './side-course';

/** Four corners that may be those of something rectangular. */
export interface PageProposal {
  readonly kind: SideKind;
  /** In pixels of the whole picture, top left first, clockwise. */
  readonly corners: QuadCorners;
  /** How sure it is, 0 to 1: how much of the faintest side is seen, and how clearly. */
  readonly confidence: number;
}

/** Looking happens on a copy whose longer side has at most this many pixels: lines of 1/500 of the page still show. */
const LOOKED_AT_PX = 640;

/** Less of the picture than this is no page, frame or grid worth squaring up by. */
const LEAST_SHARE = 0.04;

/** How far a side may bow, as a share of the shorter side of its rectangle. */
const MOST_BOW = 0.09;

/** Sides are followed as curves of this degree: enough for a page that curls into the gutter. */
const DEGREE = 7;

/** Levels of light tried for the page, as shares of the way from the darkest to the lightest. */
const LIGHT_LEVELS = [0.2, 0.3, 0.4, 0.5, 0.6, 0.7];

/** The window (share of the longer side) and the contrasts by which ink is told from its paper. */
const INK_WINDOW = 0.03;
const INK_DARKER = [0.04, 0.09, 0.16];

/** Less of a side than this seen, and it is no side. */
const LEAST_SEEN = 0.5;

/** A strength, as a share of the brightness, that leaves no doubt. */
const CLEAR = 0.15;

/** Of two equally sure ones the larger comes first: confidences are weighed by this power of the area. */
const LARGER_FIRST = 0.15;

/** Two proposals whose corners all lie this near (share of the longer side) are one. */
const SAME_CORNERS = 0.015;

/** The proposals, the surest first (of equally sure ones the largest), at most `most`. */
export function proposedPages(picture: GreyPicture, options: { readonly most: number }): readonly PageProposal[] {
  const levels = pyramidOf(picture, { longestPx: LOOKED_AT_PX });
  const last = levels.length - 1;
  const small = levels[last] as GreyPicture;
  const tried = distinct(offers(small), 0.5 * SAME_CORNERS * Math.max(small.width, small.height)).flatMap(
    ({ quad, kind }) => {
      const refined = refinedOn(small, quad, { kind, reachPx: MOST_BOW * shortestSide(quad), degree: DEGREE });
      return refined && isPage(refined, small) ? [{ kind, refined, confidence: confidenceIn(refined) }] : [];
    },
  );
  const rank = ({ refined, confidence }: (typeof tried)[number]) =>
    confidence * Math.abs(ringArea(refined.corners)) ** LARGER_FIRST;
  tried.sort((a, b) => rank(b) - rank(a));
  const kept: PageProposal[] = [];
  for (const { kind, refined, confidence } of tried) {
    const corners = refined.corners.map(({ x, y }) => ({
      x: x * 2 ** last,
      y: y * 2 ** last,
    })) as unknown as QuadCorners;
    const limit = SAME_CORNERS * Math.max(picture.width, picture.height);
    if (kept.length >= options.most || kept.some((other) => areSame(other.corners, corners, limit))) continue;
    kept.push({ kind, corners: finest(levels, corners, kind) ?? corners, confidence });
  }
  return kept;
}

/** The corners once more on the whole picture. */
function finest(levels: readonly GreyPicture[], corners: QuadCorners, kind: SideKind): QuadCorners | undefined {
  const reachPx = MOST_BOW * shortestSide(corners);
  return refineCorners(levels, corners, { kind, reachPx, degree: DEGREE })?.corners;
}

interface Offer {
  readonly quad: QuadCorners;
  readonly kind: SideKind;
}

function offers(small: GreyPicture): Offer[] {
  const smooth = boxBlurred(small, 2);
  const leastPixels = LEAST_SHARE * small.width * small.height;
  const { black, white } = levelsOf(smooth, { dark: 0.05, light: 0.05 });
  const light = LIGHT_LEVELS.flatMap((share) => {
    const level = black + (white - black) * share;
    const isLight = smooth.data.map((grey) => (grey > level ? 1 : 0));
    return patchesOf(isLight, small.width, { leastPixels });
  });
  const windowPx = INK_WINDOW * Math.max(small.width, small.height);
  const soft = boxBlurred(small, 1);
  const ink = INK_DARKER.flatMap((darkerBy) => {
    const isInk = blackAndWhite(soft, { windowPx, darkerBy }).data.map((grey) => (grey === 0 ? 1 : 0));
    return patchesOf(isInk, small.width, { leastPixels: Math.max(small.width, small.height) * 0.5 });
  });
  return [
    ...light.flatMap((patch) => quadsOf(patch, leastPixels).map((quad) => ({ quad, kind: 'paper-edge' as const }))),
    ...ink.flatMap((patch) => quadsOf(patch, leastPixels).map((quad) => ({ quad, kind: 'printed-line' as const }))),
  ];
}

function distinct(all: readonly Offer[], limit: number): Offer[] {
  const kept: Offer[] = [];
  for (const offer of all) {
    if (!kept.some(({ kind, quad }) => kind === offer.kind && areSame(quad, offer.quad, limit))) kept.push(offer);
  }
  return kept;
}

function quadsOf({ hull }: Patch, leastArea: number): QuadCorners[] {
  if (Math.abs(ringArea(hull)) < leastArea) return [];
  const quads = [largestQuadIn(hull), leastQuadRound(hull)].filter((quad) => quad !== undefined);
  return quads.filter((quad) => isConvexRing(quad) && Math.abs(ringArea(quad)) >= leastArea);
}

function isPage({ corners, seen }: RefinedCorners, { width, height }: GreyPicture): boolean {
  const beyond = 0.02 * Math.max(width, height);
  const inPicture = corners.every(
    ({ x, y }) => x > -beyond && y > -beyond && x < width + beyond && y < height + beyond,
  );
  return (
    inPicture &&
    seen >= LEAST_SEEN &&
    isConvexRing(corners) &&
    Math.abs(ringArea(corners)) >= LEAST_SHARE * width * height
  );
}

function confidenceIn({ seen, strength, sides }: RefinedCorners): number {
  const mean = sides.reduce((sum, side) => sum + side.seen, 0) / 4;
  return seen * mean * Math.min(1, 0.5 + strength / CLEAR / 2);
}

function shortestSide(corners: QuadCorners): number {
  return Math.min(...corners.map((corner, i) => distance(corner, corners[(i + 1) % 4] as Point)));
}

function areSame(a: readonly PhotoPoint[], b: readonly PhotoPoint[], limit: number): boolean {
  return a.every((corner, i) => distance(corner, b[i] as Point) < limit);
}
