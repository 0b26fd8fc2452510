import { distance, type Point } from '../geometry/point';
import type { DraftQuestion } from './draft-question';

/** Body measures (mm); `hem` all the way round. */
export interface FoundationSizes {
  readonly waist: number;
  readonly hip: number;
  readonly hipDepth: number;
  readonly hem: number;
  readonly front: number;
  readonly side: number;
}

/** Half of a circular foundation by the letters of its source, A at (0, 0), B to the right, y down from AB. */
export interface FoundationSkirt {
  readonly kind: 'foundation-skirt';
  readonly letters: Readonly<Record<'A' | 'B' | 'C' | 'D' | 'E', Point>>;
  /** The circle through C, E and B, the waist before anything is taken out. */
  readonly waistCircle: { readonly centre: Point; readonly radius: number; readonly arc: number };
  /** What darts and seams of the half have to take out of that waist. */
  readonly takeOut: number;
  /** From the waist to the hip line at centre front, and the half hem. */
  readonly toHip: number;
  readonly halfHem: number;
  readonly questions: readonly DraftQuestion[];
}

export interface NoFoundationSkirt {
  readonly kind: 'no-foundation-skirt';
  /** `hem-too-wide`: an eighth of the half hem is more than the half hip. `waist-over-hip`: the waist is short of the body. */
  readonly why: 'not-positive' | 'hem-too-wide' | 'waist-over-hip';
}

/**
 * The circular foundation skirt of Laura I. Baldt, Clothing for Women (1916): AB half hip less an eighth of the half hem,
 * AC a tenth of the half hem, CD half of AB, DE what the side is longer than the front. The book's figure was not to be
 * had: that A-B runs across and A-C down is read into the text, and asked about.
 */
export function foundationSkirt(sizes: FoundationSizes): FoundationSkirt | NoFoundationSkirt {
  const { waist, hip, hipDepth, hem, front, side } = sizes;
  if (!(waist > 0 && hip > 0 && hipDepth > 0 && hem > 0 && front > 0))
    return { kind: 'no-foundation-skirt', why: 'not-positive' };
  const across = hip / 2 - hem / 16;
  const down = hem / 20;
  const rise = side - front;
  if (!(across > 0)) return { kind: 'no-foundation-skirt', why: 'hem-too-wide' };
  const C = { x: 0, y: down };
  const D = { x: across / 2, y: down };
  const E = { x: D.x, y: down - rise };
  const B = { x: across, y: 0 };
  const waistCircle = circleThrough(C, E, B);
  if (!waistCircle) return { kind: 'no-foundation-skirt', why: 'hem-too-wide' };
  const takeOut = waistCircle.arc - waist / 2;
  if (!(takeOut >= 0)) return { kind: 'no-foundation-skirt', why: 'waist-over-hip' };
  return {
    kind: 'foundation-skirt',
    letters: { A: { x: 0, y: 0 }, B, C, D, E },
    waistCircle,
    takeOut,
    toHip: hipDepth - rise,
    halfHem: hem / 2,
    questions: [{ kind: 'figure-missing', what: 'axes' }],
  };
}

/** The circle through three places and its arc from the first to the last; `undefined` where they lie in one line. */
function circleThrough(a: Point, b: Point, c: Point) {
  const [sideA, sideB, chord] = [distance(b, c), distance(a, b), distance(a, c)];
  const twiceArea = (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);
  if (Math.abs(twiceArea) < 1e-9 * chord * chord) return undefined;
  const radius = (sideA * sideB * chord) / (2 * Math.abs(twiceArea));
  const [bx, by, cx, cy] = [b.x - a.x, b.y - a.y, c.x - a.x, c.y - a.y];
  const [bSq, cSq] = [bx * bx + by * by, cx * cx + cy * cy];
  const centre = {
    x: a.x + (cy * bSq - by * cSq) / (2 * twiceArea),
    y: a.y + (bx * cSq - cx * bSq) / (2 * twiceArea),
  };
  return { centre, radius, arc: 2 * radius * Math.asin(Math.min(1, chord / (2 * radius))) };
}
