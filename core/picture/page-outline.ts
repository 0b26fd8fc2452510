/** The four sides of a page or a printed frame near four corners, straight or bowed, and where they meet. */
import type { QuadCorners } from '../geometry/rectangle-aspect';
import { doubleArea } from './corners-hull';
import { cornerBetween, type Side, simplestBow, withEnds } from './curl-side';
import type { Grey } from './grey';
import { foundAlong, type SideMark } from './page-side';

/** Four sides that were found, clockwise: top, right, bottom, left, each from corner to corner. */
export interface Outline {
  readonly mark: SideMark;
  /** Top left, top right, bottom right, bottom left. */
  readonly corners: QuadCorners;
  readonly sides: Sides;
  /** For each side: the share of places that agree on it, how far those lie off (px), and how light changes there. */
  readonly evidence: readonly SideEvidence[];
}

export interface SideEvidence {
  readonly agree: number;
  readonly rms: number;
  readonly contrast: number;
}

/** Contrast at which a side counts half. */
const HALF_SEEN = 0.05;

/** How well a side is seen, 0 to 1. */
export function evidenceOf({ agree, contrast }: SideEvidence): number {
  const seen = Math.max(contrast, 0);
  return (agree * seen) / (seen + HALF_SEEN);
}

export interface OutlineSearch {
  readonly mark: SideMark;
  /** How far from the sides as they are taken so far is searched, in pixels. */
  readonly reach: number;
  readonly soft: number;
  readonly stations: number;
  /** How much a side may bow: 1 for straight, more for a bent page. */
  readonly mostDegree: number;
  /** A miss below this, in pixels, is agreement. */
  readonly least: number;
}

export type Sides = readonly [Side, Side, Side, Side];

/** Straight sides from corner to corner. */
export function straightSides(corners: QuadCorners): Sides {
  return corners.map((from, k) => ({ from, to: corners[((k + 1) % 4) as 0], bow: [0] })) as unknown as Sides;
}

/** The same sides in a picture so many times as large. */
export function scaledSides(sides: Sides, by: number): Sides {
  return sides.map(({ from, to, bow }) => ({
    from: { x: from.x * by, y: from.y * by },
    to: { x: to.x * by, y: to.y * by },
    bow: bow.map((each) => each * by),
  })) as unknown as Sides;
}

/** The outline near four sides; `undefined` where a side is not found or two do not meet. */
export function outlineNear(grey: Grey, sides: Sides, search: OutlineSearch): Outline | undefined {
  const curves: Side[] = [];
  const evidence: SideEvidence[] = [];
  for (const side of sides) {
    const found = foundAlong(grey, side, search);
    const fit = simplestBow(found, search.mostDegree, search.least);
    if (!fit) return undefined;
    curves.push({ from: side.from, to: side.to, bow: fit.bow });
    const contrasts = found.map(({ contrast }) => contrast).sort((a, b) => a - b);
    evidence.push({ agree: fit.agree, rms: fit.rms, contrast: contrasts[contrasts.length >> 2] as number });
  }
  const met = curves.flatMap((side, k) => cornerBetween(curves[(k + 3) % 4] as Side, side) ?? []);
  if (met.length < 4) return undefined;
  const corners = met as unknown as QuadCorners;
  const [a, b, c, d] = corners;
  if (doubleArea(a, b, c) <= 0 || doubleArea(b, c, d) <= 0 || doubleArea(c, d, a) <= 0) return undefined;
  const ended = curves.map((side, k) => withEnds(side, corners[k as 0], corners[((k + 1) % 4) as 0]));
  return { mark: search.mark, corners, sides: ended as unknown as Sides, evidence };
}
