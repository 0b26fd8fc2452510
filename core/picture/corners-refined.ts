/** Corners placed by hand or proposed, brought to part of a pixel from the whole length of the sides between them. */
import { distance } from '../geometry/point';
import type { QuadCorners } from '../geometry/rectangle-aspect';
import { type Grey, reducedTo } from './grey';
import { evidenceOf, type Outline, outlineNear, scaledSides, straightSides } from './page-outline';
import type { SideMark } from './page-side';

/** No edge or printed line is seen near enough along a side: 0 top, 1 right, 2 bottom, 3 left; or sides do not meet. */
export interface NotRefined {
  readonly kind: 'not-refined';
  readonly why: 'side-not-seen' | 'sides-do-not-meet';
  readonly side?: 0 | 1 | 2 | 3;
}

export interface RefineOptions {
  /** What the sides are; the best seen unless said. */
  readonly mark?: SideMark;
  /** Whether sides may bow, as those of a bent page do. */
  readonly sides: 'straight' | 'bowed';
  /** How far off the corners may be, as a share of the shortest side; 0.03 unless said. */
  readonly within?: number;
}

/** The first search is made on a copy no larger than this. */
const WORK_SIDE = 1000;

/** A side seen less well than this is not to be relied on. */
const LEAST_SEEN = 0.2;

/** Widths tried for an edge's blur or a printed line, in pixels of the whole picture. */
const WIDTHS = [1.5, 2.5, 4, 6.5, 10];

/** The first width that shows so much of the most contrast is the one. */
const ENOUGH = 0.85;

/**
 * The four sides near these corners and where they meet, in pixels of the whole picture. First on a reduced copy, then
 * along the found sides in the picture itself; each side is a robust fit to some hundred places found to part of a pixel.
 */
export function refinedCorners(grey: Grey, corners: QuadCorners, options: RefineOptions): Outline | NotRefined {
  const { grey: small, factor } = reducedTo(grey, WORK_SIDE);
  const marks = options.mark ? [options.mark] : (['line', 'light-ends', 'dark-ends'] as const);
  const found = marks
    .flatMap((mark) => coarse(small, scaledQuad(corners, 1 / factor), mark, options) ?? [])
    .sort((a, b) => seenBy(b) - seenBy(a))[0];
  if (!found) return { kind: 'not-refined', why: 'sides-do-not-meet' };
  const faint = found.evidence.findIndex((side) => evidenceOf(side) < LEAST_SEEN);
  if (faint >= 0) return { kind: 'not-refined', why: 'side-not-seen', side: faint as 0 };
  const sides = scaledSides(found.sides, factor);
  const mostDegree = options.sides === 'straight' ? 1 : 9;
  return (
    fine(grey, { mark: found.mark, sides }, { factor, mostDegree }) ?? { kind: 'not-refined', why: 'sides-do-not-meet' }
  );
}

/** The sides of a proposal, bowed as it may be, brought to part of a pixel; `undefined` where they are lost on the way. */
export function refinedSides(grey: Grey, proposed: Pick<Outline, 'mark' | 'sides'>): Outline | undefined {
  return fine(grey, proposed, { factor: reducedTo(grey, WORK_SIDE).factor, mostDegree: 9 });
}

function coarse(small: Grey, quad: QuadCorners, mark: SideMark, options: RefineOptions): Outline | undefined {
  const side = Math.min(...quad.map((corner, k) => distance(corner, quad[((k + 1) % 4) as 0])));
  const degrees = options.sides === 'straight' ? [1, 1] : [3, 9];
  const common = { mark, soft: 1.5, least: 0.35 };
  const reach = Math.max(4, (options.within ?? 0.03) * side);
  const wide = outlineNear(small, straightSides(quad), { ...common, reach, stations: 48, mostDegree: degrees[0] as 1 });
  if (!wide) return undefined;
  const near = Math.max(3, 0.01 * side);
  return outlineNear(small, wide.sides, { ...common, reach: near, stations: 96, mostDegree: degrees[1] as 1 });
}

/**
 * Once more along sides of the whole picture that were found in a copy `factor` times smaller, as softly as the edge or the
 * line is wide.
 */
function fine(
  grey: Grey,
  found: Pick<Outline, 'mark' | 'sides'>,
  { factor, mostDegree }: { readonly factor: number; readonly mostDegree: number },
): Outline | undefined {
  const tried = WIDTHS.flatMap((soft) => {
    const reach = Math.max(3, 1.5 * factor);
    const search = { mark: found.mark, reach, soft, stations: 48, mostDegree, least: 0.35 };
    const outline = outlineNear(grey, found.sides, search);
    return outline ? [{ outline, soft, contrast: Math.min(...outline.evidence.map(({ contrast }) => contrast)) }] : [];
  });
  const most = Math.max(...tried.map(({ contrast }) => contrast));
  const chosen = tried.find(({ contrast }) => contrast >= ENOUGH * most);
  if (!chosen) return undefined;
  const reach = Math.max(2, chosen.soft);
  const search = { mark: found.mark, reach, soft: chosen.soft, stations: 160, mostDegree, least: 0.25 };
  return outlineNear(grey, chosen.outline.sides, search) ?? chosen.outline;
}

function seenBy({ evidence, mark }: Outline): number {
  // Beside a printed line there is always an edge, seen half as well.
  return Math.min(...evidence.map(evidenceOf)) * (mark === 'line' ? 1.3 : 1);
}

function scaledQuad(corners: QuadCorners, by: number): QuadCorners {
  return corners.map(({ x, y }) => ({ x: x * by, y: y * by })) as unknown as QuadCorners;
}
