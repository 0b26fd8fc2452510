/** Proposals for the four corners of something rectangular in a photo. */
import { distance, type Point } from '../geometry/point';
import type { QuadCorners } from '../geometry/rectangle-aspect';
import { doubleArea, largestQuad } from './corners-hull';
import { hullsIn } from './corners-regions';
import { type Grey, reducedTo } from './grey';
import { evidenceOf, type Outline, outlineNear, type Sides, scaledSides, straightSides } from './page-outline';
import type { SideMark } from './page-side';

/** Four corners that may be squared up by, best first. Places are pixels of the whole picture. */
export interface ProposedCorners {
  /** The edge of the paper, or a printed frame (of squares too). */
  readonly kind: 'page' | 'frame';
  readonly mark: SideMark;
  readonly corners: QuadCorners;
  /** The sides between them as they were followed, to a pixel or so. */
  readonly sides: Sides;
  /** How sure it is, 0 to 1: how well the four sides are seen, and how much of the picture they take in. */
  readonly sure: number;
}

/** The picture is halved until it is no larger than this: enough for lines of a pixel or two. */
const WORK_SIDE = 1000;

/** And parts are boxed in on a copy no larger than this. */
const BOX_SIDE = 500;

/** Parts of the picture at least so large are looked at; smaller ones, a figure among others, only where there are none. */
const LEAST_SHARES = [0.3, 0.17];

/** Proposals less sure than this are noise. */
const LEAST_SURE = 0.12;

/** How far off the sides of a hull an edge is searched, as a share of the side. */
const REACH = 0.045;

/**
 * What may be squared up by in a photo, best first; an empty list when nothing rectangular is seen. Parts fenced in by
 * steep changes of light and inked lines that hang together are boxed in by four corners; what is kept has an edge of
 * paper or a printed line along all four sides, straight or bowed. `onProgress` is told the share done, 0 to 1.
 */
export function proposedCorners(grey: Grey, onProgress?: (share: number) => void): ProposedCorners[] {
  const { grey: small, factor } = reducedTo(grey, WORK_SIDE);
  for (const least of LEAST_SHARES) {
    const kept = proposedIn(small, least, onProgress);
    if (kept.length === 0) continue;
    return kept.map((each) => ({
      ...each,
      corners: each.corners.map(({ x, y }) => ({ x: x * factor, y: y * factor })) as unknown as QuadCorners,
      sides: scaledSides(each.sides, factor),
    }));
  }
  return [];
}

/** The same in the small picture, of parts whose box is at least `least` of the picture's across and down. */
function proposedIn(small: Grey, least: number, onProgress?: (share: number) => void): ProposedCorners[] {
  const found: ProposedCorners[] = [];
  const tried: QuadCorners[] = [];
  // Parts need only be boxed in to a pixel or two, which the search along the sides makes good: half the size will do,
  // but for a picture so small that a line would be lost.
  const boxed = reducedTo(small, BOX_SIDE);
  const hulls = hullsIn(boxed.grey, least);
  for (const [done, hull] of hulls.entries()) {
    onProgress?.((done + 1) / (hulls.length + 1));
    const quad = largestQuad(hull.map(({ x, y }) => ({ x: x * boxed.factor, y: y * boxed.factor })));
    if (!quad || !isLikely(quad, small) || tried.some((other) => isNear(quad, other, 5))) continue;
    tried.push(quad);
    found.push(...marksAt(small, quad));
  }
  const kept: ProposedCorners[] = [];
  for (const each of found.sort((a, b) => b.sure - a.sure)) {
    const size = 0.012 * Math.max(small.width, small.height);
    if (each.sure >= LEAST_SURE && !kept.some(({ corners }) => isNear(each.corners, corners, size))) kept.push(each);
  }
  return kept;
}

/** What is tried near four corners: printed lines about as wide as `soft`, an edge of light or of dark paper. */
const TRIED = [
  { mark: 'line', soft: 1.5 },
  { mark: 'line', soft: 4 },
  { mark: 'light-ends', soft: 1.5 },
  { mark: 'dark-ends', soft: 1.5 },
] as const;

/** The best of what lies near four corners. */
function marksAt(small: Grey, quad: QuadCorners): ProposedCorners[] {
  const proposals = TRIED.flatMap((tried): ProposedCorners[] => {
    const outline = closerAndCloser(small, quad, tried);
    if (!outline || !isLikely(outline.corners, small)) return [];
    const kind = tried.mark === 'line' ? 'frame' : 'page';
    const { mark, corners, sides } = outline;
    return [{ kind, mark, corners, sides, sure: surenessOf(outline, small) }];
  }).sort((a, b) => b.sure - a.sure);
  const line = proposals.find(({ kind }) => kind === 'frame');
  // The inner half of a printed line is an edge too, but never the other way round.
  return line && proposals.every(({ sure }) => line.sure > 0.75 * sure) ? [line] : proposals;
}

function closerAndCloser(
  small: Grey,
  quad: QuadCorners,
  tried: { readonly mark: SideMark; readonly soft: number },
): Outline | undefined {
  const side = Math.min(...quad.map((corner, k) => distance(corner, quad[((k + 1) % 4) as 0])));
  const common = { ...tried, least: 0.35 };
  const wide = outlineNear(small, straightSides(quad), {
    ...common,
    reach: Math.max(5, REACH * side),
    stations: 40,
    mostDegree: 3,
  });
  if (!wide || surenessOf(wide, small) < LEAST_SURE) return undefined;
  return outlineNear(small, wide.sides, { ...common, reach: Math.max(4, 0.012 * side), stations: 72, mostDegree: 9 });
}

function surenessOf(outline: Outline, { width, height }: Grey): number {
  const sides = outline.evidence.map(evidenceOf);
  const mean = sides.reduce((product, each) => product * each, 1) ** 0.25;
  const [a, b, c, d] = outline.corners;
  const share = (doubleArea(a, b, c) + doubleArea(c, d, a)) / (2 * width * height);
  return Math.sqrt(mean * Math.min(...sides)) * Math.min(1, share) ** 0.3;
}

/** Whether a rectangle seen at up to a good slant could look so. */
function isLikely(quad: QuadCorners, { width, height }: Grey): boolean {
  const sides = quad.map((corner, k) => {
    const next = quad[((k + 1) % 4) as 0];
    return { x: next.x - corner.x, y: next.y - corner.y };
  }) as unknown as readonly [Point, Point, Point, Point];
  const lengths = sides.map(({ x, y }) => Math.hypot(x, y)) as [number, number, number, number];
  if (Math.min(...lengths) < 0.2 * Math.min(width, height)) return false;
  const turn = (i: number, k: number) => {
    const [p, q] = [sides[i as 0], sides[k as 0]];
    return Math.atan2(p.x * q.y - p.y * q.x, p.x * q.x + p.y * q.y);
  };
  const corners = [0, 1, 2, 3].map((k) => turn(k, (k + 1) % 4));
  const isSquare = corners.every((angle) => angle > 0.95 && angle < 2.2);
  const slant = Math.max(Math.PI - Math.abs(turn(0, 2)), Math.PI - Math.abs(turn(1, 3)));
  const ratio = (a: number, b: number) => Math.min(a, b) / Math.max(a, b);
  return isSquare && slant < 0.55 && ratio(lengths[0], lengths[2]) > 0.5 && ratio(lengths[1], lengths[3]) > 0.5;
}

function isNear(a: QuadCorners, b: QuadCorners, within: number): boolean {
  return a.every((corner, k) => distance(corner, b[k as 0]) < within);
}
